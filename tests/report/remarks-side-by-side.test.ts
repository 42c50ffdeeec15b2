import { describe, expect, it } from "vitest";
import { remarksSideBySide } from "../../src/report/remarks-side-by-side.js";

const columns = ["2011", "2014", "2017", "2020"];
const said = (...some: readonly (readonly [name: string, key: string])[]) =>
  remarksSideBySide(
    some.map(([name, key]) => ({ name, key, cautions: ["Mind it."], readings: [] })),
    columns,
  ).cautions;

describe("a caution of several columns", () => {
  it("stands once, with the columns that have it; neighbors by the first and the last", () => {
    expect(said(["jumper", "2014"])).toEqual(["Mind it. At: jumper (2014)"]);
    expect(said(["jumper", "2011"], ["jumper", "2014"])).toEqual(["Mind it. At: jumper (2011, 2014)"]);
    expect(said(["jumper", "2011"], ["jumper", "2014"], ["jumper", "2017"])).toEqual([
      "Mind it. At: jumper (2011 to 2017)",
    ]);
    expect(said(["jumper", "2011"], ["jumper", "2014"], ["jumper", "2020"])).toEqual([
      "Mind it. At: jumper (2011, 2014, 2020)",
    ]);
    expect(said(...columns.map((key) => ["jumper", key] as const))).toEqual([
      "Mind it. At: jumper (every column)",
    ]);
  });

  it("names things in the same columns together", () => {
    expect(said(["jumper", "2011"], ["tap", "2011"], ["bar", "2014"])).toEqual([
      "Mind it. At: jumper, tap (2011); bar (2014)",
    ]);
  });
});
