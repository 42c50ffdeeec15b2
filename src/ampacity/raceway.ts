import {
  type ConductorSize,
  columnOf,
  type Material,
  type StandardSize,
  standardSizes,
} from "../conductor/index.js";
import type { Citation, EditionYear } from "../edition/index.js";
import { racewayAmpacity } from "../edition/tables/raceway-ampacity.generated.js";
import { readShape } from "../input/read-shape.js";
import { readAll } from "../input/reader.js";
import {
  type ConductorQuestion,
  conductorQuestionShape,
  type TableAmpacityQuestion,
  type TemperatureColumn,
  tableAmpacityQuestionShape,
} from "./shape.generated.js";

export type { ConductorQuestion, TableAmpacityQuestion };

const columns = [60, 75, 90] as const;

/** An ampacity with the place that states it. */
export interface Ampacity {
  /** Amperes; `null` where the table has no value. */
  readonly amperes: number | null;
  /** Table and evidence of the value. */
  readonly citation: Citation;
}

/**
 * Ampacity of one insulated conductor, not more than three current-carrying conductors in a raceway, cable or the earth, 30 C
 * (Table 310.16; Table 310.15(B)(16) in 2011, 2014 and 2017).
 *
 * @param question - edition, size, material (copper-clad aluminum shares the aluminum columns), and temperature column
 * @returns the ampacity in amperes, `null` where the table has no value, with its citation
 * @throws {@link InputError} listing everything that is wrong in the question
 *
 * @example
 * ```ts
 * import { tableAmpacity } from "bondmil";
 * const edition = "2023";
 * tableAmpacity({ edition, size: "600 kcmil", material: "aluminum", temperature: 75 }).amperes; // => 340
 * tableAmpacity({ edition, size: "14 AWG", material: "aluminum", temperature: 75 }).amperes; // => null
 * ```
 */
export function tableAmpacity(question: TableAmpacityQuestion): Ampacity {
  const { edition, size, material, temperature } = readAll(question, (at) =>
    readShape<TableAmpacityQuestion>(at, tableAmpacityQuestionShape),
  );
  return ampacityIn(edition, size, material, temperature);
}

/** The same, the arguments being checked. */
export function ampacityIn(
  year: EditionYear,
  size: ConductorSize,
  material: Material,
  column: TemperatureColumn,
): Ampacity {
  const table = racewayAmpacity[year];
  const evidence = table.cells[`${size} ${columnOf(material)}${column}`] ?? table.evidence;
  return {
    amperes: amperesIn(year, size, material, column),
    citation: { section: table.number, evidence },
  };
}

/** Its amperes alone. */
export function amperesIn(
  year: EditionYear,
  size: ConductorSize,
  material: Material,
  column: TemperatureColumn,
): number | null {
  const place = columns.indexOf(column) + (columnOf(material) === "copper" ? 0 : columns.length);
  return racewayAmpacity[year].rows[size]?.[place] ?? null;
}

/**
 * The smallest single conductor of a material that carries at least a current.
 *
 * @param question - edition, amperes to carry, material, and temperature column
 * @returns the size, or `null` if no single conductor of the table carries as much
 * @throws {@link InputError} listing everything that is wrong in the question
 *
 * @example
 * ```ts
 * import { smallestConductorFor } from "bondmil";
 * const edition = "2023";
 * smallestConductorFor({ edition, amperes: 340, material: "copper", temperature: 75 }); // => "500 kcmil"
 * smallestConductorFor({ edition, amperes: 625, material: "aluminum", temperature: 75 }); // => null
 * ```
 */
export function smallestConductorFor(question: ConductorQuestion): StandardSize | null {
  const { edition, amperes, material, temperature } = readAll(question, (at) =>
    readShape<ConductorQuestion>(at, conductorQuestionShape),
  );
  return smallestConductorIn(edition, amperes, material, temperature);
}

/** The same, the arguments being checked. */
export function smallestConductorIn(
  year: EditionYear,
  amperes: number,
  material: Material,
  column: TemperatureColumn,
): StandardSize | null {
  return (
    standardSizes.find((size) => {
      const own = amperesIn(year, size, material, column);
      return own !== null && own >= amperes;
    }) ?? null
  );
}
