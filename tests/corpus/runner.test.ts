import { describe, expect, it } from "vitest";
import { judge } from "../../corpus/tools/runner/judge.js";
import { library } from "../../corpus/tools/runner/library.js";
import { writeMisses } from "../../corpus/tools/runner/misses.js";
import type { Check } from "../../corpus/tools/runner/model.js";
import { type Row, runChecks } from "../../corpus/tools/runner/run-checks.js";
import { select } from "../../corpus/tools/runner/select.js";
import { writeSummary } from "../../corpus/tools/runner/summary.js";
import type { Sources } from "../../tables/tools/source.js";
import {
  answering,
  check,
  disputed,
  documentsOf,
  entryOf,
  faultsOf,
  fileOf,
  source,
  sourcesWith,
} from "./fixtures.js";

const sources: Sources = { handbook: source };
const run = (one: Check): readonly Row[] => runChecks([entryOf(one)], library);
const verdicts = (one: Check): readonly string[] => run(one).map(({ verdict }) => verdict);

describe("the validation", () => {
  it("lets a sound corpus pass", () => {
    expect(faultsOf(documentsOf([check]))).toEqual([]);
    expect(faultsOf(documentsOf([disputed]))).toEqual([]);
  });

  it("reports a duplicate id, also over two files", () => {
    const other = { ...fileOf([check]), role: "system-bonding-jumper" };
    const files = new Map([
      ["main-bonding-jumper.json", fileOf([check])],
      ["system-bonding-jumper.json", other],
    ]);
    expect(faultsOf(documentsOf([], { files }))).toEqual(["one-service: two checks have this id"]);
  });

  it("reports an unknown source and an orphan", () => {
    expect(faultsOf(documentsOf([check], { sources: {} }))).toEqual([
      "main-bonding-jumper: unknown source handbook",
    ]);
    expect(faultsOf(documentsOf([check], { sources: sourcesWith("leaflet") }))).toEqual([
      "leaflet: an orphan, nothing names this source",
    ]);
    expect(faultsOf(documentsOf([check], { sources: sourcesWith("leaflet", { copies: "gone" }) }))).toEqual([
      "leaflet: unknown source gone",
      "leaflet: an orphan, nothing names this source",
    ]);
  });

  it("takes a source that a table names as used", () => {
    const documents = documentsOf([check], { sources: sourcesWith("leaflet"), namedByTables: ["leaflet"] });
    expect(faultsOf(documents)).toEqual([]);
    expect(faultsOf(documentsOf([check], { namedByTables: ["gone", "gone"] }))).toEqual([
      "tables: unknown source gone",
    ]);
  });

  it("reports a flag that is not explained, and one that nothing has", () => {
    expect(faultsOf(documentsOf([{ ...check, flags: ["other"] }]))).toEqual([
      "one-service: unknown flag other",
      "main-bonding-jumper: no check has the flag basic-row",
    ]);
  });

  it("reports a stated edition that does not stand alone", () => {
    expect(faultsOf(documentsOf([{ ...check, holds: ["2014", "2017"] }]))).toEqual([
      "one-service: states 2017, so it holds there alone, not in 2014, 2017",
    ]);
  });

  it.each([
    ["no edition", { ...check, holds: [] }, "must NOT have fewer than 1 items"],
    [
      "a dispute that is not told",
      { ...check, standing: "disputed" },
      "must have required property 'dispute'",
    ],
    ["a dispute about an undisputed check", { ...disputed, standing: "cited" }, "boolean schema is false"],
    ["a key that the schema does not know", { ...check, remark: "x" }, "(remark)"],
    ["an input of another shape", { ...check, input: { ...check.input, scope: "all" } }, "(scope)"],
  ])("reports %s", (_, one, words) => {
    expect(faultsOf(documentsOf([one])).join("\n")).toContain(words);
  });

  it("reports a dispute without its mistake, with the check and what may stand there", () => {
    const { mistake: _, ...dispute } = disputed.dispute ?? {};
    expect(faultsOf(documentsOf([{ ...disputed, dispute }]))).toEqual([
      expect.stringMatching(
        /^main-bonding-jumper.json.*\(one-service\): must have required property 'mistake': one of wrong-row, .*or null$/,
      ),
    ]);
  });

  it("reports an id that was withdrawn", () => {
    const files = new Map([
      ["main-bonding-jumper.json", { ...fileOf([check]), withdrawn: { "one-service": "copied wrongly" } }],
    ]);
    expect(faultsOf(documentsOf([], { files }))).toEqual([
      "one-service: was withdrawn, and an id is never used again",
    ]);
  });

  it("reports a file under the name of another role", () => {
    const files = new Map([["system-bonding-jumper.json", fileOf([check])]]);
    expect(faultsOf(documentsOf([], { files }))).toEqual([
      "system-bonding-jumper.json: holds the role main-bonding-jumper",
    ]);
  });

  it("reports a register of another shape", () => {
    expect(faultsOf(documentsOf([check], { sources: sourcesWith("leaflet", { kind: "rumour" }) }))).toEqual([
      expect.stringContaining("sources/leaflet/kind: must be equal to one of the allowed values"),
    ]);
  });
});

describe("a run", () => {
  it("meets what is right", () => {
    expect(verdicts(check)).toEqual(["met"]);
    expect(verdicts({ ...check, stated: null, holds: ["2014", "2023"] })).toEqual(["met", "met"]);
  });

  it("misses a wrong size, area, outcome and error", () => {
    expect(verdicts({ ...check, expect: { size: "6 AWG" } })).toEqual(["missed"]);
    expect(verdicts({ ...check, expect: { size: "4 AWG", requiredArea: 26240 } })).toEqual(["missed"]);
    expect(verdicts({ ...check, expect: { outcome: "area-only", requiredArea: 41740 } })).toEqual(["missed"]);
    expect(verdicts({ ...check, expect: { error: "unknown-size" } })).toEqual(["missed"]);
  });

  it("misses a wrong figure behind a right size", () => {
    const [found] = run({ ...check, figures: { sum: 167800, assumedSum: 250000, requiredArea: 41000 } });
    expect(found?.verdict).toBe("missed");
    expect(found?.figures).toEqual([
      { name: "assumedSum", expected: 250000, given: null },
      { name: "requiredArea", expected: 41000, given: 41740 },
    ]);
  });

  it("holds the assumed conductors and the installed ones apart", () => {
    const input = {
      supply: { sets: [{ count: 3, size: "600 kcmil", material: "aluminum" }] },
      conductor: { material: "copper" },
    } as const;
    const figures = { sum: 1_800_000, assumedSum: 1_500_000, requiredArea: 187_500 };
    expect(verdicts({ ...check, input, figures, expect: { size: "4/0 AWG" } })).toEqual(["met"]);
  });

  it("meets a refusal that is expected, by its code", () => {
    const input = { supply: { sets: [] }, conductor: { material: "copper" } } as const;
    const { figures: _, ...bare } = check;
    expect(verdicts({ ...bare, input, expect: { error: "empty-list" } })).toEqual(["met"]);
    expect(verdicts({ ...bare, input, expect: { error: "unknown-size" } })).toEqual(["missed"]);
    expect(verdicts({ ...bare, input })).toEqual(["missed"]);
  });

  it("turns a crash into a miss and goes on", () => {
    const crashing = (): never => {
      throw new RangeError("no such row");
    };
    const found = runChecks([entryOf(check), entryOf(check)], crashing);
    const thrown = { thrown: "RangeError: no such row" };
    expect(found.map(({ given }) => given)).toEqual([thrown, thrown]);
    expect(found.every(({ verdict }) => verdict === "missed")).toBe(true);
  });

  it("does not take several conductors for one", () => {
    expect(judge({ ...check, figures: {} }, { size: "4 AWG", quantity: 2 }).verdict).toBe("missed");
    expect(judge({ ...check, figures: {} }, { size: "4 AWG", quantity: 1 }).verdict).toBe("met");
  });

  it("takes a refusal with other codes for a miss", () => {
    expect(
      runChecks([entryOf({ ...check, expect: { error: "empty-list" } })], answering({ errors: [] })),
    ).toEqual([expect.objectContaining({ given: { errors: [] }, verdict: "missed" })]);
  });

  it("has no verdict on a conductor that an implementation does not size", () => {
    expect(judge(check, null)).toMatchObject({ verdict: "unanswered", skipped: [] });
  });
});

describe("an implementation that shows no figures", () => {
  it("is judged by its size, and the row names what was not compared", () => {
    const of = {
      ...check,
      expect: { size: "4 AWG", requiredArea: 41740 },
      figures: { sum: 167800 },
    } as const;
    expect(judge(of, { size: "4 AWG" })).toEqual({
      verdict: "met",
      expected: of.expect,
      figures: [],
      skipped: ["sum", "requiredArea"],
    });
  });

  it("misses where it shows one and it is wrong", () => {
    const of = { ...check, expect: { size: "4 AWG", requiredArea: 41740 } } as const;
    expect(judge(of, { size: "4 AWG", requiredArea: 41741 }).verdict).toBe("missed");
    expect(judge(of, { size: "4 AWG", requiredArea: null }).verdict).toBe("missed");
    expect(judge(check, { size: "4 AWG", sum: 1 }).verdict).toBe("missed");
    expect(judge(check, { size: "4 AWG", sum: null }).verdict).toBe("missed");
  });

  it("must show the area where the area is the answer", () => {
    const of = { ...check, figures: {}, expect: { outcome: "area-only", requiredArea: 41740 } } as const;
    expect(judge(of, { outcome: "area-only" }).verdict).toBe("missed");
    expect(judge(of, { outcome: "area-only", requiredArea: 41740 }).verdict).toBe("met");
    expect(judge(of, { outcome: "not-required", requiredArea: 41740 }).verdict).toBe("missed");
  });
});

describe("a disputed check", () => {
  it("is met by the text's answer, whatever the source's figures", () => {
    expect(judge(disputed, { size: "4 AWG", sum: 1 })).toEqual({
      verdict: "met",
      expected: { size: "4 AWG" },
      figures: [],
      skipped: [],
    });
  });

  it("is reported when the library takes the source's side", () => {
    expect(judge(disputed, { size: "6 AWG" }).verdict).toBe("changed-side");
  });

  it("is missed by a third answer", () => {
    expect(judge(disputed, { size: "2 AWG" }).verdict).toBe("missed");
  });

  it("has not changed side where source and text agree in the number", () => {
    expect(judge({ ...disputed, expect: { size: "4 AWG" } }, { size: "4 AWG" }).verdict).toBe("met");
  });
});

describe("a filter", () => {
  const entries = [entryOf({ ...check, stated: null, holds: ["2014", "2017"] })];

  it("leaves the editions that it names", () => {
    expect(select(entries, { edition: "2014" }).map((one) => one.check.holds)).toEqual([["2014"]]);
    expect(select(entries, { edition: "2008" })).toEqual([]);
  });

  it("leaves the role, source, flag and standing that it names", () => {
    expect(select(entries, { role: "main-bonding-jumper", source: "handbook", flag: "basic-row" })).toEqual(
      entries,
    );
    for (const filter of [
      { role: "grounded-conductor" },
      { source: "x" },
      { flag: "x" },
      { standing: "memory" },
    ] as const) {
      expect(select(entries, filter)).toEqual([]);
    }
  });
});

describe("the report", () => {
  const locator =
    "the second worked example of the chapter on services, in the margin beside the large table";
  const runs = [
    ...run({ ...check, locator, expect: { size: "6 AWG" }, figures: { sum: 1 } }),
    ...run({ ...disputed, id: "another-service", stated: null, holds: ["2014", "2017"] }),
  ];

  it("shows a miss with both answers and where the expected one is printed", () => {
    expect(writeMisses(runs, sources)).toBe(`missed: one-service, 2017 (main-bonding-jumper, cited)
  expected  6 AWG
  given     4 AWG, 41740 cmil required
  figure    sum: 1 expected, 167800 given
  title     A handbook
  locator   the second worked example of the chapter on services, in the margin
            beside the large table`);
  });

  it("counts checks once and runs by edition, at 80 columns", () => {
    const text = writeSummary(runs, sources);
    expect(text).toContain(
      "2 checks from 1 sources, 2 distinct pairs of source and locator;\n3 runs, 1 missed.",
    );
    expect(text).toMatch(/main-bonding-jumper +1 +1 +3 +1\n/);
    expect(text).toMatch(/2017 +1 +0\n/);
    expect(text).toMatch(/unstated +1 +1\n/);
    expect(text).toMatch(/handbook +1 +1 +2 +1 +50 %/);
    expect(Math.max(...text.split("\n").map((line) => line.length))).toBeLessThanOrEqual(80);
  });
});
