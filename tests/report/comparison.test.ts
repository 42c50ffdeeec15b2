import {
  compareEditions,
  compareReadings,
  type EditionComparison,
  sizeIntersystemBondingConductor,
  sizeMainBondingJumper,
  writeEditions,
  writeReadings,
} from "bondmil";
import fc from "fast-check";
import { describe, expect, it } from "vitest";

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
const editions = compareEditions({
  size: sizeMainBondingJumper,
  input: { supply, jumper: { material: "copper" } },
});

describe("a comparison of editions in Markdown", () => {
  const text = writeEditions(editions, "Shop");

  it("has a row for each edition, and tables whose rows are of one width", () => {
    const tables = tablesOf(text);
    expect(tables).toHaveLength(1 + editions.length);
    expect(tables[0]?.slice(2).map(([edition]) => edition?.trim())).toEqual(
      editions.map(({ edition }) => edition),
    );
    for (const table of tables) expect(new Set(table.map((row) => row.length)).size).toBe(1);
  });

  it("says what changed between which editions, and nothing where nothing did", () => {
    expect(text).toContain("### 2011 to 2014\n\n- another place: how the sets are added");
    const same: EditionComparison = compareEditions({
      size: sizeMainBondingJumper,
      input: { supply, jumper: { material: "copper" } },
      years: ["2017", "2017"],
    });
    expect(writeEditions(same, "Twice")).toContain("### 2017 to 2017\n\nNothing.");
  });

  it("shows why an edition refuses", () => {
    const tie = compareEditions({ size: sizeIntersystemBondingConductor, input: { termination: "busbar" } });
    const written = writeEditions(tie, "Tie");
    expect(written).toContain("| 2014 | refused |");
    expect(written).toContain("- unknown-value at termination: expected");
  });

  it("lets no title break out of its line", () => {
    const hostile = fc.string({
      unit: fc.constantFrom("|", "\n", "<b>", "[x](y)", "#", "`", "*", "&lt;", "\\", "a"),
    });
    fc.assert(
      fc.property(hostile, (title) => {
        const [first = "", second = "", third = ""] = writeEditions(editions.slice(0, 1), title).split("\n");
        expect([second, third.startsWith("| edition |")]).toEqual(["", true]);
        expect(first.startsWith("# ")).toBe(true);
        const unescaped = first.slice(2).replace(/\\[\\|`*_[\]~#]/g, "");
        expect(unescaped).not.toMatch(/[\\|`*[\]<>#]/);
      }),
    );
  });
});

describe("a comparison of readings in Markdown", () => {
  it("has the result as given and each alternative", () => {
    const input = {
      code: { year: "2014" },
      supply: { sets: [{ count: 1, size: "12 AWG", material: "copper" }] },
      jumper: { material: "copper" },
    } as const;
    const text = writeReadings(compareReadings({ size: sizeMainBondingJumper, input }), "Kiosk");
    expect(text.split("\n")[0]).toBe("# Kiosk, NFPA 70-2014");
    expect(
      tablesOf(text)[0]
        ?.slice(2)
        .map((row) => row.map((cell) => cell.trim()).slice(0, 4)),
    ).toEqual([
      ["as given", "", "8 AWG copper", "16,510 cmil"],
      ["cap-in-2014", "as-in-2017", "12 AWG copper", "6,530 cmil"],
    ]);
    expect(text).toContain("### cap-in-2014: as-in-2017 instead of absent");
  });

  it("says so where no reading has a say", () => {
    const input = { code: { year: "2017" }, supply, jumper: { material: "copper" } } as const;
    const text = writeReadings(compareReadings({ size: sizeMainBondingJumper, input }), "Shop");
    expect(text).toContain("No open reading has a say here.");
  });
});
