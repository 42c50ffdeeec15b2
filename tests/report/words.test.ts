import {
  arrangementsDocument,
  arrangementsOf,
  cautionCodes,
  checkDocument,
  checkOf,
  compare,
  compareInstallation,
  comparisonDocument,
  type Document,
  evidenceLevels,
  mainBondingJumper,
  render,
  reportDocument,
  resultDocument,
  roleIds,
  scheduleDocument,
  scheduleOf,
  violationCodes,
  withstandCautionCodes,
} from "bondmil";
import { describe, expect, it } from "vitest";
import { findAvoided } from "../../docs/pages/words/find.js";
import { readWords } from "../../docs/pages/words/words.js";
import { withstandCautionWords } from "../../src/report/told/withstand.js";
import { cautionWords } from "../../src/report/words/caution-words.js";
import { evidenceWords } from "../../src/report/words/evidence-words.js";
import { alternativeWords, readingAbout } from "../../src/report/words/reading-words.js";
import { violationWords } from "../../src/report/words/violation-words.js";
import readings from "../../tables/readings.json" with { type: "json" };
import { demo, demoNames } from "../installation/installations.js";
import { corpusResults } from "./corpus-results.js";

describe("words", () => {
  it("are there for every caution, violation, caution of a withstand, reading and level of evidence", () => {
    expect(Object.keys(cautionWords).sort()).toEqual([...cautionCodes].sort());
    expect(Object.keys(violationWords).sort()).toEqual([...violationCodes].sort());
    expect(Object.keys(withstandCautionWords).sort()).toEqual([...withstandCautionCodes].sort());
    for (const level of evidenceLevels) expect(evidenceWords(level)).not.toBe("");
    for (const { id, alternatives } of readings.readings) {
      expect(readingAbout(id as never)).not.toBe("");
      const says = alternatives.map((one) => alternativeWords(id as never, one.id));
      expect(new Set(says).size).toBe(alternatives.length);
    }
  });
});

const supply = { sets: [{ count: 1, size: "10 AWG", material: "copper" }] } as const;
const conductor = { material: "copper" } as const;
const amendments = [
  {
    kind: "floor",
    role: "main-bonding-jumper",
    copper: "500 kcmil",
    citation: { jurisdiction: "Town", section: "7" },
  },
] as const;
const documentsOf: Readonly<Record<string, () => readonly Document[]>> = {
  ...Object.fromEntries(
    demoNames.map((name) => [
      name,
      () => {
        const installation = demo(name);
        return [
          scheduleDocument(scheduleOf(installation)),
          checkDocument(checkOf(installation)),
          reportDocument(installation),
          ...(["editions", "readings", "arrangements"] as const).map((over) =>
            comparisonDocument(compareInstallation({ over, installation })),
          ),
          comparisonDocument(compareInstallation({ over: "amendments", amendments, installation })),
        ];
      },
    ]),
  ),
  "results of the corpus": () => corpusResults.map((one) => resultDocument(one)),
  "one conductor": () => [
    comparisonDocument(compare(mainBondingJumper, { over: "editions", input: { supply, conductor } })),
    comparisonDocument(
      compare(mainBondingJumper, { over: "readings", input: { code: { year: "2014" }, supply, conductor } }),
    ),
    comparisonDocument(
      compare(mainBondingJumper, {
        over: "amendments",
        input: { code: { year: "2017", amendments }, supply, conductor },
      }),
    ),
    arrangementsDocument(
      arrangementsOf(mainBondingJumper, {
        code: { year: "2017" },
        enclosures: [{ id: "D1", supply }],
        conductor,
      }),
    ),
  ],
};

/** Ids of the library that are no words: those of one word read as one. */
const ids = [
  ...roleIds,
  ...cautionCodes,
  ...violationCodes,
  ...readings.readings.flatMap(({ id, alternatives }) => [id, ...alternatives.map((one) => one.id)]),
  "fault-path",
  "electrode-system",
  "one-eighth",
  "rating-row",
  "named-size",
  "jumper-at-source",
  "jumper-in-each-enclosure",
].filter((id) => id.includes("-"));
const machine = new RegExp(`(?<![\\w-])(?:${ids.join("|")})(?![\\w-])`);

/** Words of the trade that are written as an id is. */
const words = /listed-equipment|bonded-in-each/g;

const avoided = readWords().words;

describe.each(Object.entries(documentsOf))("where a person reads: %s", (_, documents) => {
  it("is no id of the library, and no word is missing", () => {
    for (const document of documents()) {
      const text = render(document, { as: "text", width: 10_000 }).replace(words, "");
      expect(text.split("\n").filter((line) => machine.test(line))).toEqual([]);
      expect(text).not.toMatch(/undefined|\[object|NaN/);
      expect(findAvoided([{ file: document.title, line: 1, text }], avoided)).toEqual([]);
    }
  });
});
