import { editionYears, mainBondingJumper, size } from "bondmil";
import { describe, expect, it } from "vitest";
import { describeJumper } from "./jumper/describe-jumper.js";
import { inEveryEdition } from "./jumper/facts.js";
import { ask, brief, cautionsOf, phases, sets, step } from "./jumper/supplies.js";

describeJumper(mainBondingJumper, {
  role: "main-bonding-jumper",
  name: inEveryEdition("main bonding jumper"),
  rule: inEveryEdition("250.28(D)(1)"),
  oneEighth: {
    ...inEveryEdition("Table 250.102(C)(1) note 1"),
    "2008": "250.28(D)(1)",
    "2011": "250.28(D)(1)",
  },
  otherMaterial: {
    ...inEveryEdition("Table 250.102(C)(1) note 2"),
    "2008": "250.28(D)(1)",
    "2011": "250.28(D)(1)",
  },
  sum: {
    ...inEveryEdition("Table 250.102(C)(1)"),
    "2008": "Table 250.66",
    "2011": "Table 250.66",
    "2023": "250.28(D)(1)",
    "2026": "250.28(D)(1)",
  },
  material: "250.28(A)",
  namesAluminumFrom: "2020",
  replacedAtAnySize: [],
  mayComeWithEquipment: true,
});

describe("main bonding jumper", () => {
  it("lays the whole way open: 3 x 600 kcmil copper in 2023", () => {
    const supply = sets(3, "600 kcmil", "copper");
    expect(size(mainBondingJumper, ask("2023", supply, "copper"))).toEqual({
      role: "main-bonding-jumper",
      purpose: "fault-path",
      edition: "2023",
      name: "main bonding jumper",
      material: "copper",
      form: "wire",
      outcome: { kind: "conductor", size: "250 kcmil", quantity: 1 },
      requiredArea: 225000,
      governs: "one-eighth",
      steps: [
        {
          kind: "sum",
          rule: "corresponding",
          supply: { sets: [supply] },
          column: "copper",
          area: 1800000,
          citation: { section: "250.28(D)(1)", evidence: "single" },
        },
        {
          kind: "one-eighth",
          entered: "copper",
          area: 1800000,
          threshold: 1100000,
          requiredArea: 225000,
          citation: { section: "Table 250.102(C)(1) note 1", evidence: "single" },
        },
        {
          kind: "standard-size",
          requiredArea: 225000,
          size: "250 kcmil",
          area: 250000,
          citation: { section: "Chapter 9 Table 8", evidence: "bracketed" },
        },
      ],
      citation: { section: "250.28(D)(1)", evidence: "single" },
      readings: [],
      evidence: "bracketed",
      cautions: [{ code: "listed-equipment", section: null }],
    });
  });

  it("lays the whole way open: 1 x 2000 kcmil aluminum, copper bus, in 2011", () => {
    const supply = sets(1, "2000 kcmil", "aluminum");
    const result = size(mainBondingJumper, ask("2011", supply, { material: "copper", form: "bus" }));
    const table = { section: "Table 250.66", evidence: "single" };
    const body = { section: "250.28(D)(1)", evidence: "single" };
    expect(result.steps).toEqual([
      {
        kind: "sum",
        rule: "corresponding",
        supply: { sets: [supply] },
        column: "aluminum",
        area: 2000000,
        citation: { section: "Table 250.66", evidence: "single" },
      },
      {
        kind: "assumed",
        temperature: 75,
        conductors: [
          {
            installed: { size: "2000 kcmil", material: "aluminum" },
            installedAmperes: 560,
            assumed: "1250 kcmil",
            area: 1250000,
            citation: { section: "Table 310.15(B)(16)", evidence: "single" },
          },
        ],
        area: 1250000,
        citation: body,
      },
      {
        kind: "one-eighth",
        entered: "copper",
        area: 1250000,
        threshold: 1100000,
        requiredArea: 156250,
        citation: body,
      },
      { kind: "floor", why: "last-row", size: "3/0 AWG", requiredArea: 167800, citation: table },
    ]);
    expect(result.outcome).toEqual({ kind: "area-only", requiredArea: 167800, why: "bus" });
    expect(result.governs).toBe("floor");
    expect(result.evidence).toBe("single");
  });

  it.each(editionYears)("adds corresponding conductors in %s", (year) => {
    const supply = [
      phases(["500 kcmil", "250 kcmil", "250 kcmil"], "copper"),
      phases(["250 kcmil", "500 kcmil", "250 kcmil"], "copper"),
    ];
    const once = size(mainBondingJumper, ask(year, supply, "copper"));
    expect(step(once, "sum")).toMatchObject({ rule: "corresponding", area: 750000 });
    expect(brief(once)).toEqual(["2/0 AWG", 133100, "row"]);
    const twice = size(
      mainBondingJumper,
      ask(
        year,
        supply.map((set) => ({ ...set, count: 2 })),
        "copper",
      ),
    );
    expect(brief(twice)).toEqual(["4/0 AWG", 187500, "one-eighth"]);
  });

  it("lets a phase be left out", () => {
    const supply = [
      phases(["500 kcmil", null, "500 kcmil"], "copper"),
      phases([null, "500 kcmil", "250 kcmil"], "copper"),
    ];
    expect(step(size(mainBondingJumper, ask("2017", supply, "copper")), "sum").area).toBe(750000);
  });

  it("puts a uniform set into every phase of the sets beside it", () => {
    const supply = [phases(["250 kcmil", "500 kcmil"], "copper"), sets(1, "300 kcmil", "copper")];
    expect(step(size(mainBondingJumper, ask("2017", supply, "copper")), "sum").area).toBe(800000);
  });

  it("takes the largest assumed phase, which need not be the largest installed one", () => {
    // 2 x 500 kcmil aluminum in one phase, 700 kcmil as copper; 7 x 1/0 AWG copper in the other, 739.2 kcmil.
    const supply = [
      { count: 2, phases: [{ size: "500 kcmil", material: "aluminum" }, null] },
      { count: 7, phases: [null, { size: "1/0 AWG", material: "copper" }] },
    ] as const;
    const result = size(mainBondingJumper, ask("2017", supply, "copper"));
    expect(step(result, "sum").area).toBe(1000000);
    expect(step(result, "assumed").area).toBe(739200);
  });

  it("does not move from edition to edition for a copper wire on a large copper supply", () => {
    const sizes = editionYears.map((year) =>
      brief(size(mainBondingJumper, ask(year, sets(2, "750 kcmil", "copper"), "copper"))),
    );
    expect(new Set(sizes.map(([size]) => size))).toEqual(new Set(["4/0 AWG"]));
  });

  it("keeps the table below the threshold for another material in 2011 and 2014", () => {
    for (const year of ["2011", "2014"] as const) {
      const result = size(mainBondingJumper, ask(year, sets(1, "250 kcmil", "aluminum"), "copper"));
      expect(brief(result)).toEqual(["4 AWG", 41740, "row"]);
      expect(cautionsOf(result)).toEqual(["listed-equipment"]);
      expect(result.readings).toEqual([]);
    }
  });
});
