import type { EditionYear } from "./edition-year.js";
import type { Policy } from "./policy.js";
import type { RatingPolicy } from "./rating-policy.js";

/** Which sets of policies a reading concerns, in which editions, and what each alternative changes in them. */
export interface ReadingFacts<Alternative extends string> {
  readonly policies: readonly string[];
  readonly editions: readonly EditionYear[];
  readonly policy: Readonly<Record<Alternative, Partial<Policy> | Partial<RatingPolicy>>>;
}
