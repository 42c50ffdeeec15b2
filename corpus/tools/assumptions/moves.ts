import type { EditionYear } from "../../../src/index.js";
import { ask, type Given, type Implementation, type Question } from "../runner/answer.js";
import { judge } from "../runner/judge.js";
import type { Entry } from "../runner/model.js";
import { alternativesAt, type Settled } from "./alternatives.js";
import { withValueAt } from "./places.js";

/** An assumed place at which another value gives another answer than the expected one. */
export interface Move {
  readonly path: string;
  readonly value: unknown;
  readonly edition: EditionYear;
  readonly given: Given;
  /** Where the code itself says what holds when nothing is said, so that the answer does not hang on us. */
  readonly settledBy?: Settled;
}

/**
 * The first move at each assumed place, those that the code does not settle before the others. An input that the implementation refuses is
 * no alternative. What is expected is the answer of the text where the source is disputed.
 */
export function movesOf({ role, check }: Entry, implementation: Implementation): readonly Move[] {
  return check.assumed.flatMap((path) => {
    const moves = alternativesAt(check, path).flatMap((alternative) =>
      check.holds.flatMap((edition): readonly Move[] => {
        const input = withValueAt(check.input, path, alternative.value);
        const given = ask(implementation, { role, edition, input } as Question);
        return isAnswer(given) && judge(withoutFigures(check), given).verdict !== "met"
          ? [{ path, edition, given, ...alternative }]
          : [];
      }),
    );
    const first = moves.find(({ settledBy }) => settledBy === undefined) ?? moves[0];
    return first === undefined ? [] : [first];
  });
}

/** Whether an answer hangs on something that is ours, and that the code does not settle. */
export function hangs(entry: Entry, implementation: Implementation): boolean {
  return movesOf(entry, implementation).some(({ settledBy }) => settledBy === undefined);
}

function isAnswer(given: Given): boolean {
  return given !== null && !("errors" in given) && !("thrown" in given);
}

/** The figures and areas of a source are those of its own conductors; whether the answer moves is a matter of the size. */
function withoutFigures(check: Entry["check"]): Entry["check"] {
  const { figures: _figures, expect, ...rest } = check;
  return { ...rest, expect: "size" in expect ? { size: expect.size } : expect };
}
