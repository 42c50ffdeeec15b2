import { editionYears, roleIds } from "bondmil";
import { countHosts } from "../../../corpus/tools/runner/hosts.js";
import { sayExpected } from "../../../corpus/tools/runner/misses.js";
import { type Corpus, type Entry, type Mistake, mistakes } from "../../../corpus/tools/runner/model.js";
import { markdownTable, plainText } from "../../../src/report/render/markdown.js";
import type { Sources } from "../../../tables/tools/source.js";
import { inWords } from "../in-words.js";
import { publishedErrors } from "../pictures/errors.js";
import { shown } from "../pictures/picture.js";
import { byVoice, byWeight, leftColumns, leftOf, share } from "./shares.js";
import {
  countSources,
  type Direction,
  type Disputed,
  directionOf,
  type PublishedError,
  type Tally,
  tallyOf,
} from "./tally.js";
import { head, limits, method, weights } from "./words.js";

/** The whole page. `says` explains each mistake, as the schema of the checks does. */
export function publishedErrorsPage(corpus: Corpus, says: Readonly<Record<Mistake, string>>): string {
  const tally = tallyOf(corpus);
  return `${[
    head,
    "## At a glance",
    atAGlance(tally),
    "## By what stands behind them",
    weights,
    byWeight(tally, corpus.sources),
    byVoice(tally),
    "## By kind of source",
    byKind(tally, corpus.sources),
    "## By mistake",
    shown(publishedErrors(corpus)),
    byMistake(tally.errors, says),
    "## By edition",
    "As the source states or dates it. Most sources do neither; such an answer was held against every edition that it could speak of, and counts once.",
    shares(
      "edition",
      [...editionYears, null].map((year) => [year ?? "not stated", ({ check }) => check.stated === year]),
      tally,
      corpus.sources,
    ),
    "## By conductor",
    shares(
      "conductor",
      roleIds.map((role) => [inWords(role), (entry) => entry.role === role]),
      tally,
      corpus.sources,
    ),
    method,
    limits,
    "## The answers",
    "Each by the title of its source and the place in it. The check has the input and the reason, `tables/sources.json` the rest about the source.",
    list(tally.errors, corpus.sources, ({ mistake }) => `\`${mistake}\``),
    "## Answers that the text leaves open",
    "The text can be read for these, or for their way to the number; the library reads it otherwise. They are counted as right above.",
    list(
      tally.open,
      corpus.sources,
      ({ dispute }) => plainText(dispute.reason),
      "why the library reads otherwise",
    ),
  ].join("\n\n")}\n`;
}

function atAGlance({ answers, errors, asked, open }: Tally): string {
  const towards = (direction: Direction): string =>
    `${errors.filter((error) => directionOf(error) === direction).length}`;
  return markdownTable(
    ["", "answers", "sources"],
    [
      ["published answers in the corpus", `${answers.length}`, `${countSources(answers)}`],
      ["contradict the code", `${errors.length}`, `${countSources(errors)}`],
      ["share", share(errors.length, answers.length), share(countSources(errors), countSources(answers))],
      ["smaller than the code requires", towards("smaller"), ""],
      ["larger than the code requires", towards("larger"), ""],
      ["not a matter of size", towards("other"), ""],
      ["wrong guesses of askers, not counted", `${asked.length}`, `${countSources(asked)}`],
      ["left open by the text, counted as right", `${open.length}`, `${countSources(open)}`],
    ],
  );
}

function byKind({ answers, errors }: Tally, sources: Sources): string {
  const kindOf = ({ source }: Entry): string => sources[source]?.kind ?? "unknown";
  return markdownTable(
    [
      "kind",
      "sources",
      "hosts",
      "answers",
      "contradict",
      "share",
      "sources with one or more",
      "share of sources",
      ...leftColumns,
    ],
    [...new Set(answers.map(kindOf))].sort().map((kind) => {
      const all = answers.filter((entry) => kindOf(entry) === kind);
      const wrong = errors.filter((entry) => kindOf(entry) === kind);
      const [among, of] = [countSources(wrong), countSources(all)];
      return [
        kind,
        `${of}`,
        `${countHosts(all, sources)}`,
        `${all.length}`,
        `${wrong.length}`,
        share(wrong.length, all.length),
        `${among}`,
        share(among, of),
        ...leftOf(all, wrong, sources),
      ];
    }),
  );
}

function byMistake(errors: readonly PublishedError[], says: Readonly<Record<Mistake, string>>): string {
  const counted = mistakes.map((mistake) => {
    const of = errors.filter((error) => error.mistake === mistake);
    const towards = (direction: Direction): number =>
      of.filter((error) => directionOf(error) === direction).length;
    return { mistake, of, smaller: towards("smaller"), larger: towards("larger") };
  });
  return markdownTable(
    ["mistake", "what happens", "answers", "sources", "smaller", "larger"],
    [...counted]
      .sort((one, other) => other.of.length - one.of.length)
      .map(({ mistake, of, smaller, larger }) => [
        `\`${mistake}\``,
        plainText(says[mistake]),
        `${of.length}`,
        `${countSources(of)}`,
        `${smaller}`,
        `${larger}`,
      ]),
  );
}

function shares(
  title: string,
  rows: readonly (readonly [string, (entry: Entry) => boolean])[],
  { answers, errors }: Tally,
  sources: Sources,
): string {
  return markdownTable(
    [title, "answers", "contradict", "share", ...leftColumns],
    rows.map(([name, belongs]) => {
      const [all, wrong] = [answers.filter(belongs), errors.filter(belongs)];
      return [
        name,
        `${all.length}`,
        `${wrong.length}`,
        share(wrong.length, all.length),
        ...leftOf(all, wrong, sources),
      ];
    }),
  );
}

function list<T extends Disputed>(
  entries: readonly T[],
  sources: Sources,
  last: (entry: T) => string,
  lastTitle = "mistake",
): string {
  return markdownTable(
    ["source", "place", "edition", "conductor", "published", "by the code", "section", lastTitle, "check"],
    entries.map((entry) => {
      const { source, role, check, dispute } = entry;
      return [
        plainText(sources[source]?.title ?? source),
        plainText(check.locator),
        check.stated ?? "not stated",
        inWords(role),
        sayExpected(check.expect),
        sayExpected(dispute.expectByText),
        plainText(dispute.section),
        last(entry),
        `\`${check.id}\``,
      ];
    }),
  );
}
