import type { EditionYear, Readings } from "../edition/index.js";
import { type Asking, answerOf, withReading } from "./ask.js";
import { changesBetween, isAbout, isOfRules } from "./changes.js";
import type { Change, CodedInput, ComparedResult, ReadingBehind } from "./comparison.js";

/** A result with the input and the edition that it is for. */
export interface Dated<Input extends CodedInput, Result extends ComparedResult> {
  readonly edition: EditionYear;
  readonly input: Input;
  readonly result: Result;
}

/**
 * Marks the changes of rules that another alternative of an open reading would undo: there the editions may say the same, and only
 * how one of them is read makes the difference.
 */
export function explainedByReadings<Input extends CodedInput, Result extends ComparedResult>(
  ask: Asking<Input, Result>,
  before: Dated<Input, Result>,
  after: Dated<Input, Result>,
  changes: readonly Change[],
): readonly Change[] {
  const rules = changes.filter(isOfRules);
  const tried = [
    ...alternativesOf(before).map((because) => {
      const result = readOtherwise(ask, before.input, because);
      return {
        because,
        left: result === null ? null : changesBetween(result, after.result).filter(isOfRules),
      };
    }),
    ...alternativesOf(after).map((because) => {
      const result = readOtherwise(ask, after.input, because);
      return {
        because,
        left: result === null ? null : changesBetween(before.result, result).filter(isOfRules),
      };
    }),
  ];
  const explanations = tried.flatMap(({ because, left }) =>
    left?.every((one) => rules.some((rule) => isAbout(rule, one))) ? [{ because, left }] : [],
  );
  const [best] = [...explanations].sort((a, b) => a.left.length - b.left.length);
  if (best === undefined) return changes;
  const isUndone = (change: Change): boolean =>
    isOfRules(change) && !best.left.some((one) => isAbout(one, change));
  return changes.map((change) =>
    isUndone(change) ? { ...change, kind: "reading", because: { ...best.because } } : change,
  );
}

function alternativesOf<Input extends CodedInput, Result extends ComparedResult>({
  edition,
  result,
}: Dated<Input, Result>): readonly ReadingBehind[] {
  if (!("readings" in result)) return [];
  return result.readings.flatMap(({ id: reading, chosen, otherwise }) =>
    otherwise.map(({ alternative }) => ({ reading, edition, chosen, alternative })),
  );
}

function readOtherwise<Input extends CodedInput, Result extends ComparedResult>(
  ask: Asking<Input, Result>,
  input: Input,
  { reading, alternative }: { readonly reading: keyof Readings; readonly alternative: string },
): Result | null {
  return answerOf(ask, withReading(input, reading, alternative)).result ?? null;
}
