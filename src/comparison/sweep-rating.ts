import { plainly } from "../asking/plainly.js";
import { size } from "../asking/size.js";
import type { Material } from "../conductor/index.js";
import { type EditionYear, editionYears } from "../edition/index.js";
import { member, optional, type Reader, readList, readPositive } from "../input/reader.js";
import type { RoleByRating } from "../roles/definition.js";
import { ratingTable } from "../rules/rating-table.js";
import { readMaterial } from "../supply/read.js";
import { answerOf, readEditions } from "./ask.js";
import { type Swept, type SweptEdition, sweptOf } from "./swept.js";

/** The overcurrent devices for which a role is sized, and under which editions. */
export interface RatingSweep {
  /** All editions by default. */
  readonly editions?: readonly EditionYear[];
  /** Material of the conductor to be sized. */
  readonly material: Material;
  /** Ratings in amperes; the last rating of each row of the tables of these editions by default. */
  readonly ratings?: readonly number[];
}

/** One device under one edition. */
export interface RatingSweepRow extends SweptEdition, Swept {
  /** Rating of the device. */
  readonly amperes: number;
  /** Material of the conductor to be sized. */
  readonly material: Material;
}

/** Members of {@link RatingSweep}. */
export const ratingSweepKeys = ["editions", "material", "ratings"] as const;

/** Checks a sweep of ratings. */
export function checkRatingSweep(at: Reader): void {
  readEditions(at);
  readMaterial(member(at, "material"));
  optional(member(at, "ratings"), (ratings) => readList(ratings, (one) => readPositive(one, "amperes")));
}

/** One row for every rating in every edition, the request being checked. */
export function ratingRows<Input>(
  role: RoleByRating,
  { editions = editionYears, material, ratings = rowEnds(editions) }: RatingSweep,
  more: Partial<Input>,
): readonly RatingSweepRow[] {
  return ratings.flatMap((amperes) =>
    editions.map((edition): RatingSweepRow => {
      const input = plainly(role, { code: { year: edition }, material, amperes });
      const answer = answerOf((given: typeof input) => size(role, given), { ...input, ...more });
      return { edition, amperes, material, ...sweptOf(answer) };
    }),
  );
}

function rowEnds(editions: readonly EditionYear[]): readonly number[] {
  const ends = editions.flatMap((year) => ratingTable({ year }).rows.map(({ through }) => through));
  return [...new Set(ends)].sort((a, b) => a - b);
}
