import type { EditionYear } from "../../src/index.js";
import { type Answer, ask } from "./answer.js";
import { type Judgement, judge } from "./judge.js";
import type { Library } from "./library.js";
import type { Entry } from "./model.js";

/** One check under one edition. */
export interface Run extends Judgement {
  readonly entry: Entry;
  readonly edition: EditionYear;
  readonly answer: Answer;
}

/** Runs every check under every edition in which it holds. */
export function runChecks(entries: readonly Entry[], library: Library): readonly Run[] {
  return entries.flatMap((entry) =>
    entry.check.holds.map((edition) => {
      const answer = ask(library, entry, { year: edition });
      return { entry, edition, answer, ...judge(entry.check, answer) };
    }),
  );
}
