import { describe, expect, it } from "vitest";
import { deviceGrids } from "../../docs/pages/atlas/devices.js";
import { electrodeGrids } from "../../docs/pages/atlas/electrodes.js";
import { placeReadings } from "../../docs/pages/atlas/places.js";
import {
  patchesSupplyPolicies,
  requiredAreas,
  supplyPolicies,
  supplyRows,
} from "../../docs/pages/atlas/supplies.js";
import { merged, tallyOf } from "../../docs/pages/atlas/tally.js";
import type { Readings } from "../../src/edition/index.js";
import { readingFacts } from "../../src/edition/tables/readings.generated.js";

describe("the atlas of readings", () => {
  it.each(Object.keys(readingFacts) as (keyof Readings)[])("knows what to ask about %s", (id) => {
    const grids = [
      placeReadings[id],
      electrodeGrids[id],
      deviceGrids[id],
      patchesSupplyPolicies(id) || undefined,
    ];
    expect(grids.filter((grid) => grid !== undefined)).toHaveLength(1);
  });

  it("counts by direction and by standard sizes, and prefers an example that may be installed", () => {
    const one = (name: string, before: number, after: number, ordinary: boolean) => ({
      name,
      before,
      after,
      count: 10,
      ordinary,
    });
    const { total, smaller, larger } = tallyOf([
      one("same size", 105000, 105600, true),
      one("odd", 16510, 26240, false),
      one("usual", 16510, 26240, true),
      one("three down", 105600, 52620, false),
      one("above the list", 2000000, 2000001, false),
      one("both above the list", 3000000, 4000000, false),
    ]);
    expect(total).toBe(60);
    expect(larger).toEqual({ count: 30, bySteps: { 1: 30 }, example: "usual: 6 AWG instead of 8 AWG" });
    expect(smaller).toEqual({
      count: 10,
      bySteps: { 3: 10 },
      example: "three down: 3 AWG instead of 1/0 AWG",
    });
  });

  it("joins rows with the same figures only", () => {
    const tally = tallyOf([]);
    const other = tallyOf([{ name: "one", before: 16510, after: 26240, count: 1, ordinary: true }]);
    const row = (of: string, edition: string, figures = tally) => ({
      of,
      edition,
      alternative: "x",
      tally: figures,
    });
    const rows = [
      row("a", "2008"),
      row("a", "2011"),
      row("b", "2008"),
      row("b", "2011"),
      row("c", "2008", other),
    ];
    expect(merged(rows).map(({ of, edition }) => [of, edition])).toEqual([
      ["a, b", "2008, 2011"],
      ["c", "2008"],
    ]);
  });

  it("walks the whole grid", () => {
    const rows = supplyRows("cap-in-2014");
    expect(rows.map(({ tally }) => tally.total)).toEqual(rows.map(() => 2400));
    expect(rows[0]?.tally.smaller.count).toBe(38);
    const policies = supplyPolicies.get("main-bonding-jumper");
    expect(policies && requiredAreas(policies, "2014", {}, "copper")).toHaveLength(1200);
  });
});
