import type { Answer } from "./answer.js";
import type { Check, Expectation, Figures } from "./model.js";

/** `changed-side`: a disputed check whose source the library now follows, against the text. */
type Verdict = "met" | "missed" | "changed-side";

/** A figure of the source that the library does not have. */
interface WrongFigure {
  readonly name: keyof Figures;
  readonly expected: number;
  readonly given: number | null;
}

/** A verdict with the figures that led to it. */
export interface Judgement {
  readonly verdict: Verdict;
  readonly figures: readonly WrongFigure[];
}

/** Holds an answer against a check. The figures of a disputed source are its own affair. */
export function judge(check: Check, answer: Answer): Judgement {
  const { dispute, expect } = check;
  if (dispute !== undefined) {
    if (agrees(dispute.expectByText, answer)) return { verdict: "met", figures: [] };
    return { verdict: agrees(expect, answer) ? "changed-side" : "missed", figures: [] };
  }
  const figures = wrongFigures(check.figures ?? {}, answer);
  return { verdict: agrees(expect, answer) && figures.length === 0 ? "met" : "missed", figures };
}

function agrees(expected: Expectation, answer: Answer): boolean {
  if ("error" in expected) return answer.kind === "refused" && answer.codes.includes(expected.error);
  if (answer.kind !== "result") return false;
  const { requiredArea = answer.requiredArea } = expected;
  if (requiredArea !== answer.requiredArea) return false;
  return "size" in expected ? expected.size === answer.size : expected.outcome === answer.outcome;
}

const figureNames = ["sum", "assumedSum", "requiredArea"] as const satisfies readonly (keyof Figures)[];

function wrongFigures(figures: Figures, answer: Answer): readonly WrongFigure[] {
  return figureNames.flatMap((name) => {
    const expected = figures[name];
    const given = answer.kind === "result" ? answer[name] : null;
    return expected === undefined || expected === given ? [] : [{ name, expected, given }];
  });
}
