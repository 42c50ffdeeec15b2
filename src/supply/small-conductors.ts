import { areaOf, columnOf, type Material, type StandardSize, standardSizeFor } from "../conductor/index.js";
import type { Citation, EditionYear } from "../edition/index.js";
import {
  leastAboveFifteenAmperes,
  leastAboveThirtyAmperes,
  leastAboveTwentyAmperes,
  leastAboveTwentyFiveAmperes,
} from "../edition/tables/named-sizes.generated.js";

/** The smallest conductor that the device of a circuit may protect, its ampacity aside. */
export interface LeastOfCircuit {
  readonly size: StandardSize;
  readonly citation: Citation;
}

const leastAbove = [
  [30, leastAboveThirtyAmperes],
  [25, leastAboveTwentyFiveAmperes],
  [20, leastAboveTwentyAmperes],
  [15, leastAboveFifteenAmperes],
] as const;

/** The smallest conductor of a circuit of so many amperes (240.4(D)); `null` through 15 A, where the table's smallest will do. */
export function leastOfCircuit(
  year: EditionYear,
  circuitAmperes: number,
  material: Material,
): LeastOfCircuit | null {
  const found = leastAbove.find(([amperes]) => circuitAmperes > amperes);
  if (found === undefined) return null;
  const { citation, ...sizes } = found[1][year];
  const size = standardSizeFor(areaOf(sizes[columnOf(material)] ?? sizes.copper));
  return size === null ? null : { size, citation };
}

/** The larger of two sizes. */
export function largerSize(one: StandardSize, other: StandardSize): StandardSize {
  return areaOf(other) > areaOf(one) ? other : one;
}
