import { readFileSync } from "node:fs";
import { type EditionYear, type Evidence, editionYears, evidenceLevels, roleIds } from "bondmil";
import type { Corpus } from "../../corpus/tools/runner/model.js";
import type { Tally } from "../../corpus/tools/wrong-programs/tally.js";
import { markdownTable } from "../../src/report/render/markdown.js";
import { countSources, tallyOf } from "./published-errors/tally.js";
import { weakestOf } from "./role-coverage/basis.js";

const begin = "<!-- The figures are generated: npm run pages -- figures -->";
const end = "<!-- The figures end here. -->";

/** The front page with its figures as they are. */
export function frontPage(corpus: Corpus, wrongPrograms: Tally): string {
  const text = readFileSync(new URL("../../README.md", import.meta.url), "utf8");
  const [before, rest] = text.split(begin);
  const after = rest?.split(end)[1];
  if (before === undefined || after === undefined)
    throw new Error(`README.md has lost "${begin}" or "${end}"`);
  return `${before}${begin}\n\n${figures(corpus, wrongPrograms)}\n\n${end}${after}`;
}

function figures(corpus: Corpus, { acting, published, arithmetic, unnoticed }: Tally): string {
  const { answers, errors } = tallyOf(corpus);
  const number = (count: number): string => count.toLocaleString("en-US");
  const share = (count: number, of: number): string => `${Math.round((count / of) * 100)} percent`;
  return [
    `**Published answers**: ${number(answers.length)}, from ${number(countSources(answers))} sources. The text of the code [contradicts](docs/published-errors.md) ${number(errors.length)} of them; the library meets all others.`,
    `**[Wrong programs](docs/wrong-programs.md)**, 2008 to 2023: ${number(acting)}, each with one named mistake. Published answers notice ${share(published, acting)} of them, further checks by arithmetic ${share(arithmetic, acting)}; ${number(unnoticed)} programs go unnoticed.`,
    `**[Evidence](docs/coverage.md)**: how many of the ${number(roleIds.length)} kinds of conductors rest, at the weakest, on each level:`,
    markdownTable(["", ...editionYears], evidenceLevels.filter(isReached).map(line)),
  ].join("\n\n");
}

function line(level: Evidence): readonly string[] {
  return [`\`${level}\``, ...editionYears.map((year) => String(countOf(level, year)))];
}

function isReached(level: Evidence): boolean {
  return editionYears.some((year) => countOf(level, year) > 0);
}

function countOf(level: Evidence, year: EditionYear): number {
  return roleIds.filter((role) => weakestOf(role, year) === level).length;
}
