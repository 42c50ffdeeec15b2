import { describe, expect, it } from "vitest";
import { judgeAnswer } from "../../corpus/tools/supply/judge.js";
import {
  type Expected,
  type SupplyCheck,
  type SupplyCheckFile,
  supplyEntriesOf,
} from "../../corpus/tools/supply/model.js";
import { answerTo, questions } from "../../corpus/tools/supply/questions.js";
import { readSupplyChecks, validateSupplyChecks } from "../../corpus/tools/supply/read.js";
import { placesOf, writeSupplyMisses, writeSupplySummary } from "../../corpus/tools/supply/report.js";
import { runSupplies, selectSupplies } from "../../corpus/tools/supply/run.js";

const { files, faults } = validateSupplyChecks(readSupplyChecks());
const entries = supplyEntriesOf(files);

it("the checks of supplies are valid, and every question has some", () => {
  expect(faults).toEqual([]);
  expect(files.map(({ id }) => id)).toEqual(Object.keys(questions).sort());
});

describe.each(files)("the checks of $id", (file) => {
  it.each(supplyEntriesOf([file]))("$check.id", (entry) => {
    expect(writeSupplyMisses(runSupplies([entry]), {})).toBe("");
  });
});

const check: SupplyCheck = {
  id: "six-awg",
  stated: "2023",
  holds: ["2023"],
  input: { size: "6 AWG", material: "copper", temperature: 75 },
  expect: { amperes: 65 },
  locator: "page 1",
  standing: "cited",
};
const file = (...checks: readonly SupplyCheck[]): SupplyCheckFile & Record<string, unknown> => ({
  $schema: "../schema/supply-checks.schema.json",
  version: 1,
  id: "table-ampacity",
  topic: "A topic",
  groups: [{ source: "a-book", checks }],
});

describe("the judge", () => {
  const answer = {
    amperes: 28.846,
    size: "6 AWG",
    none: null,
    inner: { deep: true },
    steps: [{ step: "a", factor: 0.8 }, { step: "b" }],
  };
  const verdictOf = (expected: Readonly<Record<string, Expected>>) =>
    judgeAnswer({ ...check, expect: expected }, answer).verdict;

  it.each<[string, Expected, Expected]>([
    ["amperes", 28.846, 28.84],
    ["amperes", { printed: 28.85, within: 0.005 }, { printed: 28.88, within: 0.005 }],
    ["size", "6 AWG", "4 AWG"],
    ["none", null, 0],
    ["inner", { deep: true }, { deep: false }],
    ["inner", { deep: true }, { deeper: true }],
    ["inner", { deep: true }, true],
    ["steps", [{ step: "a" }, {}], [{ step: "a" }]],
    ["steps", [{ factor: 0.8 }, {}], [{ factor: 0.7 }, {}]],
    ["steps", { some: [{ step: "b" }] }, { some: [{ step: "c" }] }],
    ["steps", { some: [{ step: "a", factor: 0.8 }] }, { some: [{ step: "b", factor: 0.8 }] }],
  ])("tells %s", (member, right, wrong) => {
    expect(verdictOf({ [member]: right })).toBe("met");
    expect(verdictOf({ [member]: wrong })).toBe("missed");
  });

  it("names every place that is not as expected", () => {
    const { unmet } = judgeAnswer({ ...check, expect: { amperes: 1, inner: { deep: false } } }, answer);
    expect(unmet.map(({ path }) => path)).toEqual(["amperes", "inner.deep"]);
  });

  it("takes half of the last printed place, and no more", () => {
    const within = (given: number) =>
      judgeAnswer({ ...check, expect: { amperes: { printed: 54.1, within: 0.05 } } }, { amperes: given })
        .verdict;
    expect([54.05, 54.15, 54.16, 54.04].map(within)).toEqual(["met", "met", "missed", "missed"]);
  });

  it("holds a disputed check against the text, and says when its source is met instead", () => {
    const dispute = { section: "310.16", reason: "A slip.", expectByText: { amperes: 28.846 } };
    const disputed = { ...check, standing: "disputed", expect: { amperes: 30 }, dispute } as const;
    expect(judgeAnswer(disputed, answer).verdict).toBe("met");
    expect(judgeAnswer(disputed, { amperes: 30 }).verdict).toBe("changed-side");
    expect(judgeAnswer(disputed, { amperes: 31 }).verdict).toBe("missed");
  });
});

describe("a run", () => {
  it("takes a refusal for an answer with its codes", () => {
    expect(answerTo("table-ampacity", "2023", { ...check.input, material: "tin" })).toEqual({
      errors: ["unknown-value"],
    });
  });

  it("counts by question and standing, a check once, and the places", () => {
    const wide = { ...check, stated: null, holds: ["2020", "2023"] } as const;
    const rows = runSupplies(
      supplyEntriesOf([file(wide, { ...check, id: "another", expect: { amperes: 64 } })]),
    );
    expect(writeSupplySummary(rows).split("\n").slice(-2)).toEqual([
      "table-ampacity      2       1     3       1",
      "all                 2       1     3       1",
    ]);
    expect(placesOf(supplyEntriesOf([file(check, { ...check, locator: "page 2" })]))).toBe(2);
  });

  it("writes a miss in full", () => {
    const wrong = { ...check, expect: { amperes: 64 } };
    expect(writeSupplyMisses(runSupplies(supplyEntriesOf([file(wrong)])), {})).toBe(
      [
        "missed: six-awg, 2023 (table-ampacity, cited)",
        '  input     {"size":"6 AWG","material":"copper","temperature":75}',
        "  at        amperes",
        "  expected  64",
        "  given     65",
        "  title     a-book",
        "  locator   page 1",
      ].join("\n"),
    );
  });

  it("is narrowed by source, standing and edition, and by a role or a flag to nothing", () => {
    const count = (filter: Parameters<typeof selectSupplies>[1]): number =>
      runSupplies(selectSupplies(entries, filter)).length;
    expect(count({ role: "main-bonding-jumper" })).toBe(0);
    expect(count({ flag: "basic-row" })).toBe(0);
    expect(count({ edition: "2011", source: "trade-answer-feeder-neutral" })).toBeGreaterThan(0);
    expect(count({ edition: "2014", source: "trade-answer-feeder-neutral" })).toBe(0);
    expect(count({ standing: "cited" })).toBeLessThanOrEqual(count({}));
  });
});

describe("validation", () => {
  const faultsOf = (content: object, name = "table-ampacity.json") =>
    validateSupplyChecks(new Map([[name, content]])).faults;
  const dispute = { section: "310.16", reason: "A slip.", expectByText: check.expect };

  it("accepts a sound file", () => expect(faultsOf(file(check))).toEqual([]));

  it.each<[string, object, string]>([
    ["a key of its own", { ...check, place: "D1" }, "must NOT have additional properties"],
    ["an edition in the input", { ...check, input: { edition: "2023" } }, "must NOT be valid"],
    ["another edition than the stated", { ...check, holds: ["2023", "2020"] }, "it holds there alone"],
    ["an empty expectation", { ...check, expect: {} }, "must NOT have fewer than 1 properties"],
    ["a number without its rounding", { ...check, expect: { amperes: { printed: 1 } } }, "within"],
    ["a dispute that is none", { ...check, standing: "disputed" }, "must have required property 'dispute'"],
    [
      "a dispute of the same answer",
      { ...check, standing: "disputed", dispute },
      "source and text say the same",
    ],
  ])("refuses %s", (_, one, said) => {
    expect(faultsOf(file(one as SupplyCheck)).join("\n")).toContain(said);
  });

  it("refuses two checks of one id, a question that there is not, and another name of the file", () => {
    expect(faultsOf(file(check, check))).toEqual(["six-awg: two checks have this id"]);
    expect(faultsOf({ ...file(check), id: "weight" }, "weight.json")).toEqual([
      "weight: no question has this name",
    ]);
    expect(faultsOf(file(check), "weight.json")).toEqual(["weight.json: holds table-ampacity"]);
  });
});
