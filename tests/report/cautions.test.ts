import {
  checkDocument,
  checkOf,
  compareInstallation,
  comparisonDocument,
  type Document,
  render,
  reportDocument,
  resultDocument,
  type SizingResult,
  scheduleDocument,
  scheduleOf,
} from "bondmil";
import { describe, expect, it } from "vitest";
import { plainText } from "../../src/report/render/markdown.js";
import { escapeMarkup } from "../../src/report/render/markup.js";
import { cautionWords } from "../../src/report/words/caution-words.js";
import { readingSizes } from "../../src/report/words/reading-sizes.js";
import { readingAbout } from "../../src/report/words/reading-words.js";
import { demo, demoNames } from "../installation/installations.js";
import { corpusResults } from "./corpus-results.js";

/** How each format writes a text for reading. */
const written = {
  text: (text: string) => text,
  markdown: plainText,
  html: escapeMarkup,
} as const;

/** Cautions and open readings of results that a document does not say, in any format that is read. */
function unsaid(
  document: Document,
  results: readonly SizingResult[],
  readings: readonly string[] = results.flatMap((one) =>
    one.readings.map(({ id }) => readingAbout(id).slice(1)),
  ),
): readonly string[] {
  const texts = [
    ...results.flatMap(({ cautions }) => cautions.map(({ code }) => cautionWords[code])),
    ...readings,
  ];
  return Object.entries(written).flatMap(([as, write]) => {
    const page = render(document, { as: as as keyof typeof written, width: 10_000 });
    return [...new Set(texts)].filter((one) => !page.includes(write(one))).map((one) => `${as}: ${one}`);
  });
}

describe.each(demoNames)("every caution and open reading of %s", (name) => {
  const installation = demo(name);
  const results = scheduleOf(installation).conductors.map(({ result }) => result);

  it("is said in schedule, check and report", () => {
    expect(results.flatMap(({ cautions }) => cautions).length).toBeGreaterThan(4);
    const { cautions, conductors } = scheduleOf(installation);
    // The report names conductors by their numbers, the others by their names.
    const sentences = readingSizes(conductors).map((one) => one.split(" At: ")[0] ?? one);
    for (const document of [
      scheduleDocument(scheduleOf(installation)),
      checkDocument(checkOf(installation)),
      reportDocument(installation),
    ]) {
      expect(unsaid(document, results, sentences)).toEqual([]);
      const page = render(document, { as: "text", width: 10_000 });
      for (const { code } of cautions) expect(page).toContain(cautionWords[code]);
    }
  });

  it("is said in a comparison, of every column", () => {
    const comparison = compareInstallation({ over: "editions", installation });
    const compared = comparison.conductors.flatMap(({ entries }) =>
      entries.flatMap(({ conductor }) => (conductor === null ? [] : [conductor.result])),
    );
    expect(compared.some(({ readings }) => readings.length > 0)).toBe(true);
    expect(unsaid(comparisonDocument(comparison), compared)).toEqual([]);
  });
});

describe("every caution and open reading of a result", () => {
  it("is said in its document", () => {
    expect(corpusResults.flatMap((one) => unsaid(resultDocument(one), [one]))).toEqual([]);
  });
});
