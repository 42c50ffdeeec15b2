import { type ArrangementsInput, arrangementsOf, InputError, mainBondingJumper, type Supply } from "bondmil";
import { describe, expect, it } from "vitest";

const copper = (count: number, size: "500 kcmil" | "600 kcmil" | "3/0 AWG"): Supply => ({
  sets: [{ count, size, material: "copper" }],
});
const base: ArrangementsInput<"main-bonding-jumper"> = {
  code: { year: "2020" },
  enclosures: [
    { id: "D1", supply: copper(1, "600 kcmil") },
    { id: "D2", supply: copper(1, "3/0 AWG") },
  ],
  wireway: { id: "W1", supply: copper(3, "500 kcmil") },
  conductor: { material: "copper" },
};
const arrange = (change: Partial<ArrangementsInput<"main-bonding-jumper">> = {}) =>
  arrangementsOf(mainBondingJumper, { ...base, ...change });

describe("a service with several enclosures", () => {
  it("has a main jumper in each, by the conductors to it, and a supply-side jumper for the wireway, by all", () => {
    const [inEach] = arrange().arrangements;
    expect(inEach?.conductors.map(({ subject, result }) => [subject, result.role, result.outcome])).toEqual([
      ["D1", "main-bonding-jumper", { kind: "conductor", size: "1/0 AWG", quantity: 1 }],
      ["D2", "main-bonding-jumper", { kind: "conductor", size: "4 AWG", quantity: 1 }],
      ["W1", "supply-side-bonding-jumper", { kind: "conductor", size: "4/0 AWG", quantity: 1 }],
    ]);
    expect(inEach?.citation.section).toBe("250.28(D)(2)");
    expect(inEach?.totalArea).toBe(105_600 + 41_740 + 211_600);
    expect(inEach?.cautions.map(({ code }) => code)).toEqual(["jumper-in-wireway"]);
  });

  it("has one main jumper in a listed assembly, by all conductors that supply it", () => {
    const [, inAssembly] = arrange().arrangements;
    expect(inAssembly?.id).toBe("one-jumper-in-listed-assembly");
    // The wireway stays ahead of the assembly, and is bonded there (250.92(A)).
    expect(inAssembly?.conductors.map(({ id, result }) => [id, result.requiredArea])).toEqual([
      ["main-bonding-jumper service", 187_500],
      ["supply-side-bonding-jumper W1", 187_500],
    ]);
    expect(inAssembly?.cautions.map(({ code }) => code)).toEqual([
      "assembly-size-inferred",
      "assembly-narrowed",
      "jumper-in-wireway",
    ]);
  });

  it("connects everything at the assembly that is one", () => {
    const [, inAssembly] = arrange().arrangements;
    expect(inAssembly?.connections.map(({ kind, at, note }) => [kind, at, note]).slice(0, 2)).toEqual([
      ["grounded-conductor", ["service"], "bonded-at-assembly-terminal"],
      ["grounding-electrode-conductor", ["service"], "anywhere-on-supply-side"],
    ]);
  });

  it("takes the sets to all enclosures for the assembly where no wireway is named", () => {
    const { wireway: _, ...without } = base;
    const [, inAssembly] = arrangementsOf(mainBondingJumper, without).arrangements;
    expect(inAssembly?.conductors[0]?.result.steps[0]).toMatchObject({ kind: "sum", area: 767_800 });
  });

  it("did not narrow the assembly before 2020", () => {
    const [, inAssembly] = arrange({ code: { year: "2017" } }).arrangements;
    expect(inAssembly?.cautions.map(({ code }) => code)).toEqual([
      "assembly-size-inferred",
      "jumper-in-wireway",
    ]);
  });

  it("brings the grounded conductor to every enclosure, and forbids a connection beyond", () => {
    const [inEach] = arrange({ code: { year: "2023" } }).arrangements;
    expect(
      inEach?.connections.map(({ kind, status, at, citation }) => [kind, status, at, citation.section]),
    ).toEqual([
      ["grounded-conductor", "required", ["D1", "D2"], "250.24(D)"],
      ["grounding-electrode-conductor", "required", [], "250.64(D)"],
      ["supply-side-bonding-jumper", "required", ["W1"], "250.92(A)"],
      ["second-connection-supply-side", "permitted", [], "250.142(A)"],
      ["second-connection-load-side", "fault", [], "250.24(B)"],
    ]);
  });

  it("forbids seven disconnects, not at six, and sizes them all", () => {
    const enclosures = (n: number) =>
      Array.from({ length: n }, (_, i) => ({ id: `D${i}`, supply: copper(1, "3/0 AWG") }));
    const codes = (n: number) =>
      arrange({ enclosures: enclosures(n) }).arrangements[0]?.violations.map(({ code }) => code);
    expect(codes(6)).not.toContain("more-than-six-disconnects");
    expect(codes(7)).toContain("more-than-six-disconnects");
    expect(arrange({ enclosures: enclosures(7) }).arrangements[0]?.conductors).toHaveLength(8);
  });

  it("compares ampacities in the column that is told", () => {
    const aluminum: Supply = { sets: [{ count: 4, size: "750 kcmil", material: "aluminum" }] };
    const area = (temperature?: 60 | 75) =>
      arrange({
        enclosures: [{ id: "D1", supply: aluminum }],
        ...(temperature && { temperature }),
      }).arrangements[0]?.conductors[0]?.result.requiredArea;
    expect([area(), area(75), area(60)]).toEqual([300_000, 300_000, 250_000]);
  });

  it("adds the loads of conductors that are not chosen yet", () => {
    const { wireway: _, ...without } = base;
    const told = base.enclosures.map((one, i) => ({
      ...one,
      supply: { ...one.supply, requiredForAmperes: 100 * (i + 1) },
    }));
    const [, inAssembly] = arrangementsOf(mainBondingJumper, { ...without, enclosures: told }).arrangements;
    expect(inAssembly?.conductors[0]?.result.steps[0]).toMatchObject({ supply: { requiredForAmperes: 300 } });
  });

  it("counts the area of a bus as its metal", () => {
    const [inEach] = arrange({ conductor: { material: "copper", form: "bus" } }).arrangements;
    expect(inEach?.totalArea).toBe(105_600 + 41_740 + 187_500);
  });

  it("says in what the arrangements differ", () => {
    expect(arrange().differences).toEqual([
      "sizes",
      "total-metal",
      "grounded-conductor",
      "grounding-electrode-conductor",
    ]);
  });
});

describe("a service with one enclosure", () => {
  it("has its electrode conductor there, or anywhere on the supply side", () => {
    const { arrangements } = arrange({ enclosures: [{ id: "D1", supply: copper(2, "500 kcmil") }] });
    expect(arrangements[0]?.connections[1]).toMatchObject({
      kind: "grounding-electrode-conductor",
      at: ["D1"],
      note: "anywhere-on-supply-side",
      citation: { section: "250.24(A)(1)" },
    });
  });

  it("without a wireway has neither its jumper nor its caution", () => {
    const { wireway: _, ...without } = base;
    const [inEach] = arrangementsOf(mainBondingJumper, without).arrangements;
    expect(inEach?.conductors.map(({ subject }) => subject)).toEqual(["D1", "D2"]);
    expect(inEach?.cautions).toEqual([]);
    expect(inEach?.connections.map(({ kind }) => kind)).not.toContain("supply-side-bonding-jumper");
  });

  it("has one arrangement, and no differences", () => {
    const comparison = arrange({ enclosures: [{ id: "D1", supply: copper(2, "500 kcmil") }] });
    expect(comparison.arrangements.map(({ id, citation }) => [id, citation.section])).toEqual([
      ["jumper-in-each-enclosure", "250.24(B)"],
    ]);
    expect(comparison.differences).toEqual([]);
  });
});

describe("bad input", () => {
  it.each([
    [{ enclosures: [] }, "empty-list", "enclosures"],
    [{ enclosures: [{ id: "", supply: copper(1, "3/0 AWG") }] }, "wrong-type", "enclosures[0].id"],
    [
      { enclosures: [...base.enclosures, { id: "D1", supply: copper(1, "3/0 AWG") }] },
      "duplicate-id",
      "enclosures[2].id",
    ],
    [{ wireway: { id: "D2", supply: copper(1, "3/0 AWG") } }, "duplicate-id", "wireway.id"],
    [{ gutter: {} }, "unknown-key", "gutter"],
    [{ wireway: { id: "W1", supply: copper(1, "3/0 AWG"), length: 3 } }, "unknown-key", "wireway.length"],
    [{ temperature: 70 }, "unknown-value", "temperature"],
    [{ conductor: { material: "copper", form: "screw" } }, "unknown-value", "conductor.form"],
    [
      { enclosures: [{ id: "D1", supply: { sets: [{ count: 0, size: "3/0 AWG", material: "copper" }] } }] },
      "not-positive",
      "enclosures[0].supply.sets[0].count",
    ],
  ])("%j is %s at %s", (change, code, path) => {
    let issues: unknown;
    try {
      arrange(change as never);
    } catch (error) {
      if (error instanceof InputError) issues = error.issues;
    }
    expect(issues).toMatchObject([{ code, path }]);
  });

  it("refuses phases that cannot be matched across enclosures", () => {
    const one = { size: "3/0 AWG", material: "copper" } as const;
    const enclosures = [
      { id: "D1", supply: { sets: [{ count: 1, phases: [one, one, one] }] } },
      { id: "D2", supply: { sets: [{ count: 1, phases: [one, one] }] } },
    ];
    expect(() => arrange({ enclosures })).toThrow(/same number of phases/);
  });

  it("reports phases that cannot be matched within one enclosure once, at that enclosure", () => {
    const one = { size: "3/0 AWG", material: "copper" } as const;
    const sets = [
      { count: 1, phases: [one, one, one] },
      { count: 1, phases: [one, one] },
    ];
    let issues: unknown;
    try {
      arrange({ enclosures: [{ id: "D1", supply: { sets } }] });
    } catch (error) {
      if (error instanceof InputError) issues = error.issues.map(({ code, path }) => [code, path]);
    }
    expect(issues).toEqual([["unlike-phases", "enclosures[0].supply.sets"]]);
  });
});
