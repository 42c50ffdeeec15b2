import { describe, expect, it } from "vitest";
import { textTable, wrapped } from "../../src/report/render/text-table.js";

describe("a table in text", () => {
  const head = ["what", "2008", "2011", "2014"];
  const rows = [
    ["a long name of a thing that is wrapped", "1", "22", "333"],
    ["b", "4/0 AWG", "", "5"],
  ];

  it("takes the room that there is for every column", () => {
    expect(textTable(head, rows, 80)[2]).toBe("a long name of a thing that is wrapped  1        22    333");
    const wide = textTable(["what", "why"], [["a", "w ".repeat(60).trim()]], 200);
    expect(wide).toHaveLength(3);
  });

  it("stands in one piece where it fits, with wrapped cells", () => {
    expect(textTable(head, rows, 55)).toEqual([
      "what                            2008     2011  2014",
      "------------------------------  -------  ----  ----",
      "a long name of a thing that is  1        22    333",
      "wrapped",
      "b                               4/0 AWG        5",
    ]);
  });

  it("goes on below where it does not, with the first column again", () => {
    const lines = textTable(head, rows, 46);
    expect(lines.filter((line) => line.startsWith("what"))).toEqual([
      "what                            2008     2011",
      "what                            2014",
    ]);
    expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(46);
    expect(lines.filter((line) => line.includes("b  "))).toHaveLength(2);
  });

  it("wraps at spaces, and breaks a word that is longer than a line", () => {
    expect(wrapped("one two three-hundred-four", 7)).toEqual(["one two", "three-h", "undred-", "four"]);
    expect(wrapped("", 7)).toEqual([""]);
  });
});
