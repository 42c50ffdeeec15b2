import {
  type ConductorSize,
  columnOf,
  type Material,
  type StandardSize,
  standardSizes,
} from "../conductor/index.js";
import { readMaterial, readSize } from "../conductor/read.js";
import { type Citation, type EditionYear, editionYears } from "../edition/index.js";
import { racewayAmpacity } from "../edition/tables/raceway-ampacity.generated.js";
import { member, type Reader, readAll, readOneOf, readPositive } from "../input/reader.js";
import { readColumn, type TemperatureColumn } from "./read.js";

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
 * @param year - edition
 * @param size - conductor size
 * @param material - conductor material; copper-clad aluminum shares the aluminum columns
 * @param column - temperature column
 * @returns the ampacity in amperes, `null` where the table has no value, with its citation
 * @throws {@link InputError} listing everything that is wrong in the arguments
 *
 * @example
 * ```ts
 * import { ampacityOf } from "bondmil";
 * ampacityOf("2023", "600 kcmil", "aluminum", 75).amperes; // => 340
 * ampacityOf("2023", "14 AWG", "aluminum", 75).amperes; // => null
 * ```
 */
export function ampacityOf(
  year: EditionYear,
  size: ConductorSize,
  material: Material,
  column: TemperatureColumn,
): Ampacity {
  readAll({ year, size, material, column }, (at) => {
    const known = readSize(member(at, "size")) !== undefined;
    return isPlace(at) && known ? true : undefined;
  });
  return ampacityIn(year, size, material, column);
}

/** The cell of checked arguments. */
function ampacityIn(
  year: EditionYear,
  size: ConductorSize,
  material: Material,
  column: TemperatureColumn,
): Ampacity {
  const table = racewayAmpacity[year];
  const metal = columnOf(material);
  const amperes =
    table.rows[size]?.[columns.indexOf(column) + (metal === "copper" ? 0 : columns.length)] ?? null;
  const evidence = table.cells[`${size} ${metal}${column}`] ?? table.evidence;
  return { amperes, citation: { section: table.number, evidence } };
}

/**
 * The smallest single conductor of a material that carries at least a current.
 *
 * @param year - edition
 * @param amperes - current to carry
 * @param material - conductor material
 * @param column - temperature column
 * @returns the size, or `null` if no single conductor of the table carries as much
 * @throws {@link InputError} listing everything that is wrong in the arguments
 *
 * @example
 * ```ts
 * import { smallestConductorFor } from "bondmil";
 * smallestConductorFor("2023", 340, "copper", 75); // => "500 kcmil"
 * smallestConductorFor("2023", 625, "aluminum", 75); // => null
 * ```
 */
export function smallestConductorFor(
  year: EditionYear,
  amperes: number,
  material: Material,
  column: TemperatureColumn,
): StandardSize | null {
  readAll({ year, amperes, material, column }, (at) => {
    const known = readPositive(member(at, "amperes"), "amperes") !== undefined;
    return isPlace(at) && known ? true : undefined;
  });
  return (
    standardSizes.find((size) => {
      const ampacity = ampacityIn(year, size, material, column).amperes;
      return ampacity !== null && ampacity >= amperes;
    }) ?? null
  );
}

/** Checks what names a column of the table of an edition. */
function isPlace(at: Reader): boolean {
  const read = [
    readOneOf(member(at, "year"), editionYears),
    readMaterial(member(at, "material")),
    readColumn(member(at, "column")),
  ];
  return read.every((one) => one !== undefined);
}
