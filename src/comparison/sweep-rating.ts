import type { Material } from "../conductor/index.js";
import { type EditionYear, editionYears } from "../edition/index.js";
import { member, optional, readList, readPositive } from "../input/reader.js";
import type { EquipmentGroundingConductorInput } from "../rules/equipment-grounding-conductor-input.js";
import { ratingTable } from "../rules/rating-table.js";
import type { SizingResult } from "../rules/result.js";
import { readMaterial } from "../supply/read.js";
import { ask, checkRequest, readYears } from "./ask.js";
import { type Swept, type SweptEdition, sweptOf } from "./swept.js";

/** Which overcurrent devices a sizing function is asked for, and under which editions. */
export interface RatingSweepRequest {
  /** A sizing function; one with another input is wrapped, so that it takes the circuits and the material from this. */
  readonly size: (input: EquipmentGroundingConductorInput) => SizingResult;
  /** All editions unless told. */
  readonly years?: readonly EditionYear[];
  /** Material of the conductor to be sized. */
  readonly material: Material;
  /** Ratings in amperes; the row ends of the tables of these editions unless told. */
  readonly ratings?: readonly number[];
}

/** One device under one edition. */
export interface RatingSweepRow extends SweptEdition, Swept {
  /** Rating of the device. */
  readonly amperes: number;
  readonly material: Material;
}

/**
 * Sizes a conductor for many overcurrent devices under many editions, as rows: for each rating the editions one below the other. No
 * circuit conductors are given, so no increase and no limit at them count.
 *
 * @param request - a sizing function, the material, and which ratings and editions
 * @returns flat rows, for JSON or for {@link rowsToCsv}; areas in circular mils
 * @throws {@link InputError} if the request is wrong; what an edition refuses is a row that says so
 *
 * @example
 * ```ts
 * import { sizeEquipmentGroundingConductor, sweepRating } from "bondmil";
 * const rows = sweepRating({
 *   size: sizeEquipmentGroundingConductor,
 *   years: ["2008", "2011"],
 *   material: "aluminum",
 *   ratings: [3000, 4000],
 * });
 * rows.map(({ amperes, edition, size, evidence }) => [amperes, edition, size, evidence]);
 * // => [
 * //   [3000, "2008", "600 kcmil", "carried"], [3000, "2011", "600 kcmil", "single"],
 * //   [4000, "2008", "800 kcmil", "memory"], [4000, "2011", "750 kcmil", "single"],
 * // ]
 * ```
 */
export function sweepRating(request: RatingSweepRequest): readonly RatingSweepRow[] {
  checkRequest(request, ["size", "years", "material", "ratings"], (at) => {
    readYears(at);
    readMaterial(member(at, "material"));
    optional(member(at, "ratings"), (ratings) => readList(ratings, (one) => readPositive(one, "amperes")));
  });
  const { size, years = editionYears, material, ratings = rowEnds(years) } = request;
  return ratings.flatMap((amperes) =>
    years.map((edition): RatingSweepRow => {
      const answer = ask(size, {
        code: { year: edition },
        circuits: [{ device: { amperes } }],
        conductor: { material },
      });
      return { edition, amperes, material, ...sweptOf(answer) };
    }),
  );
}

function rowEnds(years: readonly EditionYear[]): readonly number[] {
  const ends = years.flatMap((year) => ratingTable({ year }).rows.map(({ through }) => through));
  return [...new Set(ends)].sort((a, b) => a - b);
}
