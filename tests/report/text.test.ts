import {
  checkDocument,
  checkOf,
  compareInstallation,
  comparisonDocument,
  type Document,
  render,
  reportDocument,
} from "bondmil";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { demo, demoNames } from "../installation/installations.js";
import { documentWith, places } from "./hostile.js";

const widest = (text: string): number => Math.max(...text.split("\n").map((line) => [...line].length));

/** The letters alone, in their order: what wrapping and tables leave of a text. */
const lettersOf = (text: string): string => text.replace(/\s+/g, "");

describe.each(places)("what an installation names, in text as %s", (_, of) => {
  const word = fc.string({ unit: "binary", maxLength: 60 });
  const hostile = fc.array(fc.oneof(word, fc.constantFrom(" ", "\n", "\r\n", "\t", "a".repeat(300))), {
    maxLength: 5,
  });

  it("fits the width, whatever it is, and is there with every letter", () => {
    fc.assert(
      fc.property(hostile, fc.integer({ min: 20, max: 140 }), (parts, width) => {
        const text = parts.join("");
        const page = render(documentWith(of(text)), { as: "text", width });
        expect(widest(page)).toBeLessThanOrEqual(width);
        if (!_.includes("grid")) expect(lettersOf(page)).toContain(lettersOf(text));
      }),
    );
  });
});

describe.each(demoNames)("the documents of %s as text", (name) => {
  const installation = demo(name);
  const documents: readonly Document[] = [
    reportDocument(installation),
    checkDocument(checkOf(installation)),
    comparisonDocument(compareInstallation({ over: "editions", editions: ["2011", "2023"], installation })),
  ];

  it.each([20, 60, 80, 120])("fit %i letters", (width) => {
    for (const document of documents)
      expect(widest(render(document, { as: "text", width }))).toBeLessThanOrEqual(width);
  });
});

describe("records", () => {
  it("have their first two cells as a heading, and the rest with the names of the columns", () => {
    const head = ["what", "required", "from", "to"];
    const rows = [
      ["jumper D1", "4 AWG", "", "D1"],
      ["jumper D2", "", "bus", "D2"],
    ];
    const document = documentWith({ parts: [{ kind: "table", of: "records", head, rows }] });
    expect(render(document, { as: "text" }).split("\n").slice(3, 7)).toEqual([
      "jumper D1: 4 AWG",
      "  to: D1",
      "jumper D2",
      "  from: bus; to: D2",
    ]);
  });
});
