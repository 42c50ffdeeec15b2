import {
  type EditionYear,
  editionYears,
  mainBondingJumper,
  type StandardSize,
  type Supply,
  size,
  standardSizes,
  systemBondingJumper,
} from "bondmil";
import { describe, expect, it } from "vitest";
import { describeJumper } from "./jumper/describe-jumper.js";
import { inEveryEdition } from "./jumper/facts.js";
import { ask, brief, phases, sets, sizeIn, step } from "./jumper/supplies.js";

describeJumper(systemBondingJumper, {
  role: "system-bonding-jumper",
  name: inEveryEdition("system bonding jumper"),
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

describe("system bonding jumper", () => {
  it.each(editionYears)("adds corresponding conductors of all feeders in %s", (year) => {
    const feeders = [
      phases(["500 kcmil", "250 kcmil", "250 kcmil"], "copper"),
      phases(["250 kcmil", "500 kcmil", "250 kcmil"], "copper"),
    ];
    const once = size(systemBondingJumper, ask(year, feeders, "copper"));
    expect(step(once, "sum")).toMatchObject({ rule: "corresponding", area: 750000 });
    const twice = size(
      systemBondingJumper,
      ask(
        year,
        feeders.map((set) => ({ ...set, count: 2 })),
        "copper",
      ),
    );
    expect(brief(twice)).toEqual(["4/0 AWG", 187500, "one-eighth"]);
  });

  it("sizes one jumper at the source from feeders of different sizes", () => {
    const feeders = [
      sets(1, "500 kcmil", "copper"),
      sets(2, "3/0 AWG", "copper"),
      sets(1, "350 kcmil", "copper"),
    ];
    // 500,000 + 2 x 167,800 + 350,000 = 1,185,600; 12.5 percent is 148,200.
    expect(brief(size(systemBondingJumper, ask("2020", feeders, "copper")))).toEqual([
      "3/0 AWG",
      148200,
      "one-eighth",
    ]);
  });

  it("rounds half a circular mil up", () => {
    // 6 x 211,600 = 1,269,600 = 8 x 158,700 exactly; with 2 AWG 1,335,960 = 8 x 166,995; with 1 AWG 1,353,290 / 8 = 169,161.25.
    const requiredFor = (extra: "2 AWG" | "1 AWG") =>
      size(
        systemBondingJumper,
        ask("2017", [sets(6, "4/0 AWG", "copper"), sets(1, extra, "copper")], "copper"),
      ).requiredArea;
    expect(requiredFor("2 AWG")).toBe(166995);
    expect(requiredFor("1 AWG")).toBe(169162);
  });

  it("is sized like a main bonding jumper in every edition", () => {
    for (const year of editionYears) {
      for (const installed of standardSizes) {
        for (const jumper of ["copper", "aluminum"] as const) {
          const input = ask(year, sets(3, installed, "aluminum"), jumper);
          const { role: _, name: __, ...system } = size(systemBondingJumper, input);
          const { role: ___, name: ____, ...main } = size(mainBondingJumper, input);
          expect(system).toEqual(main);
        }
      }
    }
  });

  it("has no threshold of its own for copper: aluminum of 1750 kcmil stays in the table", () => {
    expect(sizeIn(size(systemBondingJumper, ask("2017", sets(1, "1750 kcmil", "aluminum"), "copper")))).toBe(
      "2/0 AWG",
    );
    expect(
      sizeIn(size(systemBondingJumper, ask("2017", sets(1, "1750 kcmil", "aluminum"), "aluminum"))),
    ).toBe("4/0 AWG");
  });
});

describe("a small control transformer", () => {
  const jumper = (
    derived: StandardSize,
    material: "copper" | "aluminum",
    year: EditionYear,
    supply: Partial<Supply> = {},
  ) =>
    size(systemBondingJumper, {
      code: { year },
      supply: { sets: [{ count: 1, size: derived, material: "copper" }], ...supply },
      conductor: { material },
      controlTransformer: true,
    });
  const cautionsOf = (...asked: Parameters<typeof jumper>) =>
    jumper(...asked).cautions.map(({ code }) => code);

  it("requires the derived conductors' size, not below 14 AWG copper or, from 2017, 12 AWG aluminum", () => {
    expect(jumper("12 AWG", "copper", "2017")).toMatchObject({ requiredArea: 6530, governs: "named-size" });
    expect(jumper("18 AWG", "copper", "2017")).toMatchObject({ requiredArea: 4110, governs: "floor" });
    expect(jumper("18 AWG", "aluminum", "2017").requiredArea).toBe(6530);
  });

  it("has an aluminum floor also before 2017 names one: what carries as much as 14 AWG copper", () => {
    for (const year of ["2008", "2011", "2014"] as const)
      expect(jumper("18 AWG", "aluminum", year)).toMatchObject({ requiredArea: 6530, evidence: "memory" });
    expect(cautionsOf("18 AWG", "aluminum", "2011")).toEqual(["material-not-named", "listed-equipment"]);
    expect(jumper("18 AWG", "copper", "2011").evidence).toBe("single");
  });

  it("says that a section compares sizes alone, that conductors are few, or only required for a load", () => {
    expect(cautionsOf("10 AWG", "aluminum", "2020")).toEqual(["same-size-in-aluminum", "listed-equipment"]);
    expect(cautionsOf("18 AWG", "aluminum", "2020")).toEqual(["listed-equipment"]);
    expect(cautionsOf("10 AWG", "copper", "2020", { requiredForAmperes: 30 })).toEqual([
      "conductors-required-for-load",
      "listed-equipment",
    ]);
    const two = { sets: [{ count: 2, size: "12 AWG", material: "aluminum" }] } as const;
    expect(cautionsOf("12 AWG", "aluminum", "2020", two)).toEqual(["parallel-below-1-0", "listed-equipment"]);
  });

  it("has no conductors for more than 100 A", () => {
    expect(jumper("1 AWG", "copper", "2023").outcome).toMatchObject({ size: "1 AWG" });
    const refused = [
      () => jumper("1/0 AWG", "copper", "2023"),
      () => jumper("1 AWG", "copper", "2023", { sets: [{ count: 2, size: "3 AWG", material: "copper" }] }),
      () =>
        jumper("1 AWG", "copper", "2023", { sets: [{ count: 1, size: "2/0 AWG", material: "aluminum" }] }),
    ];
    for (const ask of refused) expect(ask).toThrow("controlTransformer: expected no control transformer");
  });
});
