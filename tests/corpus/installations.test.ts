import { scheduleOf } from "bondmil";
import { describe, expect, it } from "vitest";
import { judgeSchedule } from "../../corpus/tools/installations/judge.js";
import {
  type InstallationCheck,
  type InstallationCheckFile,
  installationEntriesOf,
  type Statement,
} from "../../corpus/tools/installations/model.js";
import { readInstallationChecks, validateInstallationChecks } from "../../corpus/tools/installations/read.js";
import {
  writeInstallationMisses,
  writeInstallationSummary,
} from "../../corpus/tools/installations/report.js";
import { runInstallations, selectInstallations } from "../../corpus/tools/installations/run.js";
import { derived, installation, service, setsOf } from "../installation/installations.js";

const { files, faults } = validateInstallationChecks(readInstallationChecks());
const entries = installationEntriesOf(files);

it("the checks of installations are valid", () => expect(faults).toEqual([]));

describe.each(files)("the checks of $id", (file) => {
  it.each(installationEntriesOf([file]))("$check.id", (entry) => {
    expect(writeInstallationMisses(runInstallations([entry]), {})).toBe("");
  });
});

const metal = { count: 1, kind: "nonflexible-metal" } as const;

// A service, and a derived system on metal conduit that is bonded at both ends.
const document = {
  services: [
    service({
      boxes: [{ id: "M1", kind: "meter", bondedBy: "grounded-conductor" }],
      runs: [
        {
          id: "R1",
          from: "U1",
          to: "M1",
          supply: setsOf(1, "3/0 AWG"),
          raceways: { count: 1, kind: "nonmetallic" },
        },
        { id: "R2", from: "M1", to: "D1", supply: setsOf(1, "3/0 AWG"), raceways: metal },
      ],
    }),
  ],
  derivedSystems: [
    derived({
      jumperAt: "both-ends",
      runs: [
        {
          id: "Y1",
          from: "T1",
          to: "P1",
          supply: setsOf(1, "3/0 AWG"),
          raceways: metal,
        },
      ],
    }),
  ],
};
const schedule = scheduleOf(installation(document, "2017"));
const { code: _, ...uncoded } = installation(document);
const check: InstallationCheck = {
  id: "one-service",
  stated: "2017",
  holds: ["2017"],
  installation: "a-service",
  expect: [{ role: "main-bonding-jumper", subject: "D1" }],
  locator: "page 1",
  standing: "cited",
  voice: "author",
  assumed: [],
};
const file = (checks: readonly InstallationCheck[]): InstallationCheckFile & Record<string, unknown> => ({
  $schema: "../schema/installation-checks.schema.json",
  version: 1,
  id: "a-file",
  topic: "A topic",
  count: checks.length,
  installations: { "a-service": uncoded },
  groups: [{ source: "a-book", checks }],
});

const verdictOf = (...expected: readonly Statement[]) =>
  judgeSchedule({ ...check, expect: expected }, schedule, uncoded).verdict;

describe("the judge", () => {
  const jumper = { role: "main-bonding-jumper", subject: "D1" } as const;
  const lateral = { role: "supply-side-bonding-jumper", subject: "R1" } as const;
  const entrance = { role: "supply-side-bonding-jumper", subject: "R2" } as const;
  const both = ["T1", "P1"] as const;

  it.each<[string, Statement, Statement]>([
    ["a conductor", jumper, { ...jumper, subject: "M1" }],
    ["a size", { ...jumper, size: "4 AWG" }, { ...jumper, size: "2 AWG" }],
    ["how many", { ...jumper, quantity: 1 }, { ...jumper, quantity: 2 }],
    ["a start", { ...jumper, from: "D1" }, { ...jumper, from: "M1" }],
    ["an end", { ...jumper, to: "D1" }, { ...jumper, to: "U1" }],
    ["an end at a fitting", { ...entrance, from: "R2" }, { ...entrance, from: "M1" }],
    ["a section", { ...jumper, placement: "250.24" }, { ...jumper, placement: "250.2" }],
    ["the whole section", { ...jumper, placement: "250.24(B)" }, { ...jumper, placement: "250.24(C)" }],
    [
      "that none is required",
      { ...jumper, subject: "M1", required: false },
      { ...jumper, subject: "D1", required: false },
    ],
    [
      "why none is required",
      { ...lateral, required: false, why: "nonmetallic-raceway" },
      { ...lateral, required: false, why: "ungrounded-system" },
    ],
    [
      "what is forbidden",
      { violation: "jumper-not-permitted-here", at: both },
      { violation: "more-than-six-disconnects", at: both },
    ],
    [
      "where it is forbidden",
      { violation: "jumper-not-permitted-here", at: ["P1", "T1"] },
      { violation: "jumper-not-permitted-here", at: ["T1"] },
    ],
    [
      "by which section it is forbidden",
      { violation: "jumper-not-permitted-here", at: both, section: "250.30(A)(1)" },
      { violation: "jumper-not-permitted-here", at: both, section: "250.30(A)(5)" },
    ],
    [
      "what is not forbidden",
      { noViolation: "more-than-six-disconnects" },
      { noViolation: "jumper-not-permitted-here" },
    ],
  ])("tells %s", (_, right, wrong) => {
    expect(verdictOf(right)).toBe("met");
    expect(verdictOf(wrong)).toBe("missed");
    expect(verdictOf(right, wrong)).toBe("missed");
  });

  it("does not take silence for a reason", () => {
    const silent = { role: "main-bonding-jumper", subject: "U1", required: false } as const;
    expect(verdictOf(silent)).toBe("met");
    expect(verdictOf({ ...silent, why: "grounded-conductor-serves" })).toBe("missed");
    expect(verdictOf({ ...silent, placement: "250.24" })).toBe("missed");
  });

  it("holds a disputed check against the text, and says when its source is met instead", () => {
    const dispute = { section: "250.24(B)", reason: "A slip.", expectByText: [jumper] };
    const wrong = [{ ...jumper, required: false }] as const;
    const disputed = { ...check, standing: "disputed", expect: wrong, dispute } as const;
    expect(judgeSchedule(disputed, schedule, uncoded).verdict).toBe("met");
    const turned = { ...disputed, expect: [jumper], dispute: { ...dispute, expectByText: wrong } };
    expect(judgeSchedule(turned, schedule, uncoded)).toEqual({ verdict: "changed-side", unmet: wrong });
  });
});

describe("a run", () => {
  const wrong = { ...check, expect: [{ ...check.expect[0], size: "2 AWG" }] } as InstallationCheck;

  it("counts by topic and standing, a check once", () => {
    const { rows } = run(
      file([
        { ...check, stated: null, holds: ["2017", "2020"] },
        { ...wrong, id: "another" },
      ]),
    );
    expect(writeInstallationSummary(rows).split("\n").slice(-2)).toEqual([
      "a-file      2     3       1",
      "all         2     3       1",
    ]);
  });

  it("writes a miss in full", () => {
    expect(writeInstallationMisses(run(file([wrong])).rows, {})).toBe(
      [
        "missed: one-service, 2017 (a-file, cited)",
        "  document  a-service",
        "  unmet     main-bonding-jumper D1, size 2 AWG",
        "  of        1 statements",
        "  title     a-book",
        "  locator   page 1",
      ].join("\n"),
    );
  });

  it("takes a document that is refused for a miss, and says why", () => {
    const broken = { ...file([check]), installations: { "a-service": { ...uncoded, services: 1 } } };
    const { rows } = run(broken as unknown as InstallationCheckFile);
    expect(rows.map(({ verdict, refused }) => [verdict, refused?.length])).toEqual([["missed", 1]]);
  });

  it("is narrowed by source, standing and edition, and by a role or a flag to nothing", () => {
    const count = (filter: Parameters<typeof selectInstallations>[1]): number =>
      runInstallations(selectInstallations(entries, filter)).length;
    expect(count({ role: "main-bonding-jumper" })).toBe(0);
    expect(count({ flag: "basic-row" })).toBe(0);
    expect(count({ edition: "2008", source: "forum-electrode-conductor-at-meter-2008" })).toBe(1);
    expect(count({ edition: "2011", source: "forum-electrode-conductor-at-meter-2008" })).toBe(0);
    expect(count({ standing: "disputed" })).toBeLessThan(count({}));
  });
});

describe("validation", () => {
  const faultsOf = (content: object, name = "a-file.json") =>
    validateInstallationChecks(new Map([[name, content]])).faults;

  it("accepts a sound file", () => expect(faultsOf(file([check]))).toEqual([]));

  it.each<[string, object, string]>([
    ["a key of its own", { ...check, place: "D1" }, "must NOT have additional properties"],
    ["a document of another file", { ...check, installation: "a-house" }, "unknown installation a-house"],
    ["another edition than the stated", { ...check, holds: ["2017", "2020"] }, "it holds there alone"],
    ["what is asked as cited", { ...check, voice: "asker" }, "what somebody asks is not cited"],
    ["a dispute that is none", { ...check, standing: "disputed" }, "must have required property 'dispute'"],
    [
      "a dispute of the same answer",
      {
        ...check,
        standing: "disputed",
        dispute: { section: "250.24(B)", reason: "A slip.", expectByText: check.expect },
      },
      "source and text say the same",
    ],
    ["a role", { ...check, expect: [{ role: "jumper", subject: "D1" }] }, "unknown role jumper"],
    ["a place", { ...check, expect: [{ ...check.expect[0], from: "D2" }] }, "the document has no D2"],
    ["a violation", { ...check, expect: [{ noViolation: "jumper" }] }, "unknown violation jumper"],
    [
      "a place of a violation",
      { ...check, expect: [{ violation: "more-than-six-disconnects", at: ["S9"] }] },
      "the document has no S9",
    ],
  ])("refuses %s", (_, one, said) => {
    expect(faultsOf(file([one as InstallationCheck])).join("\n")).toContain(said);
  });

  it("refuses two checks of one id, an idle document, a code and another name of the file", () => {
    const idle = { ...file([check]), installations: { "a-service": uncoded, "a-house": uncoded } };
    const coded = { ...file([check]), installations: { "a-service": installation(document) } };
    expect(faultsOf(file([check, check]))).toEqual(["one-service: two checks have this id"]);
    expect(faultsOf(idle)).toEqual(["a-file: no check has the installation a-house"]);
    expect(faultsOf(coded)).not.toEqual([]);
    expect(faultsOf(file([check]), "b-file.json")).toEqual(["b-file.json: holds a-file"]);
  });
});

function run(one: InstallationCheckFile) {
  return { rows: runInstallations(installationEntriesOf([one])) };
}
