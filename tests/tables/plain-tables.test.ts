import { describe, expect, it } from "vitest";
import { checkOrder } from "../../tables/tools/generator/checks.js";
import { emitPlainTable } from "../../tables/tools/generator/emit-plain.js";
import type { TableFile } from "../../tables/tools/generator/model.js";
import { inventedTable } from "./invented-plain-table.js";

const areaOf = (size: string): number => (size === "6 AWG" ? 26240 : 41740);
const withRows = (...rows: TableFile["blocks"][number]["rows"]): TableFile => ({
  ...inventedTable,
  blocks: [{ from: "2008", rows }],
});

describe("a table that is only looked up", () => {
  it("becomes rows of named values, with the editions that lack it as null", () => {
    const text = emitPlainTable(inventedTable);
    expect(text).toContain('{ size: "6 AWG", turns: 3, note: null }');
    expect(text).toContain("readonly size: ConductorSize;");
    expect(text).toContain("readonly note: null | string;");
    expect(text).toContain('"2008": null,');
    expect(text).toContain('"6 AWG turns": "memory"');
  });

  it("is refused where a column leaves the order that it declares", () => {
    expect(checkOrder(inventedTable, areaOf)).toEqual([]);
    expect(checkOrder(withRows(["4 AWG", 4, null], ["6 AWG", 3, null]), areaOf)).toEqual([
      "2008: column size is out of order at 6 AWG",
    ]);
    expect(checkOrder(withRows(["6 AWG", 3, null], ["4 AWG", 4, null]), areaOf)).toEqual([
      "2008: column turns is out of order at 4",
    ]);
    expect(checkOrder(withRows(["6 AWG", 3, null], ["4 AWG", 3, null]), areaOf)).toEqual([]);
  });
});
