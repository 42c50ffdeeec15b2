import { describe, expect, it } from "vitest";
import type { OtherMaterialRule } from "../../src/edition/index.js";
import { electrodeConductor } from "../../src/edition/tables/electrode-conductor.generated.js";
import { decidedBy } from "../../src/sizing/assumption.js";

const table = electrodeConductor["2023"] ?? expect.fail("no table");
const threshold = table.threshold.aluminum;

const decides = (
  rule: OtherMaterialRule,
  area: number,
  sets: number,
  column: "copper" | "aluminum" | "mixed" = "aluminum",
) => decidedBy(rule, table, { column, area, sets }, "copper");

describe("which conductors decide", () => {
  it("are the installed ones of the same metal, whatever the rule", () => {
    expect(decides("always", threshold + 1, 4, "copper")).toBe("installed");
  });

  it.each([
    ["never", "installed", "installed", "installed"],
    ["always", "assumed", "assumed", "assumed"],
    ["above-threshold", "installed", "assumed", "assumed"],
    ["parallel-above-threshold", "installed", "installed", "assumed"],
    ["larger-of-both", "installed", "larger-of-both", "larger-of-both"],
    ["larger-through-threshold", "larger-of-both", "assumed", "assumed"],
  ] as const)(
    "%s: at the threshold %s, above it %s alone and %s in parallel",
    (rule, at, alone, parallel) => {
      expect([
        decides(rule, threshold, 2),
        decides(rule, threshold + 1, 1),
        decides(rule, threshold + 1, 2),
      ]).toEqual([at, alone, parallel]);
    },
  );

  it.each([
    ["never", "assumed"],
    ["above-threshold", "assumed"],
    ["larger-of-both", "larger-of-both"],
    ["larger-through-threshold", "assumed"],
  ] as const)("of a supply of both metals under %s are %s, however small it is", (rule, by) => {
    expect(decides(rule, 1, 1, "mixed")).toBe(by);
  });
});
