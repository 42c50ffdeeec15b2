import { readFileSync } from "node:fs";
import { type Role, roleIds } from "bondmil";
import { sayExpected } from "../../../corpus/tools/runner/misses.js";
import { type Corpus, entriesOf, type Mistake, standings } from "../../../corpus/tools/runner/model.js";
import { markdownTable, plainText } from "../../../src/report/render/markdown.js";
import type { Collected } from "../../../tables/tools/generator/collected.js";
import { inWords } from "../in-words.js";
import { countSources, type Tally, tallyOf } from "../published-errors/tally.js";
import { namesBehind } from "../role-coverage/basis.js";
import { changesPart } from "./changes.js";
import { examplesPart } from "./examples.js";

const begin =
  '<!-- What follows is generated from the corpus and the tables by "npm run pages -- roles"; write above this line. -->';

/** The page of each role: its prose as it stands, and below it what the corpus and the tables say. */
export function rolePages(
  corpus: Corpus,
  from: Collected,
  says: Readonly<Record<Mistake, string>>,
): Readonly<Record<string, string>> {
  const tally = tallyOf(corpus);
  return Object.fromEntries(
    roleIds.map((role) => {
      const path = `docs/roles/${role}.md`;
      const text = readFileSync(new URL(`../../../${path}`, import.meta.url), "utf8");
      const [prose = ""] = text.split(begin);
      const parts = [
        examplesPart(role, tally, corpus),
        changesPart(role, from),
        readingsPart(role, from),
        errorsPart(role, tally, corpus, says),
        checksPart(role, tally, corpus),
      ];
      return [path, `${prose.trimEnd()}\n\n${begin}\n\n${parts.join("\n\n")}\n`];
    }),
  );
}

function readingsPart(role: Role, { readings }: Collected): string {
  const names = namesBehind(role);
  const own = readings.readings.filter(({ policies }) => policies.some((policy) => names.has(policy)));
  const lines = own.map(({ id, question, default: chosen, alternatives, editions }) => {
    const taken = alternatives.find((one) => one.id === chosen);
    return `- [\`${id}\`](../readings.md#${id}), ${editions.join(", ")}: ${question} Taken: ${taken?.says ?? chosen} ([how much hangs on it](../atlas.md#${id}))`;
  });
  return [
    "## Readings",
    lines.length === 0 ? "The text of no edition leaves its size open." : lines.join("\n"),
  ].join("\n\n");
}

function errorsPart(
  role: Role,
  { errors, asked }: Tally,
  { sources }: Corpus,
  says: Readonly<Record<Mistake, string>>,
): string {
  const own = [...errors, ...asked].filter((error) => error.role === role);
  const lines = own.map(({ source, check, dispute, mistake }) =>
    [
      says[mistake],
      sayExpected(check.expect),
      sayExpected(dispute.expectByText),
      dispute.section,
      sources[source]?.title ?? source,
      check.voice === "asker" ? "somebody who asks" : inWords(check.voice),
    ].map(plainText),
  );
  return [
    "## Mistakes in print",
    lines.length === 0
      ? "No published answer of the corpus contradicts the text here."
      : "Answers that the text contradicts; [published errors](../published-errors.md) has how they were judged.",
    ...(lines.length === 0
      ? []
      : [
          markdownTable(
            ["what happened", "published", "by the code", "section", "source", "who says it"],
            lines,
          ),
        ]),
  ].join("\n\n");
}

function checksPart(role: Role, { answers }: Tally, corpus: Corpus): string {
  const own = entriesOf(corpus).filter((entry) => entry.role === role);
  const counted = standings
    .map((standing) => ({ standing, count: own.filter(({ check }) => check.standing === standing).length }))
    .filter(({ count }) => count > 0)
    .map(({ standing, count }) => `${count} ${inWords(standing)}`);
  const published = answers.filter((entry) => entry.role === role);
  const anchor = inWords(role).replaceAll(" ", "-");
  return [
    "## The checks that hold it",
    `${own.length} checks: ${counted.join(", ")}. ${published.length} of them are published answers, from ${countSources(published)} sources. [Coverage](../coverage.md#${anchor}) has them by edition with the evidence of rules and tables, [wrong programs](../wrong-programs.md#${anchor}) the mistakes that they notice, and the [file](../../corpus/${role}.json) each of them with its place in its source.`,
  ].join("\n\n");
}
