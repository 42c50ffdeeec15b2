import { describe, expect, it } from "vitest";
import { fitted } from "../../src/command/fitted.js";
import { shownLetters } from "../../src/command/shown-letters.js";
import { textTable, wrapped } from "../../src/report/render/text-table.js";

describe("a text for a narrow terminal", () => {
  it.each([
    ["one two three", "one two\n  three"],
    ["  one two three", "  one two\n  three"],
    ["- one two three", "- one two\n  three"],
    ["   - one two", "   - one\n     two"],
    ["=".repeat(12), "=".repeat(10)],
    ["-".repeat(12), "-".repeat(10)],
    ["one two ---", "one two\n  ---"],
    ["--- one two", "--- one\n  two"],
    ["   bondmil schedule", "   bondmil schedule"],
    ["  echo one two", "  echo one two"],
    ["see bondmil schedule", "see\n  bondmil\n  schedule"],
    ["one two\n\nthree", "one two\n\nthree"],
  ])("%j becomes %j", (text, shown) => {
    expect(fitted(text, 10)).toBe(shown);
  });
});

describe("letters of other widths", () => {
  // Unicode Standard Annex 11: wide and fullwidth characters take two columns of a terminal, combining marks none.
  it.each([
    ["\u914d\u96fb\u76e4", 6],
    ["e\u0301tage", 5],
    ["\u{1f469}\u200d\u{1f527}", 2],
    ["\u{1f1fa}\u{1f1f8}", 2],
    ["\uff21\uff22", 4],
    ["\u0e17\u0e35\u0e48", 1],
    ["a\u001bb", 8],
  ])("%s takes %d columns", (text, columns) => {
    expect(shownLetters.widthOf(text)).toBe(columns);
  });

  it("stand below each other in a table", () => {
    const rows = [
      ["\u914d\u96fb\u76e4 D1", "4 AWG"],
      ["e\u0301tage", "2 AWG"],
      ["\u{1f469}\u200d\u{1f527}", "1/0 AWG"],
    ];
    const lines = textTable(["what", "size"], rows, 40, shownLetters);
    const before = lines.map((line) => shownLetters.widthOf(line.slice(0, line.search(/\S+(?: AWG)?$/))));
    expect(before).toEqual([11, 11, 11, 11, 11]);
  });

  it("are never cut in two, nor wider than a line", () => {
    const text = "\u914d\u96fb\u76e4\u914d\u96fb\u76e4 \u{1f469}\u200d\u{1f527}\u{1f469}\u200d\u{1f527}";
    expect(wrapped(text, 5, shownLetters)).toEqual([
      "\u914d\u96fb",
      "\u76e4\u914d",
      "\u96fb\u76e4",
      "\u{1f469}\u200d\u{1f527}\u{1f469}\u200d\u{1f527}",
    ]);
    for (const line of fitted(`- ${text.repeat(20)}`, 40).split("\n"))
      expect(shownLetters.widthOf(line)).toBeLessThanOrEqual(40);
    expect(fitted(`  bondmil schedule ${"a".repeat(90)}`, 40)).not.toContain("\n");
  });
});
