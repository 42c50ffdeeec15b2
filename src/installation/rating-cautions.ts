import type { EditionYear } from "../edition/index.js";
import { ampacityOrNextLarger } from "../supply/equal-ampacity.js";
import { sumOf } from "../supply/sums.js";
import type { PlacedCaution } from "./schedule.js";
import { servingTo } from "./serving.js";
import type { DrawnRun } from "./supplies.js";

/** Largest rating in amperes whose conductors may carry no more than the next smaller standard rating. */
const mostWithNextSizeUp = 800;

/** No standard rating is more than a third above the one before it, so that more than this is not covered by the next size up. */
const [nextSizeUp, ofConductors] = [3, 4];

/**
 * Disconnects whose conductors carry clearly less than their rating: all sets together, at 75 C. The library does not size ungrounded
 * conductors; a rating that does not fit them tells that one of the two is a slip of the pen.
 */
export function ratingCautions(
  disconnects: readonly {
    /** Stable id. */
    readonly id: string;
    readonly amperes: number;
  }[],
  runs: readonly DrawnRun[],
  year: EditionYear,
): readonly PlacedCaution[] {
  return disconnects.flatMap(({ id, amperes }): readonly PlacedCaution[] => {
    const { supply } = servingTo(runs, id, year);
    const carried = sumOf(supply, "corresponding", (one) => ampacityOrNextLarger(year, one, 75).amperes);
    const isCovered =
      amperes <= mostWithNextSizeUp ? amperes * nextSizeUp <= carried * ofConductors : amperes <= carried;
    return isCovered ? [] : [{ code: "conductors-below-rating", section: null, at: id }];
  });
}
