import { type Conductor, columnOf, correspondingSum, type Supply, sumOfLargest } from "bondmil";
import fc from "fast-check";
import type { PhaseOfSet } from "../../corpus/tools/sql/database.js";
import { ofColumn, supply, supplyOf } from "../laws/arbitraries.js";

/** Its aluminum alone requires 2 AWG copper; all of it, replaced by assumed copper conductors, requires 4 AWG. A draw seldom meets this. */
const lessWhenReplaced: Supply = {
  sets: [
    { count: 3, size: "1 AWG", material: "aluminum" },
    { count: 1, size: "18 AWG", material: "copper" },
  ],
};

/** Supplies drawn at random, and one known edge: a third of any kind, a third with two unlike sums, a third of one metal joined by a small conductor of the other. */
export function listedSupplies(howMany: number): readonly Supply[] {
  const unlike = supply.filter((one) => correspondingSum(one) !== sumOfLargest(one));
  return [lessWhenReplaced, ...[supply, unlike, joined].flatMap((some) => fc.sample(some, howMany / 3))];
}

const joined: fc.Arbitrary<Supply> = fc
  .constantFrom(["copper", "aluminum"] as const, ["aluminum", "copper"] as const)
  .chain(([first, second]) =>
    supplyOf({ materials: ofColumn(first), phases: 1 }).map(({ sets }) => ({
      sets: [...sets.slice(0, 1), { count: 1, size: "18 AWG", material: second }],
    })),
  );

/** Every phase of every set, for the database; a set of one size has it in each phase of the supply. */
export function phasesOf(supplies: readonly Supply[]): readonly PhaseOfSet[] {
  return supplies.flatMap(({ sets }, place) => {
    const most = Math.max(1, ...sets.map((set) => ("phases" in set ? set.phases.length : 1)));
    return sets.flatMap((set, number) =>
      ("phases" in set ? set.phases : new Array<Conductor>(most).fill(set)).flatMap(
        (one, phase): readonly PhaseOfSet[] =>
          one === null ? [] : [[place, number, set.count, phase, one.size, columnOf(one.material)]],
      ),
    );
  });
}
