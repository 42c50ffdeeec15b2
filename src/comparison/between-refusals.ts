import type { Answer } from "./ask.js";
import { citedIn, outcomeName } from "./changes.js";
import type { Change, ComparedResult, Effect } from "./comparison.js";

/** What changed where one of two answers is a refusal; two that refuse alike have nothing to tell. */
export function betweenRefusals<Result extends ComparedResult>(
  old: Answer<Result>,
  now: Answer<Result>,
): { readonly effect: Effect; readonly changes: readonly Change[] } {
  const [before, after] = [nameOf(old), nameOf(now)];
  const change: Change = {
    kind: "policy",
    what: "outcome",
    of: null,
    before,
    after,
    ...citedIn(old.result?.citation, now.result?.citation),
  };
  const alike = (old.result === undefined) === (now.result === undefined);
  return { effect: alike ? "same" : "other-outcome", changes: before === after ? [] : [change] };
}

function nameOf<Result extends ComparedResult>({ result, refused }: Answer<Result>): string {
  if (result !== undefined) return outcomeName(result);
  return `refused: ${(refused ?? []).map(({ code, path }) => `${code} ${path}`).join(", ")}`;
}
