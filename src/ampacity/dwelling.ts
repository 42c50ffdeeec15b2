import { areaOf, columnOf, type StandardSize, standardSizeFor, standardSizes } from "../conductor/index.js";
import { type Citation, type EditionYear, type Evidence, evidenceOfCell } from "../edition/index.js";
import { dwellingConductors } from "../edition/tables/dwelling-conductors.generated.js";
import { dwellingConductorsBy, dwellingTwoPhasesOfWye } from "../edition/tables/placements.generated.js";
import { dwellingAllowance, dwellingTwoPhases } from "../edition/tables/sections.generated.js";
import { type Members, readShape } from "../input/read-shape.js";
import { member, type Reader, readAll, refuse } from "../input/reader.js";
import { together } from "./ampacity-of.js";
import { amperesUnder, type Conditions, conditionsIn } from "./conditions.js";
import { ampacityIn, amperesIn } from "./raceway.js";
import { refineConditions } from "./read-conditions.js";
import { type DwellingQuestion, dwellingQuestionShape } from "./shape.generated.js";

export type { DwellingQuestion };

/** Percent of the rating that the ampacity reaches, from the edition that left the list of sizes. */
const percentOfRating = 83;

/** Termination temperature in degrees Celsius, for which the list of sizes was made. */
const dwellingColumn = 75;

/** The ungrounded conductors of a dwelling's service or feeder. */
export interface DwellingConductor {
  /** Tells results apart. */
  readonly kind: "dwelling-conductor";
  /** Edition. */
  readonly edition: EditionYear;
  /** Smallest conductor permitted. */
  readonly size: StandardSize;
  /** What the edition goes by. */
  readonly by: "list" | "percentage";
  /** Amperes that the conductor has to reach in its place; `null` by the list, which no correction or adjustment enters. */
  readonly required: number | null;
  /** Amperes of the conductor in its place, or of the table where no conditions were given. */
  readonly amperes: number;
  /** The weakest that it rests on. */
  readonly evidence: Evidence;
  /** Where the edition says so, and how surely it is known. */
  readonly citation: Citation;
}

/**
 * The ungrounded conductors of a service or feeder of 100 through 400 A that carries the whole load of one dwelling: through 2011 by a list of
 * sizes, from 2014 with an ampacity of 83 percent of the rating (310.12). A dwelling on two phases of a wye is reached from 2017 on.
 *
 * @param question - edition, rating in amperes, material, what supplies the dwelling, and the conditions of use; by default those of the ampacity
 *   table, at 75 C
 * @returns the smallest conductor, and what it has to reach
 * @throws {@link InputError} listing everything that is wrong: a rating outside of the allowance, a system that the edition does not name, a
 *   rating that nothing reaches under these conditions
 *
 * @example
 * ```ts
 * import { dwellingConductor } from "bondmil";
 * const house = { amperes: 200, material: "aluminum", system: "120/240-three-wire" } as const;
 * dwellingConductor({ edition: "2008", ...house }).size; // => "4/0 AWG"
 * dwellingConductor({ edition: "2023", ...house }).required; // => 166
 * const conditions = {
 *   insulation: "XHHW-2",
 *   place: { location: "wet", ambient: { celsius: 45 } },
 *   terminations: { marked: 75 },
 * } as const;
 * dwellingConductor({ edition: "2023", ...house, amperes: 225, conditions }).size; // => "250 kcmil"
 * ```
 */
export function dwellingConductor(question: DwellingQuestion): DwellingConductor {
  return readAll(question, (at) => {
    const read = readShape<DwellingQuestion>(at, dwellingQuestionShape, refine);
    if (read === undefined) return undefined;
    return dwellingConductorsBy[read.edition] === "list" ? byList(read) : byPercentage(at, read);
  });
}

function refine(at: Reader, { edition, system, conditions }: Members<DwellingQuestion>): void {
  if (edition === undefined) return;
  if (system === "208Y/120-two-phases" && !dwellingTwoPhasesOfWye[edition]) {
    const expected = "120/240-three-wire, the one system that the allowance has in this edition";
    refuse(member(at, "system"), "unknown-value", expected, "size others by their load", [
      "120/240-three-wire",
    ]);
  }
  if (conditions !== undefined) refineConditions(member(at, "conditions"), edition, conditions);
}

/** A rating between two of the list takes the larger one. */
function byList({ edition, amperes, material }: DwellingQuestion): DwellingConductor {
  const table = dwellingConductors[edition];
  const row = table?.rows.find((one) => one.amperes >= amperes);
  if (table === null || row === undefined) throw new TypeError("the list of dwellings ends below 400 A");
  const column = columnOf(material);
  const size = standardSizeFor(areaOf(row[column])) ?? "4 AWG";
  const own = amperesIn(edition, size, material, dwellingColumn) ?? 0;
  const cell = { section: table.number, evidence: evidenceOfCell(table, row.amperes, column) };
  const citation = together([cell]);
  const { evidence } = citation;
  return {
    kind: "dwelling-conductor",
    edition,
    size,
    by: "list",
    required: null,
    amperes: own,
    evidence,
    citation,
  };
}

function byPercentage(
  at: Reader,
  { edition, amperes, material, system, conditions }: DwellingQuestion,
): DwellingConductor | undefined {
  const required = (amperes * percentOfRating) / 100;
  const under = conditions === undefined ? null : conditionsIn(edition, conditions);
  const own = (size: StandardSize): number =>
    (under === null
      ? amperesIn(edition, size, material, dwellingColumn)
      : amperesUnder(under, size, material)) ?? 0;
  const size = standardSizes.find((one) => own(one) >= required);
  if (size === undefined) return refuseAmperes(at, Math.max(...standardSizes.map(own)));
  const places = [
    dwellingAllowance[edition],
    ...(system === "208Y/120-two-phases" ? [dwellingTwoPhases[edition]] : []),
    ...placesOf(under),
  ];
  const citation = together([...places, ampacityIn(edition, size, material, dwellingColumn).citation]);
  return {
    kind: "dwelling-conductor",
    edition,
    size,
    by: "percentage",
    required,
    amperes: own(size),
    evidence: citation.evidence,
    citation,
  };
}

function placesOf(under: Conditions | null): readonly Citation[] {
  if (under === null) return [];
  const { column, rooftop, ambient, adjustment, terminations } = under;
  const factors = [rooftop, ambient, adjustment].flatMap((one) => (one === null ? [] : [one.citation]));
  return [column.citation, ...factors, terminations.citation];
}

function refuseAmperes(at: Reader, most: number): undefined {
  const nearest = Math.floor((100 * most) / percentOfRating);
  const expected = `a rating that one conductor reaches under these conditions, at most ${nearest} A`;
  return refuse(member(at, "amperes"), "out-of-range", expected, "size several in parallel by the load");
}
