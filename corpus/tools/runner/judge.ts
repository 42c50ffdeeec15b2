import { areaOf, isConductorSize } from "../../../src/index.js";
import type { Given, ShownFigures } from "./answer.js";
import type { Check, Expectation, Figures } from "./model.js";

/**
 * `met`, `missed`, `changed-side` (a disputed check whose source is now followed, against the text), or `unanswered` (the implementation
 * does not size such a conductor).
 */
export type Verdict = "met" | "missed" | "changed-side" | "unanswered";

/** A figure of the source that the implementation has otherwise, in circular mils. */
export interface WrongFigure {
  /** Name for people. */
  readonly name: keyof Figures;
  /** The figure of the source. */
  readonly expected: number;
  /** The figure of the implementation. */
  readonly given: number | null;
}

/** A verdict with the figures that led to it. */
export interface Judgement {
  /** What the comparison came to. */
  readonly verdict: Verdict;
  /** What the implementation must give: the text's answer where the source's is disputed. */
  readonly expected: Expectation;
  /** Figures that differ. */
  readonly figures: readonly WrongFigure[];
  /** Figures of the check that the implementation does not show, so that they were not compared. */
  readonly skipped: readonly (keyof Figures)[];
}

/** Holds an answer against a check. The figures of a disputed source are its own affair. */
export function judge(check: Check, given: Given): Judgement {
  const { dispute, expect } = check;
  const expected = dispute?.expectByText ?? expect;
  if (given === null) return { verdict: "unanswered", expected, figures: [], skipped: [] };
  const wanted = dispute === undefined ? (check.figures ?? {}) : {};
  const { figures, skipped } = compareFigures(wanted, expected, given);
  if (agrees(expected, given) && figures.length === 0) return { verdict: "met", expected, figures, skipped };
  const changed = dispute !== undefined && agrees(expect, given);
  return { verdict: changed ? "changed-side" : "missed", expected, figures, skipped };
}

function agrees(expected: Expectation, given: Given): boolean {
  if (given === null || "thrown" in given) return false;
  if ("error" in expected) return "errors" in given && given.errors.includes(expected.error);
  if ("errors" in given) return false;
  if ("notLargerThan" in expected) return isWithin(given, 0, areaOf(expected.notLargerThan));
  if ("notSmallerThan" in expected) return isWithin(given, areaOf(expected.notSmallerThan), Infinity);
  const { requiredArea } = expected;
  const mustShow = "outcome" in expected && expected.outcome === "area-only";
  if (given.requiredArea === undefined && mustShow) return false;
  const differs = given.requiredArea !== undefined && given.requiredArea !== requiredArea;
  if (requiredArea !== undefined && differs) return false;
  if ("size" in expected) {
    return "size" in given && given.size === expected.size && (given.quantity ?? 1) === 1;
  }
  return "outcome" in given && given.outcome === expected.outcome;
}

/** Whether one conductor is given whose area lies within these limits, in circular mils. */
function isWithin(given: Exclude<Given, null>, least: number, most: number): boolean {
  if (!("size" in given) || (given.quantity ?? 1) !== 1 || !isConductorSize(given.size)) return false;
  const area = areaOf(given.size);
  return least <= area && area <= most;
}

const figureNames = ["sum", "assumedSum", "requiredArea"] as const satisfies readonly (keyof Figures)[];

function compareFigures(
  wanted: Figures,
  expected: Expectation,
  given: Given,
): Pick<Judgement, "figures" | "skipped"> {
  if (given === null || !("size" in given || "outcome" in given)) return { figures: [], skipped: [] };
  const shown: ShownFigures = given;
  const figures: WrongFigure[] = [];
  const skipped: (keyof Figures)[] = [];
  for (const name of figureNames) {
    const figure = wanted[name];
    const own = shown[name];
    const isAnswer = name === "requiredArea" && "requiredArea" in expected;
    if (own === undefined && (figure !== undefined || isAnswer)) skipped.push(name);
    else if (figure !== undefined && own !== undefined && own !== figure) {
      figures.push({ name, expected: figure, given: own });
    }
  }
  return { figures, skipped };
}
