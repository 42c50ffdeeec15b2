import { type Ampacity, ampacityIn, smallestConductorIn } from "../ampacity/raceway.js";
import type { TemperatureColumn } from "../ampacity/shape.generated.js";
import {
  areaOf,
  type ConductorSize,
  columnOf,
  type Material,
  nextSizeDown,
  nextSizeUp,
  type StandardSize,
} from "../conductor/index.js";
import { type Citation, type EditionYear, perPlace, weakestEvidence } from "../edition/index.js";
import { readShape } from "../input/read-shape.js";
import { readAll } from "../input/reader.js";
import { mulDivUp } from "../units/exact.js";
import { type AssumptionQuestion, assumptionQuestionShape } from "./questions/shape.generated.js";
import type { Conductor, Supply } from "./shape.generated.js";
import { conductorsOf } from "./sums.js";

/** A conductor that stands in for an installed one of another material. */
export interface AssumedConductor {
  /** The conductor that is installed. */
  readonly installed: Conductor;
  /** Ampacity of the installed conductor in amperes; that of the next larger size where the table leaves it out. */
  readonly installedAmperes: number;
  /** Smallest single conductor of the other material with at least that ampacity; `null` if there is none. */
  readonly assumed: StandardSize | null;
  /** Circular mils that the assumed conductor counts for. */
  readonly area: number;
  /** Where the edition says so. */
  readonly citation: Citation;
}

/** Conductivity of the aluminum of Chapter 9 Table 8, percent of copper's. */
const aluminumConductivityPercent = 61;

/**
 * The conductors of another material that would carry as much as the installed ones: for each, the smallest single
 * conductor with at least its ampacity. Where no single conductor has it (copper of 1250 kcmil and more against aluminum),
 * the area of equal conductance, copper area / 0.61, rounded up; never several smaller conductors.
 *
 * @param question - edition whose ampacity table is used, installed conductors, material of the conductor to be sized, and temperature column
 *   in which ampacities are compared
 * @returns one entry per different installed conductor of the other material. One that the table leaves
 *   out counts as the next larger that it has
 * @throws {@link InputError} listing everything that is wrong in the question
 *
 * @example
 * ```ts
 * import { assumedConductors } from "bondmil";
 * const supply = { sets: [{ count: 4, size: "600 kcmil", material: "aluminum" }] } as const;
 * const [entry] = assumedConductors({ edition: "2023", supply, material: "copper", temperature: 75 });
 * entry?.installedAmperes; // => 340
 * entry?.assumed; // => "500 kcmil"
 * ```
 */
export function assumedConductors(question: AssumptionQuestion): readonly AssumedConductor[] {
  const { edition, supply, material, temperature } = readAll(question, (at) =>
    readShape<AssumptionQuestion>(at, assumptionQuestionShape),
  );
  return assumedIn(edition, supply, material, temperature);
}

/** The same, the arguments being checked. */
export function assumedIn(
  year: EditionYear,
  supply: Supply,
  material: Material,
  column: TemperatureColumn,
): readonly AssumedConductor[] {
  const others = conductorsOf(supply).filter((one) => columnOf(one.material) !== columnOf(material));
  const different = others.filter((one, i) => others.findIndex((other) => isAlike(other, one)) === i);
  return different.map((installed) => {
    const { citation, ...counted } = countedAs(year, installed, column);
    return { installed: pick(installed), ...counted, citation: { ...citation } };
  });
}

type Counted = Omit<AssumedConductor, "installed">;

/** By edition, column and size, what was worked out; there is one for each cell of the ampacity tables at most. */
const counted = /* @__PURE__ */ perPlace<Counted>();

/** What an installed conductor counts as in the other column. */
function countedAs(year: EditionYear, installed: Conductor, column: TemperatureColumn): Counted {
  const cell = `${year} ${columnOf(installed.material)} ${column} ${installed.size}`;
  const known = counted.get(cell) ?? workOut(year, installed, column);
  counted.set(cell, known);
  return known;
}

function workOut(year: EditionYear, installed: Conductor, column: TemperatureColumn): Counted {
  const material = columnOf(installed.material) === "copper" ? "aluminum" : "copper";
  const ampacity = ampacityOrNextLarger(year, installed, column);
  const assumed = smallestConductorIn(year, ampacity.amperes, material, column);
  const decided = assumed === null ? [] : [assumed, nextSizeDown(assumed)].filter((size) => size !== null);
  const cells = decided.map((size) => ampacityIn(year, size, material, column).citation.evidence);
  const evidence = weakestEvidence([ampacity.citation.evidence, ...cells]);
  return {
    installedAmperes: ampacity.amperes,
    assumed,
    area: assumed === null ? equalConductanceArea(installed) : areaOf(assumed),
    citation: { section: ampacity.citation.section, evidence },
  };
}

/** Ampacity of a conductor; one that the table leaves out counts as the next larger that it has. */
export function ampacityOrNextLarger(
  year: EditionYear,
  { size, material }: Conductor,
  column: TemperatureColumn,
): Ampacity & { readonly amperes: number } {
  for (let tried: ConductorSize | null = size; tried !== null; tried = nextSizeUp(tried)) {
    const { amperes, citation } = ampacityIn(year, tried, material, column);
    if (amperes !== null) return { amperes, citation };
  }
  throw new TypeError(`the ampacity table ends below ${size}`);
}

function equalConductanceArea(copper: Conductor): number {
  return mulDivUp(areaOf(copper.size), 100, aluminumConductivityPercent);
}

/** Whether two conductors stand in the same cell of the tables. */
export function isAlike(one: Conductor, other: Conductor): boolean {
  return one.size === other.size && columnOf(one.material) === columnOf(other.material);
}

function pick({ size, material }: Conductor): Conductor {
  return { size, material };
}
