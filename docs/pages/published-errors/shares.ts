import { countHosts, isNameless } from "../../../corpus/tools/runner/hosts.js";
import { type Entry, voices } from "../../../corpus/tools/runner/model.js";
import { markdownTable } from "../../../src/report/render/markdown.js";
import type { Sources } from "../../../tables/tools/source.js";
import { countSources, type Tally } from "./tally.js";

type Test = (entry: Entry) => boolean;

/** A share in whole percent, or nothing where so few answers make none. */
export function share(part: number, whole: number): string {
  return whole < 10 ? "" : `${Math.round((100 * part) / whole)} %`;
}

/** Columns after the counts of all answers: the same without everything that weighs less. */
export const leftColumns = ["left", "contradict", "share"] as const;

/** What of some answers is left when everything that weighs less is left out. */
export function leftOf(
  answers: readonly Entry[],
  errors: readonly Entry[],
  sources: Sources,
): readonly string[] {
  const all = testsOf(sources);
  const isLeft: Test = (entry) => Object.values(all).every((test) => test(entry));
  const [left, wrong] = [answers.filter(isLeft).length, errors.filter(isLeft).length];
  return [`${left}`, `${wrong}`, share(wrong, left)];
}

/** What each line of the counts leaves out, as what it keeps. */
function testsOf(sources: Sources): Readonly<Record<"isNamed" | "isKnown" | "isFound" | "isGiven", Test>> {
  return {
    isNamed: ({ source }) => !isNameless(source, sources),
    isKnown: ({ check }) => check.voice !== "generated-text" && check.voice !== "unknown",
    isFound: ({ source }) => sources[source]?.findAgain === undefined,
    isGiven: ({ check }) => check.assumed.length === 0,
  };
}

/** The counts with and without what weighs less, and without all of it. */
export function byWeight(tally: Tally, sources: Sources): string {
  const { isNamed, isKnown, isFound, isGiven } = testsOf(sources);
  const isWritten: Test = ({ check }) => check.voice !== "generated-text";
  const rows: readonly (readonly [string, Test])[] = [
    ["all published answers", () => true],
    ["without text that a machine wrote", isWritten],
    ["without question banks, homework sites and files without author", isNamed],
    ["without those whose voice is unknown, and machines", isKnown],
    ["without what has no address of its own", isFound],
    ["only where the source gives the whole input", isGiven],
    ["all of these left out", (entry) => [isNamed, isKnown, isFound, isGiven].every((test) => test(entry))],
  ];
  const line = (name: string, answers: readonly Entry[], errors: readonly Entry[]): readonly string[] => [
    name,
    `${answers.length}`,
    `${countSources(answers)}`,
    `${countHosts(answers, sources)}`,
    `${errors.length}`,
    share(errors.length, answers.length),
  ];
  const { answers, errors, asked } = tally;
  return markdownTable(
    ["", "answers", "sources", "hosts", "contradict", "share"],
    [
      ...rows.map(([name, test]) => line(name, answers.filter(test), errors.filter(test))),
      line(
        "with the wrong guesses of askers, which are not published answers",
        [...answers, ...asked],
        [...errors, ...asked],
      ),
    ],
  );
}

/** The counts by who says it, and how many of the answers have an input that the source gives as a whole. */
export function byVoice({ answers, errors }: Tally): string {
  return markdownTable(
    ["voice", "answers", "contradict", "share", "with nothing assumed", "contradict", "share"],
    voices
      .filter((voice) => answers.some(({ check }) => check.voice === voice))
      .map((voice) => {
        const all = answers.filter(({ check }) => check.voice === voice);
        const wrong = errors.filter(({ check }) => check.voice === voice);
        const given = all.filter(({ check }) => check.assumed.length === 0);
        const wrongGiven = wrong.filter(({ check }) => check.assumed.length === 0);
        return [
          voice,
          ...[`${all.length}`, `${wrong.length}`, share(wrong.length, all.length)],
          ...[`${given.length}`, `${wrongGiven.length}`, share(wrongGiven.length, given.length)],
        ];
      }),
  );
}
