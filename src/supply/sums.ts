import { areaOf, type ConductorColumn, columnOf } from "../conductor/index.js";
import type { SumRule } from "../edition/index.js";
import { readAll } from "../input/reader.js";
import { mulExact } from "../units/exact.js";
import { readSupply } from "./read.js";
import type { Conductor, Supply, SupplySet } from "./shape.generated.js";

/** What one conductor adds to a sum; its own area unless it is replaced by an assumed conductor. */
export type AreaOfConductor = (conductor: Conductor) => number;

/**
 * The largest phase-by-phase sum over all sets: the equivalent area of parallel sets, and of several sets together
 * (250.28(D)(3), and the note on several sets).
 *
 * @param supply - ungrounded conductors
 * @returns circular mils
 * @throws {@link InputError} listing everything that is wrong in the supply
 *
 * @example
 * ```ts
 * import { correspondingSum } from "bondmil";
 * const big = { size: "500 kcmil", material: "copper" } as const;
 * const small = { size: "250 kcmil", material: "copper" } as const;
 * correspondingSum({ sets: [{ count: 1, phases: [big, small, small] }, { count: 1, phases: [small, big, small] }] }); // => 750000
 * ```
 */
export function correspondingSum(supply: Supply): number {
  return sumOf(readAll(supply, readSupply), "corresponding");
}

/**
 * Each set's largest conductor, added (250.64(D)(1); since 2023 also 250.24(D)(2) and 250.102(C)(2)).
 *
 * @param supply - ungrounded conductors
 * @returns circular mils
 * @throws {@link InputError} listing everything that is wrong in the supply
 *
 * @example
 * ```ts
 * import { sumOfLargest } from "bondmil";
 * const big = { size: "500 kcmil", material: "copper" } as const;
 * const small = { size: "250 kcmil", material: "copper" } as const;
 * sumOfLargest({ sets: [{ count: 1, phases: [big, small, small] }, { count: 1, phases: [small, big, small] }] }); // => 1000000
 * ```
 */
export function sumOfLargest(supply: Supply): number {
  return sumOf(readAll(supply, readSupply), "largest");
}

/** The sum that a rule names, with each conductor counted by `area`. */
export function sumOf({ sets }: Supply, rule: SumRule, area: AreaOfConductor = ownArea): number {
  if (rule === "largest-conductor")
    return sets.reduce((most, set) => Math.max(most, largestIn(set, area)), 0);
  if (rule === "largest")
    return sets.reduce((sum, set) => sum + mulExact(set.count, largestIn(set, area)), 0);
  let phases = 1;
  for (const set of sets) if ("phases" in set) phases = Math.max(phases, set.phases.length);
  let most = 0;
  for (let phase = 0; phase < phases; phase += 1) {
    most = Math.max(
      most,
      sets.reduce((sum, set) => sum + mulExact(set.count, inPhase(set, phase, area)), 0),
    );
  }
  return most;
}

/** Area of one conductor as installed. */
export function ownArea(conductor: Conductor): number {
  return areaOf(conductor.size);
}

/** The column of the whole supply, or `mixed` if copper stands beside aluminum. */
export function columnOfSupply(supply: Supply): ConductorColumn | "mixed" {
  let column: ConductorColumn | null = null;
  for (const { material } of conductorsOf(supply)) {
    const own = columnOf(material);
    if (column !== null && own !== column) return "mixed";
    column = own;
  }
  return column ?? "mixed";
}

/** Every different conductor of a supply, in order of mention. */
export function conductorsOf({ sets }: Supply): readonly Conductor[] {
  const conductors: Conductor[] = [];
  for (const set of sets) {
    if (!("phases" in set)) conductors.push(set);
    else for (const one of set.phases) if (one !== null) conductors.push(one);
  }
  return conductors;
}

/** Number of sets. */
export function countSets({ sets }: Supply): number {
  return sets.reduce((sum, { count }) => sum + count, 0);
}

function largestIn(set: SupplySet, area: AreaOfConductor): number {
  if (!("phases" in set)) return area(set);
  return set.phases.reduce((most, one) => (one === null ? most : Math.max(most, area(one))), 0);
}

function inPhase(set: SupplySet, phase: number, area: AreaOfConductor): number {
  if (!("phases" in set)) return area(set);
  const conductor = set.phases[phase];
  return conductor ? area(conductor) : 0;
}
