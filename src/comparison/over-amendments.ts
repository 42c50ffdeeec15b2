import { citeAmendment } from "../edition/index.js";
import type { Asking } from "./ask.js";
import { changesBetween, effectOf } from "./changes.js";
import type { AmendedResult, AmendmentComparison, CodedInput, ComparedResult } from "./comparison.js";
import type { AmendmentsRequest } from "./shape.generated.js";

/** What a role takes, under a code with amendments, to be compared without each of them. */
export interface OverAmendments<Input extends CodedInput> extends AmendmentsRequest {
  /** What the role takes. */
  readonly input: Input;
}

/** Compares one input under the edition as printed with the same under each of its amendments alone and under all of them. */
export function overAmendments<Input extends CodedInput, Result extends ComparedResult>(
  ask: Asking<Input, Result>,
  { input }: OverAmendments<Input>,
): AmendmentComparison<Result> {
  // The input as it is comes first: what is wrong in it is refused before any of it is taken.
  const amended = ask(input);
  const { amendments = [], ...printed } = input.code;
  const under = (these: typeof amendments): Result =>
    ask({ ...input, code: these.length === 0 ? printed : { ...printed, amendments: these } });
  const asPrinted = under([]);
  const against = (result: Result): Pick<AmendedResult<Result>, "result" | "effect" | "changes"> => ({
    result,
    effect: effectOf(asPrinted, result),
    changes: changesBetween(asPrinted, result),
  });
  return {
    edition: asPrinted.edition,
    asPrinted,
    each: amendments.map((one) => ({ amendment: citeAmendment(one), ...against(under([one])) })),
    all: against(amended),
  };
}
