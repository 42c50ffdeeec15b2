import type { EditionYear } from "bondmil";
import { standardRatings } from "../../../src/edition/tables/standard-ratings.generated.js";

/** The standard ratings of devices of any kind from 15 A through a limit, in amperes (240.6(A)). */
export function ratingsThrough(year: EditionYear, limit: number): readonly number[] {
  return standardRatings[year].rows
    .filter(({ device, amperes }) => device === "any" && amperes >= 15 && amperes <= limit)
    .map(({ amperes }) => amperes);
}
