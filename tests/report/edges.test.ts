import { explain, resultDocument, rowsDocument } from "bondmil";
import { describe, expect, it } from "vitest";
import { servedWords } from "../../src/report/words/schedule-words.js";

describe("what is no result or no row", () => {
  it.each([null, undefined, 5, "text"])("is refused as a result: %s", (given) => {
    expect(() => explain(given as never)).toThrow("a result of");
    expect(() => resultDocument(given as never)).toThrow("a result of");
  });

  it("is refused cell by cell", () => {
    const rows = [{ edition: "2017" }, { edition: "2020", size: { awg: 4 } }];
    expect(() => rowsDocument(rows as never)).toThrow("[1].size: expected a text, a finite number");
  });
});

it("names four of the runs that size a conductor, and how many more there are", () => {
  expect(servedWords({ by: ["A", "B", "C", "D", "E", "F"] })).toBe(
    "sized by the conductors of A, B, C, D and 2 more",
  );
  expect(servedWords({ by: ["A", "B", "C", "D"] })).toBe("sized by the conductors of A, B, C, D");
  expect(servedWords({ by: [] })).toBe("");
});
