import { ampacityIn, smallestConductorIn } from "../ampacity/raceway.js";
import type { EditionYear } from "../edition/index.js";
import { member, type Reader, refuse } from "../input/reader.js";
import { ampacityOrNextLarger } from "../supply/equal-ampacity.js";
import type { Supply } from "../supply/index.js";
import { sumOf } from "../supply/sums.js";

/**
 * Most amperes of a transformer of at most 1000 VA: what it gives at 10 V. A bound of this library's own, wide on purpose: what lies
 * above it is no such transformer.
 */
export const mostControlTransformerAmperes = 100;

/** Largest rating in amperes of a branch circuit that supplies more than one piece of equipment (210.3, since 2020 210.18). */
export const mostSharedBranchCircuitAmperes = 50;

/**
 * Whether conductors are larger than a current requires, with the step to the next size: all sets together, at 60 C, so that no lower
 * temperature explains their size.
 */
export function carriesMoreThan(supply: Supply, amperes: number, year: EditionYear): boolean {
  const least = smallestConductorIn(year, amperes, "copper", 60);
  if (least === null) return false;
  const enough = ampacityIn(year, least, "copper", 60).amperes ?? amperes;
  return sumOf(supply, "largest", (one) => ampacityOrNextLarger(year, one, 60).amperes) > enough;
}

/** Refuses conductors that no transformer of at most 1000 VA has. */
export function refuseLargeControlTransformer(at: Reader, supply: Supply, year: EditionYear): void {
  if (!carriesMoreThan(supply, mostControlTransformerAmperes, year)) return;
  refuse(
    member(at, "controlTransformer"),
    "out-of-range",
    `no control transformer with conductors for more than ${mostControlTransformerAmperes} A`,
    "leave it out: a transformer of at most 1000 VA gives no such current at 10 V or more",
  );
}
