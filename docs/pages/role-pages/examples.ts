import type { Role } from "bondmil";
import { sayExpected } from "../../../corpus/tools/runner/misses.js";
import type { Corpus, Entry } from "../../../corpus/tools/runner/model.js";
import { markdownTable, plainText } from "../../../src/report/render/markdown.js";
import type { Tally } from "../published-errors/tally.js";
import { givenInWords } from "./given.js";

/** Examples on a page; the corpus has the rest. */
const MOST = 6;

/** Published answers of a conductor that the text does not contradict: those that give all of their input and their arithmetic first, each from another source. */
export function examplesPart(role: Role, { answers }: Tally, { sources }: Corpus): string {
  const own = answers.filter((entry) => entry.role === role && entry.check.standing === "cited");
  const lines = [...choose(own)].map(({ source, check }) => [
    plainText(givenInWords(check.input)),
    plainText(sayExpected(check.expect)),
    plainText(check.working ?? ""),
    linked(sources[source]?.title ?? source, sources[source]?.url ?? null),
    plainText(check.locator),
    check.stated ?? "not stated",
  ]);
  const rest = own.length - lines.length;
  return [
    "## Worked examples and their sources",
    lines.length === 0
      ? "The corpus has no published answer of its own for this conductor."
      : `${own.length === 1 ? "One published answer" : `${own.length} published answers`} that the text does not contradict${rest > 0 ? `, of which ${lines.length} stand here` : ""}; the [file of the checks](../../corpus/${role}.json) has their whole input.`,
    ...(lines.length === 0
      ? []
      : [markdownTable(["given", "published answer", "on the way", "source", "place", "edition"], lines)]),
  ].join("\n\n");
}

/** One of each source before a second of any, and of those the clearest. */
function choose(entries: readonly Entry[]): readonly Entry[] {
  const best = [...entries].sort((one, other) => clarity(other) - clarity(one));
  const seen = new Set<string>();
  const first = best.filter(({ source }) => !seen.has(source) && seen.add(source));
  return [...first, ...best.filter((entry) => !first.includes(entry))].slice(0, MOST);
}

function clarity({ check }: Entry): number {
  const isSigned = check.voice === "author" || check.voice === "keyed-answer";
  return (
    (check.assumed.length === 0 ? 4 : 0) +
    (isSigned ? 2 : 0) +
    (check.working === undefined ? 0 : 1) +
    (check.stated === null ? 0 : 1)
  );
}

function linked(title: string, url: string | null): string {
  return url === null ? plainText(title) : `[${plainText(title)}](<${url}>)`;
}
