import { editionYears } from "bondmil";
import { describe, expect, it } from "vitest";
import { levelOfCell } from "../../tables/tools/generator/cells.js";
import type { ChannelsFile } from "../../tables/tools/generator/channels.js";
import { emitAmpacityTable, emitSupplyAreaTable } from "../../tables/tools/generator/emit.js";
import { emitRatingTable, emitTrayTable } from "../../tables/tools/generator/emit-rating.js";
import type { TableFile } from "../../tables/tools/generator/model.js";
import { supplyCells } from "../../tables/tools/generator/supply-cells.js";
import {
  checkWitness,
  raise,
  verdictsOf,
  type WitnessFile,
  withWitnesses,
} from "../../tables/tools/generator/witnesses.js";
import { everyCell, inventedTable, inventedWitness } from "./invented.js";

const channels = {
  editions: {},
  readThrough: { derived: "derived-official-code" },
} as unknown as ChannelsFile;

const seenBy = (...witnesses: readonly WitnessFile[]): TableFile =>
  withWitnesses(inventedTable, witnesses, channels);
const level = (table: TableFile, year: "2011" | "2014" | "2017" | "2020", row: string, column: string) =>
  levelOfCell(table, year, { row, column });

describe("what a witness raises", () => {
  it("is a weaker value to single, and one read through another kind of channel to confirmed", () => {
    for (const weak of ["memory", "carried", "bracketed"] as const) {
      expect(raise(weak, ["print"], ["print"])).toBe("single");
      expect(raise(weak, [], ["print", "state-reprint"])).toBe("confirmed");
      expect(raise(weak, ["print"], [])).toBe(weak);
    }
    expect(raise("single", ["derived-official-code"], ["print"])).toBe("confirmed");
    expect(raise("single", ["print"], ["print"])).toBe("single");
    expect(raise("single", [], ["print"])).toBe("single");
    expect(raise("single", [], ["print", "print"])).toBe("single");
    expect(raise("confirmed", [], ["print"])).toBe("confirmed");
  });

  it("is exactly the cells that were read, and the label of their row", () => {
    const table = seenBy(inventedWitness({ cells: { "250 kcmil|copper": "4", "2 AWG|copper": null } }));
    expect(table.evidence["2014"]?.level).toBe("carried");
    expect(table.cells?.filter(({ level }) => level !== "memory")).toEqual([
      { edition: "2014", row: "250 kcmil", column: "supplyCopperThrough", level: "single" },
      { edition: "2014", row: "250 kcmil", column: "copper", level: "single" },
    ]);
    expect(level(table, "2014", "2 AWG", "copper")).toBe("memory");
  });

  it("is the whole table where every cell was read", () => {
    const table = seenBy(inventedWitness({}));
    expect(table.evidence["2014"]?.level).toBe("single");
    expect(table.cells).toEqual([]);
    expect(table.evidence["2011"]).toEqual(inventedTable.evidence["2011"]);
  });

  it("goes by the kind behind the sources of the edition", () => {
    const print = (edition: WitnessFile["edition"]) => inventedWitness({ edition });
    expect(level(seenBy(print("2011")), "2011", "2 AWG", "copper")).toBe("confirmed");
    expect(level(seenBy(print("2017")), "2017", "2 AWG", "copper")).toBe("single");
    expect(level(seenBy(print("2020")), "2020", "2 AWG", "copper")).toBe("single");
    const reprint = inventedWitness({ edition: "2020", channel: "state-reprint" });
    expect(level(seenBy(print("2020"), reprint), "2020", "2 AWG", "copper")).toBe("confirmed");
  });

  it("is nothing where it contradicts or could not read", () => {
    const table = seenBy(
      inventedWitness({ cells: { ...everyCell, "250 kcmil|copper": "3", "last|copper": null } }),
    );
    expect(level(table, "2014", "250 kcmil", "copper")).toBe("carried");
    expect(level(table, "2014", "last", "copper")).toBe("carried");
    expect(level(table, "2014", "last", "aluminum")).toBe("single");
  });
});

describe("an answer", () => {
  it("is read as books print: bare sizes, a dash for nothing", () => {
    const said = verdictsOf(inventedTable, inventedWitness({}));
    expect(said.filter(({ says }) => says !== "confirms")).toEqual([]);
    expect(said).toHaveLength(10);
    const same = (value: string | number): string | undefined =>
      verdictsOf(inventedTable, inventedWitness({ cells: { "last|aluminum": value } })).find(
        ({ cell }) => cell.row === "last" && cell.column === "aluminum",
      )?.says;
    expect([same(250), same(" 250 kcmil "), same("250 AWG"), same("-"), same("no such row")]).toEqual([
      "confirms",
      "confirms",
      "contradicts",
      "contradicts",
      "contradicts",
    ]);
  });

  it("is refused where it contradicts, with both values", () => {
    const witness = inventedWitness({ cells: { "2 AWG|copper": "6", "250 kcmil|aluminum": "2 AWG" } });
    expect(checkWitness("x", witness, [inventedTable])).toEqual([
      "x: contradicts invented of 2014 at 2 AWG|copper: the sheet says 6, the table 8 AWG; change the value first, or leave the sheet out",
      "x: contradicts invented of 2014 at 250 kcmil|aluminum: the sheet says 2 AWG, the table nothing; change the value first, or leave the sheet out",
    ]);
  });

  it("is refused where it names what is not there", () => {
    const at = (change: Partial<WitnessFile>) => checkWitness("x", inventedWitness(change), [inventedTable]);
    expect(at({})).toEqual([]);
    expect(at({ table: "other" })).toEqual(["x: no table other"]);
    expect(at({ edition: "2008" })).toEqual(["x: 2008 has no invented"]);
    expect(at({ cells: { "3 AWG|copper": 1, "2 AWG|supplyCopperThrough": "2" } })).toHaveLength(2);
  });
});

describe("evidence of cells in the generated modules", () => {
  const areaOf = (): number => 1;

  it("stays out of a table of supply areas whose cells are as sure as the table", () => {
    const plain = { ...inventedTable, cells: [] };
    for (const year of editionYears) expect(supplyCells(plain, plain, year)).toEqual({});
    expect(emitSupplyAreaTable(plain, areaOf)).not.toContain("cells");
  });

  it("is that of the size and of the ends between which the row holds", () => {
    const partly = seenBy(
      inventedWitness({
        cells: { "2 AWG|copper": 8, "2 AWG|supplyAluminumThrough": "1/0", "250 kcmil|copper": 4 },
      }),
    );
    expect(supplyCells(inventedTable, partly, "2014")).toEqual({ "0 copper": "single" });
    const weak = supplyCells(inventedTable, inventedTable, "2014");
    expect(weak).toEqual({ "0 copper": "memory" });
    const whole = seenBy(inventedWitness({}));
    expect(supplyCells(inventedTable, whole, "2014")).toEqual({
      "0 copper": "single",
      "0 aluminum": "single",
      "1 copper": "single",
      "last copper": "single",
      "last aluminum": "single",
    });
    expect(emitSupplyAreaTable(inventedTable, areaOf, whole)).toContain('"last copper":"single"');
  });

  it("is a new level of the table where every cell has it", () => {
    const whole = seenBy(inventedWitness({ edition: "2026" }));
    for (const emitted of [emitAmpacityTable(whole), emitRatingTable(whole), emitTrayTable(whole)])
      expect(emitted).toMatch(/"2026": {.*evidence: "single"/);
    expect(emitRatingTable(inventedTable)).toContain('"2 AWG copper": "memory"');
    expect(emitAmpacityTable(inventedTable)).toContain('"2 AWG copper": "memory"');
  });
});
