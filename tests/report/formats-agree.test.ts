import { cautionCodes, type Document, explain, render, resultDocument } from "bondmil";
import { describe, expect, it } from "vitest";
import { cellText, textsOf } from "../../src/report/document.js";
import { candidateCautionWords } from "../../src/report/words/candidate-words.js";
import { cautionSentence, cautionWords } from "../../src/report/words/caution-words.js";
import { violationSentence } from "../../src/report/words/violation-words.js";
import { corpusResults } from "./corpus-results.js";
import { type Kind, kinds } from "./every-kind.js";
import { columnsOfCsv, plainOf, saidTexts, sectionsIn, sizesIn } from "./said.js";

const readable = ["text", "markdown", "html"] as const;

const cellsOfCsv = (document: Document, of = /(?:)/): readonly string[] =>
  [...columnsOfCsv(document)].flatMap(([name, cells]) => (of.test(name) ? cells : []));

/** As wide as no line of a terminal is broken. */
function rendered(document: Document, as: (typeof readable)[number]): string {
  return as === "text" ? render(document, { as, width: 10_000 }) : render(document, { as });
}

/** Columns in which a table names what is required, and by which section. */
const requiredHeads = ["required", "minimum size"];
const sectionHeads = ["section", "where"];

function cellsUnder(document: Document, heads: readonly string[]): readonly string[] {
  return document.parts.flatMap((part) => {
    if (part.kind !== "table") return [];
    const columns = part.head.flatMap((name, i) => (heads.includes(name) ? [i] : []));
    return part.rows.flatMap((cells) =>
      cells.length === 1 ? [] : columns.map((i) => cellText(cells[i] ?? "")),
    );
  });
}

const sorted = (some: Iterable<string>): readonly string[] => [...new Set(some)].sort();

describe.each(Object.entries(kinds))("a %s", (_, make) => {
  const made: readonly Kind[] = make();

  it.each(readable)("says every text of its document as %s", (as) => {
    for (const { document } of made) {
      const said = plainOf(rendered(document, as), as);
      const lost = saidTexts(document).filter((text) => !said.includes(text));
      expect(lost).toEqual([]);
    }
  });

  it("loses no word on a narrow terminal", () => {
    for (const { document } of made) {
      const narrow = new Set(render(document, { as: "text", width: 80 }).split(/\s+/));
      const words = saidTexts(document).flatMap((text) => text.split(/\s+/));
      expect(words.filter((word) => word.length < 35 && word !== "" && !has(narrow, word))).toEqual([]);
    }
  });

  it("names the same sizes and sections as text, Markdown and HTML, and none in CSV besides", () => {
    for (const { document, isMoreInCsv = false } of made) {
      const texts = readable.map((as) => plainOf(rendered(document, as), as));
      for (const found of [sizesIn, sectionsIn]) {
        const [first = [], ...others] = texts.map((text) => sorted(found(text)));
        for (const other of others) expect(other).toEqual(first);
        if (isMoreInCsv) continue;
        const inCsv = sorted(cellsOfCsv(document).flatMap(found));
        expect(inCsv.filter((one) => !first.includes(one))).toEqual([]);
      }
    }
  });

  it("has in CSV what its tables require, and by which section", () => {
    for (const { document } of made) {
      const csv = cellsOfCsv(document);
      const sizes = new Set(csv.flatMap(sizesIn));
      const sections = new Set(csv.flatMap(sectionsIn));
      expect(
        cellsUnder(document, requiredHeads)
          .flatMap(sizesIn)
          .filter((one) => !sizes.has(one)),
      ).toEqual([]);
      expect(
        cellsUnder(document, sectionHeads)
          .flatMap(sectionsIn)
          .filter((one) => !sections.has(one)),
      ).toEqual([]);
    }
  });

  it("has the same cautions in words and as codes in CSV", () => {
    const words = { ...cautionWords, ...candidateCautionWords };
    for (const { document } of made) {
      const texts = textsOf(document.parts).join("\n");
      const csv = cellsOfCsv(document, /cautions/i).join(" ");
      for (const code of [...cautionCodes, ...Object.keys(candidateCautionWords)]) {
        const isCoded = new RegExp(`(?<![\\w-])${code}(?![\\w-])`).test(csv);
        expect([code, isCoded]).toEqual([code, texts.includes(words[code as keyof typeof words])]);
      }
    }
  });

  it("has every violation in words and as a code in CSV", () => {
    for (const { document, violations } of made) {
      const texts = textsOf(document.parts).join("\n");
      const csv = cellsOfCsv(document, /^notPermitted$/).join(" ");
      for (const one of violations) {
        expect(texts).toContain(violationSentence(one));
        expect(csv).toContain(`${one.code} [${one.section}] at ${one.at.join(", ")}`);
      }
    }
  });
});

it("explains a result with its size, its cautions and every section that decides", () => {
  for (const result of corpusResults.filter((_, i) => i % 40 === 0)) {
    const explained = explain(result);
    const text = render(resultDocument(result), { as: "text", width: 10_000 });
    expect(sorted(sizesIn(text)).filter((one) => !sizesIn(explained).includes(one))).toEqual([]);
    expect(explained).toContain(`[${result.citation.section}]`);
    for (const caution of result.cautions) expect(explained).toContain(cautionSentence(caution));
  }
});

it("are of every kind, and with violations", () => {
  const all = Object.values(kinds).flatMap((make) => make());
  expect(all.length).toBeGreaterThan(40);
  expect(new Set(all.flatMap(({ violations }) => violations.map(({ code }) => code))).size).toBeGreaterThan(
    2,
  );
});

/** Whether a word stands there, perhaps behind what a list or a heading sets before it. */
function has(words: ReadonlySet<string>, word: string): boolean {
  return words.has(word) || [":", ";", ".", ","].some((behind) => words.has(`${word}${behind}`));
}
