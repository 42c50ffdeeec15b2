import {
  compare,
  comparisonDocument,
  type EditionComparison,
  intersystemBondingConductor,
  mainBondingJumper,
  render,
} from "bondmil";
import { describe, expect, it } from "vitest";
import type { AnyComparison } from "../../src/report/comparison-document.js";

const written = (comparison: AnyComparison, title: string): string =>
  render(comparisonDocument(comparison, { title }), { as: "markdown" });

/** Cells of a Markdown row; an escaped bar is part of its cell. */
function cellsOf(line: string): readonly string[] {
  return line.split(/(?<!\\)\|/).slice(1, -1);
}

/** Every table of a text as lines of cells. */
function tablesOf(text: string): readonly (readonly (readonly string[])[])[] {
  return text
    .split("\n\n")
    .filter((block) => block.startsWith("|"))
    .map((block) => block.split("\n").map(cellsOf));
}

const supply = { sets: [{ count: 3, size: "250 kcmil", material: "aluminum" }] } as const;
const editions = compare(mainBondingJumper, {
  over: "editions",
  input: { supply, conductor: { material: "copper" } },
});

describe("a comparison of editions in Markdown", () => {
  const text = written(editions, "Shop");

  it("has a row for each edition, and tables whose rows are of one width", () => {
    const tables = tablesOf(text);
    expect(tables).toHaveLength(2 + editions.length);
    expect(tables[1]?.slice(2).map(([edition]) => edition?.trim())).toEqual(
      editions.map(({ edition }) => edition),
    );
    for (const table of tables) expect(new Set(table.map((row) => row.length)).size).toBe(1);
  });

  it("says what changed between which editions, and nothing where nothing did", () => {
    expect(text).toContain("### 2011 to 2014\n\n- another place: how the sets are added");
    const same: EditionComparison = compare(mainBondingJumper, {
      over: "editions",
      input: { supply, conductor: { material: "copper" } },
      editions: ["2017", "2017"],
    });
    expect(written(same, "Twice")).not.toContain("What changed");
    expect(written(same, "Twice")).toMatch(/## What stays the same\n\n.*No change in 1 of 1.*2017 to 2017/s);
    const [changed, beside] = ["What changed", "Side by side"].map((one) => text.indexOf(`## ${one}`));
    expect(changed).toBeGreaterThan(0);
    expect(beside).toBeGreaterThan(changed ?? 0);
  });

  it("shows why an edition refuses", () => {
    const tie = compare(intersystemBondingConductor, { over: "editions", input: { termination: "busbar" } });
    const text = written(tie, "Tie");
    expect(text).toContain("| 2014 | refused: expected ");
    expect(text).toContain("- termination: expected");
  });
});

describe("a comparison of readings in Markdown", () => {
  it("has the result as given and each alternative", () => {
    const input = {
      code: { year: "2014" },
      supply: { sets: [{ count: 1, size: "12 AWG", material: "copper" }] },
      conductor: { material: "copper" },
    } as const;
    const text = written(compare(mainBondingJumper, { over: "readings", input }), "Kiosk");
    expect(text.split("\n")[0]).toBe("# Kiosk");
    expect(
      tablesOf(text)[1]
        ?.slice(2)
        .map((row) => row.map((cell) => cell.trim()).slice(0, 4)),
    ).toEqual([
      ["as given", "", "8 AWG copper", "16,510 cmil"],
      [
        "the limit at the largest ungrounded conductor or set in the 2014 edition",
        "as in 2017",
        "12 AWG copper",
        "6,530 cmil",
      ],
    ]);
    expect(text).toContain('in the 2014 edition: "as in 2017" instead of "not there yet"');
  });

  it("says so where no reading has a say", () => {
    const input = { code: { year: "2017" }, supply, conductor: { material: "copper" } } as const;
    const text = written(compare(mainBondingJumper, { over: "readings", input }), "Shop");
    expect(text).toContain("No open reading has a say here.");
  });
});
