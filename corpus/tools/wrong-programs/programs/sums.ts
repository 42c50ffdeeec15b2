import { areaOf, type Supply, type SupplySet } from "../../../../src/index.js";
import { inMemory, policies } from "../in-memory.js";
import { type AnyInput, both, onDecided, onInput, type Wrong, withArea } from "../program.js";
import {
  conductorsOf,
  countSets,
  largestOf,
  onSets,
  onSupplies,
  phasesOf,
  setsOf,
  sumOf,
} from "../supplies.js";

const times = (factor: number) => (set: SupplySet) => ({ ...set, count: set.count * factor });
const alike = (
  set: SupplySet,
  pick: (set: SupplySet) => ReturnType<typeof largestOf> | undefined,
): SupplySet => {
  const picked = pick(set);
  return picked === undefined ? set : { count: set.count, ...picked };
};
const smallestOf = (set: SupplySet) => [...phasesOf(set)].sort((a, b) => areaOf(a.size) - areaOf(b.size))[0];
const largestEntry = ({ sets }: Supply): readonly SupplySet[] => {
  const areas = sets.map((set) => sumOf({ sets: [set] }));
  return sets.slice(areas.indexOf(Math.max(...areas))).slice(0, 1);
};
const byCount = (change: (area: number, count: number) => number): Wrong =>
  onDecided((decided, { input: { supply } }) => {
    const count = supply === undefined ? 1 : countSets(supply);
    return count === 1 ? decided : withArea(decided, change(decided.requiredArea, count));
  });
const inScope = (isRaceway: boolean, input: AnyInput, map: (set: SupplySet) => SupplySet): AnyInput =>
  input.supply !== undefined && (input.scope === "raceway") === isRaceway
    ? { ...input, supply: { ...input.supply, sets: input.supply.sets.map(map) } }
    : input;

/** Programs that count the ungrounded conductors otherwise. */
export const ofSums: Readonly<Record<string, Wrong>> = {
  "sets-ignored": onSets((set) => ({ ...set, count: 1 })),
  "phases-summed": onSets(times(3)),
  "all-conductors-as-sets": onSets(times(4)),
  "first-entry-only": onSupplies((supply) => ({ ...supply, sets: supply.sets.slice(0, 1) })),
  "largest-entry-only": onSupplies((supply) => ({ ...supply, sets: largestEntry(supply) })),
  "first-phase-only": onSets((set) => alike(set, (one) => phasesOf(one)[0])),
  "smallest-phase-only": onSets((set) => alike(set, smallestOf)),
  "largest-of-each-set-always": onSets((set) => alike(set, (one) => largestOf(phasesOf(one)))),
  "corresponding-always": inMemory(({ year }) => policies(year, () => ({ sum: "corresponding" }))),
  "one-largest-conductor": onSupplies((supply) => setsOf(1, largestOf(conductorsOf(supply)))),
  "result-divided-by-sets": byCount((area, count) => area / count),
  "result-times-sets": byCount((area, count) => area * count),
  "whole-supply-for-each-raceway": onInput((input) => inScope(true, input, times(2))),
  "one-raceway-for-all": both(onInput((input) => inScope(false, input, (set) => ({ ...set, count: 1 })))),
};
