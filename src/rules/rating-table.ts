import type { ConductorColumn } from "../conductor/index.js";
import { type Code, type RatingTable, ratingTableUnder } from "../edition/index.js";
import type { RatingRowStep } from "../sizing/index.js";
import { ratingRowStep } from "../sizing/size-by-rating.js";

/** The table of equipment grounding conductors that a code enters. */
export function ratingTable(code: Code): RatingTable {
  return ratingTableUnder(code);
}

/** Largest rating in amperes that the table of a code has a row for. */
export function largestRating(code: Code): number {
  return ratingTable(code).rows.at(-1)?.through ?? 0;
}

/** Rating in amperes at which the first row of the table of a code ends. */
export function smallestRating(code: Code): number {
  return ratingTable(code).rows[0]?.through ?? 0;
}

/**
 * The smallest equipment grounding conductor for a device, for rules that borrow the table. The rating has been checked:
 * positive and not above {@link largestRating}.
 *
 * @param code - the code
 * @param amperes - rating of the device
 * @param column - column of the conductor to be sized
 * @returns circular mils, and the row as a step
 */
export function equipmentGroundingArea(
  code: Code,
  amperes: number,
  column: ConductorColumn,
): { readonly requiredArea: number; readonly step: RatingRowStep } {
  const step = ratingRowStep(ratingTable(code), amperes, column);
  return { requiredArea: step.requiredArea, step };
}
