import { describe, expect, it } from "vitest";
import { judgeGroup, missesOf } from "../../corpus/tools/references/judge.js";
import type { FormulaGroup, PrintedGroup } from "../../corpus/tools/references/model.js";
import { readReferences, validateReferences } from "../../corpus/tools/references/read.js";

const documents = readReferences();
const { files, faults } = validateReferences(documents);
const groups = files.flatMap((file) => file.groups.map((group) => [file.id, group.id, group] as const));

describe("general references", () => {
  it("have the shape that their schema requires", () => expect(faults).toEqual([]));

  it.each(groups)("%s: %s", (_, __, group) => {
    const judged = judgeGroup(group);
    expect(judged).not.toEqual([]);
    expect(judged.filter(({ verdict }) => verdict === "missed" || verdict === "changed-side")).toEqual([]);
  });

  it("hold every standard size against the gauge or its designation, and every cell of the ampacities", () => {
    const count = (id: string) =>
      groups.flatMap(([, of, group]) => (of === id ? judgeGroup(group) : [])).length;
    expect(count("definition-as-the-table-rounds-it") + count("kcmil-designations")).toBe(30);
    expect([count("edition-2008"), count("from-2011")]).toEqual([110, 660]);
    expect([count("single-phase-catalog"), count("three-phase-catalog")]).toEqual([168, 96]);
    expect([count("ambient-factors-from-30-c"), count("ambient-factors-from-40-c")]).toEqual([39, 107]);
  });
});

it("would notice an ampacity that is one step of 5 A off", () => {
  const met = groups
    .filter(([file, , group]) => file === "ampacity-by-temperature" && "formula" in group)
    .flatMap(([, , group]) => judgeGroup(group))
    .filter(({ verdict }) => verdict === "met");
  const unnoticed = met.filter(({ library, reference, tolerance }) =>
    [-5, 5].some((off) => Math.abs(library + off - reference) <= tolerance),
  );
  expect([met.length, unnoticed]).toEqual([755, []]);
});

const printed: PrintedGroup = {
  id: "a-group",
  says: "An area.",
  sources: ["a-book"],
  locator: "page 1",
  standing: "cited",
  unit: "circular mils",
  quantity: "area",
  values: [{ ask: { size: "12 AWG" }, printed: "6530" }],
};
const value = (printedValue: string, otherwise: object = {}): PrintedGroup => ({
  ...printed,
  values: [{ ask: { size: "12 AWG" }, printed: printedValue, ...otherwise }],
});
const computed: FormulaGroup = {
  id: "another-group",
  says: "Areas.",
  sources: ["a-book"],
  locator: "page 1",
  standing: "arithmetic",
  unit: "circular mils",
  formula: "kcmil-designation",
  constants: {},
};
const fileOf = (...groups: readonly (PrintedGroup | FormulaGroup)[]) => ({
  version: 1,
  id: "a-file",
  title: "A file",
  judges: "areaOf",
  groups,
});
const verdictOf = (group: PrintedGroup) => judgeGroup(group).map(({ verdict }) => verdict);

describe("the judge", () => {
  it("lets half of the last printed place pass, and no more", () => {
    expect(verdictOf(value("6530"))).toEqual(["met"]);
    expect(verdictOf(value("6531"))).toEqual(["missed"]);
    expect(verdictOf(value("6.5e3"))).toEqual(["met"]);
    expect(verdictOf(value("6.4e3"))).toEqual(["missed"]);
    expect(verdictOf(value("6530.6"))).toEqual(["missed"]);
  });

  it("takes a step that the source does not show in its places", () => {
    expect(verdictOf(value("6534", { step: 10 }))).toEqual(["met"]);
    expect(verdictOf(value("6530", { step: 0 }))).toEqual(["met"]);
    expect(verdictOf(value("6530.1", { step: 0 }))).toEqual(["missed"]);
  });

  it("lets what the group allows pass beyond the rounding", () => {
    expect(verdictOf({ ...value("6590"), within: 0.01, why: "a reason" })).toEqual(["met"]);
    expect(verdictOf({ ...value("6590"), within: 0.001, why: "a reason" })).toEqual(["missed"]);
  });

  it("lets a whole unit of the last place pass where the source cuts digits off", () => {
    expect(verdictOf({ ...value("6529"), cutsOff: true })).toEqual(["met"]);
    expect(verdictOf({ ...value("6528"), cutsOff: true })).toEqual(["missed"]);
  });

  it("tells a dispute that has settled from one that stands", () => {
    expect(verdictOf(value("6600", { disputed: "a slip" }))).toEqual(["disputed"]);
    expect(verdictOf(value("6530", { disputed: "a slip" }))).toEqual(["changed-side"]);
  });

  it("names what is missed, with both values", () => {
    expect(missesOf([fileOf(value("6600"))])).toEqual([
      "a-file, a-group, 12 AWG: missed, 6530 circular mils for 6600",
    ]);
  });

  it("refuses a dispute about something that no formula gives", () => {
    expect(() => judgeGroup({ ...computed, disputed: { "255 kcmil": "a slip" } })).toThrow(/255 kcmil/);
  });
});

describe("the schema", () => {
  const faultsOf = (file: object, name = "a-file.json") => validateReferences(new Map([[name, file]])).faults;

  it("accepts a sound file", () => expect(faultsOf(fileOf(printed, computed))).toEqual([]));

  it.each([
    ["a file under another name", fileOf(printed), "b-file.json"],
    ["an unknown key", { ...fileOf(printed), colour: "red" }],
    ["an unknown key of a group", fileOf({ ...printed, colour: "red" } as PrintedGroup)],
    ["two groups of one id", fileOf(printed, printed)],
    ["an unknown quantity", fileOf({ ...printed, quantity: "weight" } as unknown as PrintedGroup)],
    ["a question of another quantity", fileOf({ ...printed, quantity: "withstand-factor" })],
    ["a cited group without a source", fileOf({ ...printed, sources: [] })],
    ["an allowance without a reason", fileOf({ ...printed, within: 0.01 })],
    ["a printed value that is no number", fileOf(value("6,530"))],
    ["a formula without its constants", fileOf({ ...computed, formula: "heat-capacity" })],
    ["editions where none matter", fileOf({ ...computed, editions: ["2011"] })],
    ["digits cut off by a formula", fileOf({ ...computed, cutsOff: true } as FormulaGroup)],
    ["values beside a formula", fileOf({ ...computed, values: [] } as FormulaGroup)],
  ])("refuses %s", (_, file, name = "a-file.json") => expect(faultsOf(file, name)).not.toEqual([]));
});
