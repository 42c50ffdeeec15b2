import type { EditionYear } from "../../../src/index.js";
import { type Marks, useResult } from "../../../src/input/given-result.js";
import { withOneError } from "../../../tables/tools/one-error.js";
import { checkGiven } from "../read-arguments.js";
import { ask, type Given, type Implementation, type Question } from "./answer.js";
import { type Judgement, judge } from "./judge.js";
import type { Entry } from "./model.js";

/** One check under one edition, still to be answered. */
export interface Case extends Entry {
  /** Edition of NFPA 70, by its year. */
  readonly edition: EditionYear;
  /** What to ask an implementation, and no more than that. */
  readonly question: Question;
}

/** One check under one edition, answered and judged. */
export interface Row extends Entry, Judgement {
  /** Edition of NFPA 70, by its year. */
  readonly edition: EditionYear;
  /** The implementation's answer. */
  readonly given: Given;
}

/** Every check under every edition in which it holds. */
export function casesIn(entries: readonly Entry[]): readonly Case[] {
  return entries.flatMap((entry) =>
    entry.check.holds.map((edition) => ({
      ...entry,
      edition,
      // The file of a role holds inputs of that role.
      question: { role: entry.role, edition, input: entry.check.input } as Question,
    })),
  );
}

/**
 * Holds an answer against its case.
 *
 * @param of - a case that `corpusCases` gave
 * @param given - what the implementation answered, or `{ thrown }` where it failed
 * @returns the row that `runCorpus` would have for it
 * @throws `InputError` of `bondmil` for anything but a case and an answer
 *
 * @example
 * ```ts
 * import { corpusCases, judgeCase } from "bondmil/corpus";
 *
 * const [one] = corpusCases({ source: "homework-answer-load-side", edition: "2020" });
 * const bySource = one && judgeCase(one, { size: "4 AWG" });
 * [bySource?.verdict, bySource?.expected]; // => ["changed-side", { size: "6 AWG" }]
 * ```
 */
export function judgeCase(of: Case, given: Given): Row {
  checkGiven(given);
  return withOneError(() => useResult(of, "corpusCases", caseMarks, (one) => judged(one, given)));
}

const caseMarks: Marks<Case> = { role: "text", source: "text", check: "object", edition: "text" };

function judged({ role, source, check, edition }: Case, given: Given): Row {
  return { role, source, check, edition, given, ...judge(check, given) };
}

/** Puts every case of these checks to an implementation. */
export function runChecks(entries: readonly Entry[], implementation: Implementation): readonly Row[] {
  return casesIn(entries).map((one) => judged(one, ask(implementation, one.question)));
}
