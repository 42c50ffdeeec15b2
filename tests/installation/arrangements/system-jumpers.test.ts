import {
  type ArrangementsInput,
  arrangementsOf,
  editionYears,
  InputError,
  systemBondingJumper,
} from "bondmil";
import { describe, expect, it } from "vitest";

const one = { size: "500 kcmil", material: "copper" } as const;
const small = { size: "250 kcmil", material: "copper" } as const;
const base: ArrangementsInput<"system-bonding-jumper"> = {
  code: { year: "2023" },
  source: { id: "T1", outdoors: false },
  enclosures: [
    { id: "P1", supply: { sets: [{ count: 2, ...one }] } },
    { id: "P2", supply: { sets: [{ count: 1, ...one }] } },
  ],
  conductor: { material: "copper" },
};
const arrange = (change: Partial<ArrangementsInput<"system-bonding-jumper">> = {}) =>
  arrangementsOf(systemBondingJumper, { ...base, ...change });
const single = { enclosures: base.enclosures.slice(0, 1) };

describe("several enclosures", () => {
  it("have a jumper in each, or one at the source from the largest corresponding sum", () => {
    const sized = arrange().arrangements.map((it) => [
      it.id,
      ...it.conductors.map(({ subject, result }) => [subject, result.requiredArea]),
    ]);
    expect(sized).toEqual([
      ["jumper-in-each-enclosure", ["P1", 133_100], ["P2", 105_600]],
      ["jumper-at-source", ["T1", 187_500]],
    ]);
  });

  it("add corresponding phases at the source, not each feeder's largest", () => {
    const enclosures = [
      { id: "P1", supply: { sets: [{ count: 2, phases: [one, small, small] }] } },
      { id: "P2", supply: { sets: [{ count: 2, phases: [small, one, small] }] } },
    ];
    expect(arrange({ enclosures }).arrangements[1]?.conductors[0]?.result.steps[0]).toMatchObject({
      area: 1_500_000,
    });
  });

  it("differ in every way", () => {
    expect(arrange().differences).toEqual([
      "sizes",
      "total-metal",
      "grounded-conductor",
      "grounding-electrode-conductor",
      "second-connections",
    ]);
  });

  it("leave the electrode connection to a reading", () => {
    const note = (code: ArrangementsInput<"system-bonding-jumper">["code"]) =>
      arrange({ code }).arrangements[0]?.connections.find(
        ({ kind }) => kind === "grounding-electrode-conductor",
      )?.note;
    expect(note({ year: "2023" })).toBe("at-each-jumper");
    expect(
      note({ year: "2023", readings: { "electrode-connection-with-several-jumpers": "at-one-jumper" } }),
    ).toBe("at-one-jumper");
  });
});

describe("where the jumper is decides the grounded conductor, the electrode conductor and what is a fault", () => {
  it("in the enclosure", () => {
    expect(
      arrange(single).arrangements[0]?.connections.map(({ kind, status, at, note }) => [
        kind,
        status,
        at,
        note,
      ]),
    ).toEqual([
      ["grounded-conductor", "required", ["P1"], "table-minimum-applies"],
      ["grounding-electrode-conductor", "required", ["P1"], "at-the-jumper"],
      ["supply-side-bonding-jumper", "required", ["T1", "P1"], "from-source-to-each-enclosure"],
      ["second-connection-at-source", "fault", ["T1"], "only-one-point-per-system"],
      ["second-connection-load-side", "fault", [], "none-beyond-the-disconnect"],
    ]);
  });

  it("at the source", () => {
    expect(
      arrange(single).arrangements[1]?.connections.map(({ kind, status, at, note }) => [
        kind,
        status,
        at,
        note,
      ]),
    ).toEqual([
      ["grounded-conductor", "permitted", ["P1"], "sized-for-its-load-only"],
      ["grounding-electrode-conductor", "required", ["T1"], "at-the-source"],
      ["supply-side-bonding-jumper", "required", ["T1", "P1"], "from-source-to-each-enclosure"],
      ["second-connection-at-disconnect", "fault", ["P1"], "only-one-point-per-system"],
      ["second-connection-load-side", "fault", [], "none-beyond-the-disconnect"],
    ]);
  });
});

describe("jumpers at both ends", () => {
  const ends = (change: Partial<ArrangementsInput<"system-bonding-jumper">> = {}) =>
    arrange({ ...single, code: { year: "2011" }, ...change }).arrangements[2];

  it("are one at the source and one in the enclosure, by the same conductors", () => {
    expect(ends()?.conductors.map(({ id, subject, result }) => [id, subject, result.requiredArea])).toEqual([
      ["system-bonding-jumper T1", "T1", 133_100],
      ["system-bonding-jumper P1", "P1", 133_100],
    ]);
    expect(ends()?.totalArea).toBe(2 * 133_100);
  });

  it.each([
    [false, ["T1", "P1"], "at-one-jumper", "250.30(A)(5)"],
    [true, ["T1"], "at-the-source", "250.30(C)"],
  ])("let the electrode conductor land, outdoors %s, at %j", (outdoors, at, note, section) => {
    const found = ends({ source: { id: "T1", outdoors } })?.connections.map((one) => [
      one.kind,
      one.status,
      one.at,
      one.note,
      one.citation.section,
    ]);
    expect(found?.slice(0, 2)).toEqual([
      ["grounded-conductor", "required", ["P1"], "at-least-the-jumper", "250.30(A)(1) Exception No. 2"],
      ["grounding-electrode-conductor", "required", at, note, section],
    ]);
    expect(found?.slice(2).map(([kind, status, place]) => [kind, status, place])).toEqual([
      ["supply-side-bonding-jumper", "required", ["T1", "P1"]],
      ["second-connection-load-side", "fault", []],
    ]);
  });

  it("make the supply-side jumper a choice where the edition says so", () => {
    expect(
      ends({ code: { year: "2023" }, source: { id: "T1", outdoors: true } })?.connections[2],
    ).toMatchObject({
      status: "permitted",
      at: [],
    });
  });
});

describe("a source outdoors", () => {
  const outdoors = (year: "2008" | "2023") =>
    arrange({ ...single, code: { year }, source: { id: "T1", outdoors: true } }).arrangements;

  it("is cautioned in every arrangement, and one indoors in none", () => {
    const caution = { code: "outdoor-source", section: "250.30(C)", at: "T1" };
    const without = { code: "only-without-parallel-path", section: "250.30(A)(1) Exception No. 2", at: "T1" };
    expect(outdoors("2023").map(({ cautions }) => cautions)).toEqual([
      [caution],
      [caution],
      [caution, without],
    ]);
    expect(arrange(single).arrangements.map(({ cautions }) => cautions)).toEqual([[], [], []]);
  });

  it("has its electrode conductor, and since 2011 its jumper, by the section on outdoor sources", () => {
    const cited = (year: "2008" | "2023") => {
      const [inEach, atSource] = outdoors(year);
      return [inEach?.citation.section, atSource?.connections[1]?.citation.section];
    };
    expect(cited("2023")).toEqual(["250.30(C)", "250.30(C)"]);
    expect(cited("2008")[0]).toBe("250.30(A)(1)");
  });
});

describe("the section of an arrangement", () => {
  it("is that on several enclosures where there are several", () => {
    const cited = (change?: Partial<ArrangementsInput<"system-bonding-jumper">>) =>
      arrange(change).arrangements.map(({ citation }) => citation.section);
    expect(cited().slice(0, 2)).toEqual(["250.28(D)(3)", "250.28(D)(3)"]);
    expect(cited(single).slice(0, 2)).toEqual(["250.30(A)(1)", "250.30(A)(1)"]);
  });
});

describe("status by edition and place of the source", () => {
  const statusesOf = (outdoors: boolean) =>
    editionYears.map((year) =>
      arrange({ ...single, code: { year }, source: { id: "T1", outdoors } }).arrangements.map(
        ({ status }) => status,
      ),
    );
  const [yes, no, unless] = ["permitted", "not-permitted", "permitted-without-parallel-path"];

  it("indoors: both ends through 2011 only", () => {
    expect(statusesOf(false)).toEqual([
      [yes, yes, unless],
      [yes, yes, unless],
      ...Array.from({ length: 5 }, () => [yes, yes, no]),
    ]);
  });

  it("outdoors: at the source from 2011, both ends by the exception", () => {
    expect(statusesOf(true)).toEqual([
      [yes, yes, unless],
      ...Array.from({ length: 6 }, () => [no, yes, unless]),
    ]);
  });

  it("both ends where they are not permitted: names the violation, and the supply-side jumper stays", () => {
    const bothEnds = arrange(single).arrangements[2];
    expect(bothEnds?.violations.map(({ code, at }) => [code, at])).toEqual([
      ["jumper-not-permitted-here", ["T1", "P1"]],
    ]);
    expect(bothEnds?.connections[2]).toMatchObject({ status: "required", at: ["T1", "P1"] });
  });

  it("both ends: the supply-side jumper was required through 2011", () => {
    const notes = editionYears.map(
      (year) =>
        arrange({
          ...single,
          code: { year },
          source: { id: "T1", outdoors: true },
        }).arrangements[2]?.connections.find(({ kind }) => kind === "supply-side-bonding-jumper")?.note,
    );
    expect(notes).toEqual([
      ...Array.from({ length: 2 }, () => "from-source-to-each-enclosure"),
      ...Array.from({ length: 5 }, () => "not-required-with-both-jumpers"),
    ]);
  });
});

describe("bad input", () => {
  it("reports everything at once", () => {
    let issues: unknown;
    try {
      arrange({
        code: { year: "2022" },
        source: { id: "P1" },
        enclosures: [{ id: "P1", supply: { sets: [] } }],
      } as never);
    } catch (error) {
      if (error instanceof InputError) issues = error.issues.map(({ code, path }) => [code, path]);
    }
    expect(issues).toEqual([
      ["unknown-value", "code.year"],
      ["missing", "source.outdoors"],
      ["empty-list", "enclosures[0].supply.sets"],
    ]);
  });

  it.each([
    [undefined, "missing", ""],
    [{ ...base, source: 5 }, "wrong-type", "source"],
    [{ ...base, source: { id: "T1", outdoors: false, height: 2 } }, "unknown-key", "source.height"],
  ])("%#: says once what is no object", (input, code, path) => {
    let issues: unknown;
    try {
      arrangementsOf(systemBondingJumper, input as never);
    } catch (error) {
      if (error instanceof InputError) issues = error.issues.map((one) => [one.code, one.path]);
    }
    expect(issues).toEqual([[code, path]]);
  });

  it("refuses an enclosure named like the source", () => {
    expect(() => arrange({ source: { id: "P2", outdoors: false } })).toThrow(/enclosures\[1\]\.id/);
  });
});
