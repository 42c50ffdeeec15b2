import { fileURLToPath } from "node:url";
import { type EditionYear, type Input, mainBondingJumper, size } from "bondmil";
import { describe, expect, it } from "vitest";
import { cellKey, decidingCells } from "../../corpus/tools/mutation/deciding.js";
import { liveTables, writesOf } from "../../corpus/tools/mutation/live-tables.js";
import { type MutatedCell, mutateCells } from "../../corpus/tools/mutation/mutate.js";
import { sourcesOfCell } from "../../corpus/tools/mutation/own-sources.js";
import { oneSizeOff } from "../../corpus/tools/mutation/steps.js";
import { watched, withValue } from "../../corpus/tools/mutation/watch.js";
import { library } from "../../corpus/tools/runner/library.js";
import type { Check } from "../../corpus/tools/runner/model.js";
import { cellsPage } from "../../docs/pages/cells/page.js";
import { fateOf, figuresOf } from "../../docs/pages/cells/tally.js";
import { cellsOf } from "../../tables/tools/generator/cells.js";
import type { CopiesFile } from "../../tables/tools/generator/copies.js";
import { readTable } from "../../tables/tools/generator/read-tables.js";
import type { Source, Sources } from "../../tables/tools/source.js";
import { check, disputed, source } from "./fixtures.js";

const folder = fileURLToPath(new URL("../../tables/", import.meta.url));
const bonding = readTable(folder, "bonding-conductor");
const handbook: Source = source;

/** An invented copy, which prints one size for copper; no publication has it. */
const copiesBy = (source: string): CopiesFile => ({
  table: "bonding-conductor",
  copies: [
    {
      source,
      edition: "2023",
      dated: "stated",
      channel: "print",
      columns: ["supplyCopperThrough", "copper"],
      rows: [["3/0 AWG", "4 AWG"]],
    },
  ],
});

const mutated = (one: Check, copies = copiesBy("elsewhere"), sources: Sources = { handbook }) =>
  mutateCells({
    tables: [{ table: bonding, copies }],
    entries: [{ role: "main-bonding-jumper", source: "handbook", check: one }],
    sources,
    library,
  });
const fatesOf = (cells: readonly MutatedCell[], year: EditionYear) =>
  cells
    .filter((cell) => cell.year === year && fateOf(cell) !== "not read")
    .map((cell) => [cell.row, cell.column, fateOf(cell), cell.changes.map(({ noticed }) => noticed)]);

describe("cells changed by one size", () => {
  it("are noticed exactly where an invented check passes", () => {
    const cells = mutated({ ...check, holds: ["2017"] });
    expect(fatesOf(cells, "2017")).toEqual([
      ["2 AWG", "supplyCopperThrough", "read, not noticed", ["not", "not"]],
      ["1/0 AWG", "supplyCopperThrough", "read, not noticed", ["not", "not"]],
      ["3/0 AWG", "supplyCopperThrough", "one way only", ["not", "by its edition"]],
      ["3/0 AWG", "copper", "noticed", ["by its edition", "by its edition"]],
    ]);
    expect(fatesOf(cells, "2014")).toEqual([]);
  });

  it("are noticed from another edition where the rule holds there too", () => {
    const cells = mutated({ ...check, stated: null, holds: ["2014", "2017"] });
    expect(fatesOf(cells, "2014")).toContainEqual([
      "3/0 AWG",
      "copper",
      "noticed",
      ["by another edition", "by another edition"],
    ]);
  });

  it("are not noticed by a check whose source prints the cell, or repeats one that does", () => {
    const at = (cells: readonly MutatedCell[]) =>
      fatesOf(cells, "2017").map(([row, column]) => [row, column]);
    expect(at(mutated(check))).toContainEqual(["3/0 AWG", "copper"]);
    expect(at(mutated(check, copiesBy("handbook")))).not.toContainEqual(["3/0 AWG", "copper"]);
    expect(at(mutated(check, copiesBy("handbook")))).toContainEqual(["2 AWG", "supplyCopperThrough"]);
    const repeats: Sources = { handbook: { ...handbook, copies: "elsewhere" } };
    expect(at(mutated(check, copiesBy("elsewhere"), repeats))).not.toContainEqual(["3/0 AWG", "copper"]);
  });

  it("are noticed only by arithmetic where the answer is not the source's own", () => {
    const by = (one: Check) =>
      fatesOf(mutated(one), "2017").find(([row, column]) => `${row} ${column}` === "3/0 AWG copper");
    const arithmetic = ["3/0 AWG", "copper", "by arithmetic", ["by arithmetic", "by arithmetic"]];
    expect(by({ ...check, standing: "arithmetic" })).toEqual(arithmetic);
    expect(by(disputed)).toEqual(arithmetic);
  });

  it("are noticed only by a chart where the source is the table once more", () => {
    const chart: Sources = { handbook: { ...handbook, chart: true } };
    const cells = mutated(check, copiesBy("elsewhere"), chart);
    expect(fatesOf(cells, "2017")).toContainEqual([
      "3/0 AWG",
      "copper",
      "by a chart",
      ["by a chart", "by a chart"],
    ]);
    const of2017 = cells.filter(({ year }) => year === "2017");
    expect(figuresOf(of2017).slice(1, 4)).toEqual(["0", "1", "0"]);
    expect(figuresOf(of2017).slice(-4)).toEqual(["0.0 %", "4.2 %", "4.2 %", "0.0 %"]);
  });

  it("are noticed by a check of supplies that asks an ampacity", () => {
    const table = readTable(folder, "raceway-ampacity");
    const asked = (amperes: number) =>
      mutateCells({
        tables: [{ table, copies: { table: table.id, copies: [] } }],
        entries: [],
        supplies: [
          {
            question: "table-ampacity",
            source: "handbook",
            check: {
              id: "one-aught",
              stated: "2017",
              holds: ["2017"],
              input: { size: "1/0 AWG", material: "copper", temperature: 75 },
              expect: { amperes },
              locator: "an example",
              standing: "cited",
            },
          },
        ],
        sources: { handbook },
        library,
      });
    expect(fatesOf(asked(150), "2017")).toEqual([
      ["1/0 AWG", "copper75", "noticed", ["by its edition", "by its edition"]],
    ]);
    expect(fatesOf(asked(151), "2017")).toEqual([]);
  });

  it("are not noticed by a check that is missed anyway, nor by one from memory", () => {
    expect(fatesOf(mutated({ ...check, standing: "memory" }), "2017")).toEqual([]);
    expect(fatesOf(mutated({ ...check, expect: { size: "6 AWG" } }), "2017")).toEqual([]);
  });

  it("move the end of the last row in both places where the library keeps it", () => {
    const end = cellsOf(bonding, "2017").find(
      ({ row, column }) => row === "1100 kcmil" && column === "supplyAluminumThrough",
    );
    expect(end && writesOf(bonding, "2017", end, "2000 kcmil")).toEqual([
      { place: ["rows", 5, "through", "aluminum"], value: 2000000 },
      { place: ["threshold", "aluminum"], value: 2000000 },
    ]);
    const above = { supply: { sets: [{ count: 1, size: "1250 kcmil", material: "copper" }] } } as const;
    const { figures: _figures, ...plain } = check;
    const cells = mutated({ ...plain, input: { ...check.input, ...above }, expect: { size: "3/0 AWG" } });
    expect(fatesOf(cells, "2017")).toContainEqual([
      "1100 kcmil",
      "supplyCopperThrough",
      "one way only",
      ["by its edition", "not"],
    ]);
  });

  it("leave the library as it was", () => {
    const before = structuredClone(liveTables);
    mutated(check);
    expect(liveTables).toEqual(before);
    const input = {
      code: { year: "2017" },
      supply: check.input["supply"],
      conductor: { material: "copper" },
    };
    expect(size(mainBondingJumper, input as Input<typeof mainBondingJumper>).outcome).toEqual({
      kind: "conductor",
      size: "4 AWG",
      quantity: 1,
    });
  });
});

describe("one size off", () => {
  const ofCell = (id: string, row: string, column: string) => {
    const table = readTable(folder, id);
    const cell = cellsOf(table, "2017").find((one) => one.row === row && one.column === column);
    return cell === undefined ? "no cell" : oneSizeOff(table, "2017", cell);
  };

  it.each([
    ["bonding-conductor", "3/0 AWG", "copper", ["3 AWG", "6 AWG"]],
    ["bonding-conductor", "1100 kcmil", "supplyCopperThrough", ["1250 kcmil", "1000 kcmil"]],
    ["electrode-conductor", "last", "aluminum", ["300 kcmil", "4/0 AWG"]],
    ["equipment-grounding", "15", "ratingThrough", [20]],
    ["equipment-grounding", "5000", "aluminum", ["1250 kcmil", "1000 kcmil"]],
    ["raceway-ampacity", "1/0 AWG", "copper75", [155, 145]],
  ])("is, in %s, row %s, column %s, %j", (id, row, column, expected) => {
    expect(ofCell(id, row, column)).toEqual(expected);
  });
});

describe("a watched table", () => {
  it("tells of what is read, by a search as by a name", () => {
    const read: string[] = [];
    const view = watched({ rows: [{ a: 1 }, { a: 2, b: 3 }, { a: 4 }] }, (place) => read.push(place));
    expect(view.rows.find(({ a }) => a > 1)?.b).toBe(3);
    expect(read).toEqual(expect.arrayContaining(["rows/0/a", "rows/1/a", "rows/1/b"]));
    expect(read).not.toContain("rows/2/a");
  });

  it("gets its value back after an error, and has no place that is not there", () => {
    const data = { rows: [{ a: 1 }] };
    const broken = () => {
      throw new Error("broken");
    };
    expect(() => withValue(data, ["rows", 0, "a"], 2, broken)).toThrow("broken");
    expect(data).toEqual({ rows: [{ a: 1 }] });
    expect(() => withValue(data, ["rows", 1], 2, () => data)).toThrow("nothing stands at");
  });
});

describe("the own sources of a cell", () => {
  it("are not those of a copy that does not print it", () => {
    const of = (row: string, column: string) => [
      ...sourcesOfCell({ row, column }, copiesBy("one"), { two: { ...handbook, copies: "one" } }),
    ];
    expect(of("3/0 AWG", "copper")).toEqual(["one", "two"]);
    expect(of("3/0 AWG", "aluminum")).toEqual([]);
    expect(of("350 kcmil", "copper")).toEqual([]);
  });
});

describe("the page of unnoticed cells", () => {
  const cells = mutated(check);

  it("counts a cell once, by what became of it", () => {
    const of2017 = cells.filter(({ year }) => year === "2017");
    expect(figuresOf(of2017)).toEqual([
      "24",
      "1",
      "0",
      "0",
      "1",
      "2",
      "20",
      "4.2 %",
      "4.2 %",
      "4.2 %",
      "4.2 %",
    ]);
  });

  it("lists a cell with the way that passes and its editions, and leaves out what is noticed in all", () => {
    const text = cellsPage(cells, new Map());
    expect(text).toContain("| 3/0 AWG | supplyCopperThrough |  |  | 2017 up |  | 2014, 2020 to 2026 |");
    expect(text).toContain("| 3/0 AWG | copper |  |  |  |  | 2014, 2020 to 2026 |");
    const alone = cellsPage(
      cells.filter(({ year }) => year === "2017"),
      new Map(),
    );
    expect(alone).not.toContain("| 3/0 AWG | copper |");
  });
});

describe("the ampacities that decide", () => {
  const deciding = decidingCells(readTable(folder, "raceway-ampacity"), ["2017"]);
  const of = (row: string, column: string) => [...(deciding.get(cellKey("2017", row, column)) ?? [])];

  it("are those whose step of 5 A changes a size", () => {
    // 750 kcmil aluminum carries 385 A, and 500 kcmil copper 380 A: a step down makes the assumed copper 500 instead of 600 kcmil.
    expect(of("750 kcmil", "aluminum75")).toContain("conductors of another material");
    // 2000 kcmil aluminum carries 560 A: more than 545 A of 1000 kcmil copper and less than 590 A of 1250 kcmil, by more than a step.
    expect(of("2000 kcmil", "aluminum75")).not.toContain("conductors of another material");
    expect(of("2000 kcmil", "aluminum75")).toContain("current of an impedance");
  });

  it("are not those of conductors that are too small for every question", () => {
    expect(of("18 AWG", "copper90")).toEqual([]);
    // Its device is limited to 30 A (240.4(D)), below its 35 A.
    expect(of("10 AWG", "copper75")).toEqual([]);
    expect(of("8 AWG", "copper75")).toContain("candidates for a load");
  });
});
