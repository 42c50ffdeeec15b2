import { type Amendment, citeAmendment } from "../edition/index.js";
import type { Issue } from "../input/input-error.js";
import { pathOf } from "../input/place.js";
import { type Asking, answerOf } from "./ask.js";
import { betweenRefusals } from "./between-refusals.js";
import { changesBetween, effectOf } from "./changes.js";
import type { AmendmentComparison, AmendmentEntry, CodedInput, ComparedResult } from "./comparison.js";
import type { AmendmentsRequest } from "./shape.generated.js";

/** What a role takes, under a code with amendments, to be compared without each of them. */
export interface OverAmendments<Input extends CodedInput> extends AmendmentsRequest {
  /** What the role takes. */
  readonly input: Input;
}

/**
 * Compares one input under the edition as printed with the same under each of its amendments alone and under all of them. One that does
 * not stand without the others, as a cell that would leave its table out of order, is refused in its own entry.
 */
export function overAmendments<Input extends CodedInput, Result extends ComparedResult>(
  ask: Asking<Input, Result>,
  { input }: OverAmendments<Input>,
): AmendmentComparison<Result> {
  // The input as it is comes first: what is wrong in it is refused before any of it is taken.
  const amended = ask(input);
  const { amendments = [], ...printed } = input.code;
  const asPrinted = ask({ ...input, code: printed });
  const against = (result: Result): AmendmentComparison<Result>["all"] => ({
    result,
    effect: effectOf(asPrinted, result),
    changes: changesBetween(asPrinted, result),
  });
  const alone = (one: Amendment, place: number): AmendmentEntry<Result> => {
    const amendment = citeAmendment(one);
    const answer = answerOf(ask, { ...input, code: { ...printed, amendments: [one] } });
    if (answer.refused === undefined) return { amendment, ...against(answer.result) };
    const refused = answer.refused.map((issue) => placedAt(issue, place));
    return { amendment, refused, ...betweenRefusals({ result: asPrinted }, { refused }) };
  };
  return { edition: asPrinted.edition, asPrinted, each: amendments.map(alone), all: against(amended) };
}

/** An issue of an amendment that was asked alone, at its place among all. */
function placedAt(issue: Issue, place: number): Issue {
  const [code, list, first, ...rest] = issue.keys;
  if (code !== "code" || list !== "amendments" || first !== 0) return issue;
  const keys = [code, list, place, ...rest];
  return { ...issue, keys, path: pathOf(keys) };
}
