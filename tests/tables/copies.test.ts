import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { levelOfCell } from "../../tables/tools/generator/cells.js";
import {
  type Copy,
  checkCopies,
  type PrintedTable,
  withCopies,
} from "../../tables/tools/generator/copies.js";
import { areaByDefinition } from "../../tables/tools/generator/definitions.js";
import { readCopies, readPrinted } from "../../tables/tools/generator/read-tables.js";
import { inventedTable } from "./invented.js";

/** Everything here is invented, for the rules alone. */
const { evidence, cells, ...printed } = inventedTable;
const rows =
  printed.blocks[0]?.rows.map((row) => row.map((cell, i) => (i === 0 ? (cell ?? "last") : cell))) ?? [];
const columns = printed.columns.map(({ id }) => id);

function copy(edition: string | null, channel: Copy["channel"], more: Partial<Copy> = {}): Copy {
  return {
    source: `invented-${edition}-${channel}`,
    edition,
    dated: edition === null ? "undated" : "stated",
    channel,
    columns,
    rows: rows as Copy["rows"],
    ...more,
  };
}

const cell = { row: "2 AWG", column: "copper" };
const levelIn = (
  year: "2011" | "2014" | "2017" | "2020",
  copies: readonly Copy[],
  table: PrintedTable = printed,
) => levelOfCell(withCopies(table, { table: "invented", copies }), year, cell);
const sources = Object.fromEntries(
  ["2011-print", "2014-print", "2017-print", "null-null"].map((name) => [`invented-${name}`, {}]),
);
const faults = (copies: readonly Copy[], table: PrintedTable = printed) =>
  checkCopies(table, { table: "invented", copies }, sources);
const withCell = (value: string): Copy["rows"] =>
  rows.map((row) =>
    row[0] === "2 AWG" ? row.map((one, i) => (columns[i] === "copper" ? value : one)) : row,
  ) as Copy["rows"];

describe("the level of a cell", () => {
  it("is confirmed by two kinds of channel, and single by two of one kind", () => {
    expect(levelIn("2014", [copy("2014", "print"), copy("2014", "state-reprint")])).toBe("confirmed");
    expect(levelIn("2014", [copy("2014", "print"), copy("2014", "print")])).toBe("single");
  });

  it("is bracketed between the nearest copies on both sides, and carried from one", () => {
    expect(levelIn("2014", [copy("2011", "print"), copy("2017", "print")])).toBe("bracketed");
    expect(levelIn("2014", [copy("2011", "print")])).toBe("carried");
    expect(levelIn("2014", [copy("1999", "print"), copy("2026", "print")])).toBe("bracketed");
  });

  it("looks no further than the nearest copies, knows nothing between two that differ, and looks past one that did not see the cell", () => {
    const blind = copy("2017", "print", {
      columns: columns.filter((id) => id !== "copper"),
      rows: rows.map((row) => row.filter((_, i) => columns[i] !== "copper")) as Copy["rows"],
    });
    const other = copy("2017", "print", { rows: withCell("4 AWG") });
    expect(levelIn("2014", [copy("2011", "print"), other, copy("2020", "print")])).toBe("memory");
    const undated = copy(null, null, { holds: ["2014"] });
    expect(levelIn("2014", [copy("2011", "print"), other, undated])).toBe("carried");
    expect(levelIn("2014", [copy("2011", "print"), blind, copy("2020", "print")])).toBe("bracketed");
  });

  it("is carried by what is no channel, and else rests on memory", () => {
    expect(levelIn("2014", [copy("2014", null)])).toBe("carried");
    expect(levelIn("2014", [copy(null, null, { holds: ["2014"] })])).toBe("carried");
    expect(levelIn("2014", [copy(null, null, { holds: ["2017"] })])).toBe("memory");
    expect(levelIn("2014", [])).toBe("memory");
  });

  it("leaves out a cell that was judged to be a slip of the copy", () => {
    const judged = copy("2014", "print", {
      rows: withCell("4 AWG"),
      judgments: [{ ...cell, why: "invented" }],
    });
    expect(faults([judged])).toEqual([]);
    expect(levelIn("2014", [judged])).toBe("memory");
  });
});

describe("copies are refused", () => {
  it("where they contradict a cell and nobody judged which is right", () => {
    expect(faults([copy("2014", "print", { rows: withCell("4 AWG") })])).toEqual([
      "invented-2014-print: contradicts invented of 2014 at 2 AWG|copper; judge which is right",
    ]);
    expect(faults([copy(null, null, { holds: ["2014"], rows: withCell("4 AWG") })])).toHaveLength(1);
  });

  it("where a judgment, a row, a column, a note or the source names nothing", () => {
    const idle = copy("2014", "print", { judgments: [{ ...cell, why: "invented" }] });
    const stranger = copy("2014", "print", { rows: [["9 AWG", "x", "y", "z"]] });
    const column = copy("2014", "print", { columns: ["width", ...columns.slice(1)] });
    const noted = {
      ...printed,
      cellNotes: [{ edition: "2014" as const, cells: ["9 AWG|copper"], note: "invented" }],
    };
    expect(faults([idle])).toEqual([
      "invented-2014-print: a judgment on 2 AWG|copper, where it prints what we have",
    ]);
    expect(faults([stranger])).toContain("invented-2014-print: prints the unknown row 9 AWG");
    expect(faults([column])).toContain("invented-2014-print: prints the unknown column width");
    expect(faults([], noted)).toEqual(["a note names the unknown cell 9 AWG|copper"]);
    expect(faults([copy("2020", "print")])).toContain(
      "invented-2020-print: is not in the register of sources",
    );
  });
});

describe("the definition of the sizes", () => {
  it("gives every area of the table", () => {
    const { blocks } = readPrinted(join(import.meta.dirname, "../../tables"), "conductor-properties");
    const areas = blocks.flatMap(({ rows: all }) => all);
    expect(areas.length).toBeGreaterThan(29);
    for (const [size, area] of areas) expect([size, areaByDefinition(String(size))]).toEqual([size, area]);
    expect(areaByDefinition("last")).toBeNull();
  });

  it("brackets a cell with one copy", () => {
    const folder = join(import.meta.dirname, "../../tables");
    const id = "conductor-properties";
    const seen = withCopies(readPrinted(folder, id), readCopies(folder, id));
    expect(levelOfCell(seen, "2023", { row: "4 AWG", column: "area" })).toBe("bracketed");
    const { definitions, ...without } = readPrinted(folder, id);
    expect(
      levelOfCell(withCopies(without, readCopies(folder, id)), "2023", { row: "4 AWG", column: "area" }),
    ).toBe("carried");
  });
});
