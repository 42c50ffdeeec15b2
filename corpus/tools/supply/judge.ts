import { type Expected, expectedOf, type SupplyCheck } from "./model.js";

/** `changed-side`: of a disputed check, what the source says is met and what the text requires is not. */
export type SupplyVerdict = "met" | "missed" | "changed-side";

/** A place of an answer that is not as expected. */
export interface Unmet {
  /** Where in the answer, for example `steps[0].factor`. */
  readonly path: string;
  readonly expected: Expected;
  readonly given: unknown;
}

/** A verdict with the places that are not as expected. */
export interface SupplyJudgement {
  readonly verdict: SupplyVerdict;
  readonly unmet: readonly Unmet[];
}

/** Holds an answer against what is expected of it. */
export function judgeAnswer(check: SupplyCheck, answer: unknown): SupplyJudgement {
  const unmet = unmetIn(answer, expectedOf(check), "");
  if (unmet.length === 0) return { verdict: "met", unmet };
  const sourceIsMet = check.dispute !== undefined && unmetIn(answer, check.expect, "").length === 0;
  return { verdict: sourceIsMet ? "changed-side" : "missed", unmet };
}

function unmetIn(given: unknown, expected: Expected, path: string): readonly Unmet[] {
  const unmet = [{ path, expected, given }];
  if (typeof expected !== "object" || expected === null) return given === expected ? [] : unmet;
  if (isList(expected)) {
    if (!Array.isArray(given) || given.length !== expected.length) return unmet;
    return expected.flatMap((one, index) => unmetIn(given[index], one, `${path}[${index}]`));
  }
  if (isRounded(expected)) {
    // Half of the last printed place is not exact in binary, so that a value on it needs a hair more.
    const most = expected.within * (1 + 1e-9);
    return typeof given === "number" && Math.abs(given - expected.printed) <= most ? [] : unmet;
  }
  if (isSome(expected)) {
    const items: readonly unknown[] = Array.isArray(given) ? given : [];
    return expected.some.flatMap((one) =>
      items.some((item) => unmetIn(item, one, path).length === 0) ? [] : [{ path, expected: one, given }],
    );
  }
  if (typeof given !== "object" || given === null) return unmet;
  return Object.entries(expected).flatMap(([member, one]) =>
    unmetIn((given as Record<string, unknown>)[member], one, path === "" ? member : `${path}.${member}`),
  );
}

function isList(expected: object): expected is readonly Expected[] {
  return Array.isArray(expected);
}

function isRounded(expected: object): expected is { readonly printed: number; readonly within: number } {
  return "printed" in expected;
}

function isSome(expected: object): expected is { readonly some: readonly Expected[] } {
  return "some" in expected;
}
