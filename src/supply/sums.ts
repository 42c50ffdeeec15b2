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
export function sumOf(supply: Supply, rule: SumRule, area: AreaOfConductor = ownArea): number {
  if (rule === "largest-conductor") return Math.max(...conductorsOf(supply).map(area));
  if (rule === "largest") {
    return total(
      supply.sets.map((set) =>
        mulExact(set.count, Math.max(...phasesOf(set).map((one) => (one ? area(one) : 0)))),
      ),
    );
  }
  const phases = Math.max(1, ...supply.sets.map((set) => phasesOf(set).length));
  return Math.max(
    ...Array.from({ length: phases }, (_, phase) =>
      total(supply.sets.map((set) => mulExact(set.count, inPhase(set, phase, area)))),
    ),
  );
}

/** Area of one conductor as installed. */
export function ownArea(conductor: Conductor): number {
  return areaOf(conductor.size);
}

/** The column of the whole supply, or `mixed` if copper stands beside aluminum. */
export function columnOfSupply(supply: Supply): ConductorColumn | "mixed" {
  const columns = new Set(conductorsOf(supply).map((conductor) => columnOf(conductor.material)));
  const [first] = columns;
  return columns.size === 1 && first !== undefined ? first : "mixed";
}

/** Every different conductor of a supply, in order of mention. */
export function conductorsOf(supply: Supply): readonly Conductor[] {
  return supply.sets.flatMap((set) => ("phases" in set ? set.phases.filter((one) => one !== null) : set));
}

/** Number of sets. */
export function countSets(supply: Supply): number {
  return total(supply.sets.map((set) => set.count));
}

function phasesOf(set: SupplySet): readonly (Conductor | null)[] {
  return "phases" in set ? set.phases : [set];
}

function inPhase(set: SupplySet, phase: number, area: AreaOfConductor): number {
  if (!("phases" in set)) return area(set);
  const conductor = set.phases[phase];
  return conductor ? area(conductor) : 0;
}

function total(areas: readonly number[]): number {
  return areas.reduce((sum, area) => sum + area, 0);
}
