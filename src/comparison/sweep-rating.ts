import { plainly } from "../asking/plainly.js";
import { size } from "../asking/size.js";
import type { Material } from "../conductor/index.js";
import { type EditionYear, editionYears } from "../edition/index.js";
import type { RoleByRating } from "../roles/definition.js";
import { ratingTable } from "../rules/rating-table.js";
import { answerOf } from "./ask.js";
import type { RatingSweep } from "./shape.generated.js";
import { type Swept, type SweptEdition, sweptOf } from "./swept.js";

/** One device under one edition. */
export interface RatingSweepRow extends SweptEdition, Swept {
  /** Rating of the device. */
  readonly amperes: number;
  /** Material of the conductor to be sized. */
  readonly material: Material;
}

/** One row for every rating in every edition, the request being checked. */
export function ratingRows(
  role: RoleByRating,
  { editions = editionYears, material, ratings = rowEnds(editions), with: more = {} }: RatingSweep,
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
