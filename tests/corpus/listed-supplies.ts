import { type Conductor, columnOf, correspondingSum, type Supply, sumOfLargest } from "bondmil";
import fc from "fast-check";
import type { PhaseOfSet } from "../../corpus/sql/database.js";
import { supply } from "../laws/arbitraries.js";

/** Supplies of one or several entries, of one metal or two, of every size that a table names; as many of them with two unlike sums. */
export function listedSupplies(howMany: number): readonly Supply[] {
  const unlike = supply.filter((one) => correspondingSum(one) !== sumOfLargest(one));
  return [supply, unlike].flatMap((some) => fc.sample(some, howMany / 2));
}

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
