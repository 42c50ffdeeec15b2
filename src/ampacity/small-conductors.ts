import { areaOf, columnOf, type Material, type StandardSize, standardSizeFor } from "../conductor/index.js";
import type { Citation, EditionYear } from "../edition/index.js";
import {
  leastAboveFifteenAmperes,
  leastAboveSevenAmperes,
  leastAboveTenAmperes,
  leastAboveThirtyAmperes,
  leastAboveTwentyAmperes,
  leastAboveTwentyFiveAmperes,
} from "../edition/tables/named-sizes.generated.js";

/** The smallest conductor that the device of a circuit may protect, its ampacity aside. */
export interface LeastOfCircuit {
  readonly size: StandardSize;
  readonly citation: Citation;
}

/** The most that may protect a small conductor, its ampacity aside. */
export interface SmallConductorDevice {
  readonly amperes: number;
  readonly citation: Citation;
}

const leastAbove = [
  [7, leastAboveSevenAmperes],
  [10, leastAboveTenAmperes],
  [15, leastAboveFifteenAmperes],
  [20, leastAboveTwentyAmperes],
  [25, leastAboveTwentyFiveAmperes],
  [30, leastAboveThirtyAmperes],
] as const;

/** The smallest conductor of a circuit of so many amperes (240.4(D)); `null` through 7 A, where the table's smallest will do. */
export function leastOfCircuit(
  year: EditionYear,
  circuitAmperes: number,
  material: Material,
): LeastOfCircuit | null {
  const found = leastAbove.filter(([amperes]) => circuitAmperes > amperes).at(-1);
  return found === undefined ? null : leastIn(found[1], year, material);
}

/** The most that may protect a conductor of so many circular mils (240.4(D)); `null` for one that is not small. */
export function smallConductorDevice(
  year: EditionYear,
  area: number,
  material: Material,
): SmallConductorDevice | null {
  for (const [amperes, sizes] of leastAbove) {
    const least = leastIn(sizes, year, material);
    if (least !== null && areaOf(least.size) > area) return { amperes, citation: least.citation };
  }
  return null;
}

function leastIn(
  named: (typeof leastAbove)[number][1],
  year: EditionYear,
  material: Material,
): LeastOfCircuit | null {
  const { citation, ...sizes } = named[year];
  const size = standardSizeFor(areaOf(sizes[columnOf(material)] ?? sizes.copper));
  return size === null ? null : { size, citation };
}

/** The larger of two sizes. */
export function largerSize(one: StandardSize, other: StandardSize): StandardSize {
  return areaOf(other) > areaOf(one) ? other : one;
}
