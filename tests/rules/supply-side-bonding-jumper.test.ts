import { type EditionYear, editionYears, sizeSupplySideBondingJumper } from "bondmil";
import { describe, expect, it } from "vitest";
import { describeJumper } from "./jumper/describe-jumper.js";
import { inEveryEdition } from "./jumper/facts.js";
import { ask, brief, cautionsOf, kinds, phases, sectionOf, sets, sizeIn, step } from "./jumper/supplies.js";

describeJumper(sizeSupplySideBondingJumper, {
  role: "supply-side-bonding-jumper",
  name: {
    ...inEveryEdition("supply-side bonding jumper"),
    "2008": "equipment bonding jumper on the supply side of the service",
  },
  rule: { ...inEveryEdition("250.102(C)(1)"), "2008": "250.102(C)" },
  oneEighth: {
    ...inEveryEdition("Table 250.102(C)(1) note 1"),
    "2008": "250.102(C)",
    "2011": "250.102(C)(1)",
  },
  otherMaterial: {
    ...inEveryEdition("Table 250.102(C)(1) note 2"),
    "2008": "250.102(C)",
    "2011": "250.102(C)(3)",
  },
  sum: {
    ...inEveryEdition("Table 250.102(C)(1) note 3"),
    "2008": "Table 250.66 note 1",
    "2011": "Table 250.66 note 1",
    "2023": "250.102(C)(2)",
    "2026": "250.102(C)(2)",
  },
  material: "250.102(A)",
  namesAluminumFrom: "2017",
  replacedAtAnySize: ["2011", "2014"],
  mayComeWithEquipment: false,
});

const copperOn250Aluminum = (year: EditionYear, alternative?: "at-any-size" | "above-threshold") => {
  const id = year === "2011" ? "supply-side-other-material-in-2011" : "supply-side-other-material-in-2014";
  return sizeSupplySideBondingJumper(
    ask(
      year,
      sets(1, "250 kcmil", "aluminum"),
      "copper",
      alternative === undefined ? {} : { readings: { [id]: alternative } },
    ),
  );
};

describe("supply-side bonding jumper of another material below the threshold", () => {
  it.each(["2011", "2014"] as const)("replaces the conductors in %s", (year) => {
    const result = copperOn250Aluminum(year);
    // 250 kcmil aluminum carries 205 A; 4/0 AWG is the smallest copper with as much.
    expect(step(result, "assumed")).toMatchObject({
      area: 211600,
      conductors: [{ installedAmperes: 205, assumed: "4/0 AWG", area: 211600 }],
    });
    expect(brief(result)).toEqual(["2 AWG", 66360, "row"]);
    expect(kinds(result)).toEqual(["sum", "assumed", "row", "standard-size"]);
    expect(cautionsOf(result)).toEqual(["assumed-conductors"]);
    expect(sectionOf(result, "assumed-conductors")).toBe(
      year === "2011" ? "250.102(C)(3)" : "Table 250.102(C)(1) note 2",
    );
    expect(result.readings).toEqual([
      {
        id: `supply-side-other-material-in-${year}`,
        chosen: "at-any-size",
        otherwise: [{ alternative: "above-threshold", requiredArea: 41740 }],
      },
    ]);
    expect(result.evidence).toBe(year === "2011" ? "single" : "carried");
  });

  it.each(["2011", "2014"] as const)("stays in the table in %s by the other reading", (year) => {
    const result = copperOn250Aluminum(year, "above-threshold");
    expect(brief(result)).toEqual(["4 AWG", 41740, "row"]);
    expect(kinds(result)).toEqual(["sum", "row", "standard-size"]);
    expect(cautionsOf(result)).toEqual([]);
    expect(result.readings).toEqual([
      {
        id: `supply-side-other-material-in-${year}`,
        chosen: "above-threshold",
        otherwise: [{ alternative: "at-any-size", requiredArea: 66360 }],
      },
    ]);
  });

  it.each(["2008", "2017", "2020", "2023", "2026"] as const)("stays in the table in %s", (year) => {
    const result = copperOn250Aluminum(year);
    expect(brief(result)).toEqual(["4 AWG", 41740, "row"]);
    expect(result.readings).toEqual([]);
  });

  // One end of each row, worked from the ampacities at 75 C.
  it.each([
    ["1/0 AWG", "aluminum", "copper", "1 AWG", "6 AWG"],
    ["3/0 AWG", "aluminum", "copper", "2/0 AWG", "4 AWG"],
    ["250 kcmil", "aluminum", "copper", "4/0 AWG", "2 AWG"],
    ["500 kcmil", "aluminum", "copper", "350 kcmil", "2 AWG"],
    ["900 kcmil", "aluminum", "copper", "700 kcmil", "2/0 AWG"],
    ["1750 kcmil", "aluminum", "copper", "1000 kcmil", "2/0 AWG"],
    ["2 AWG", "copper", "aluminum", "1/0 AWG", "6 AWG"],
    ["1/0 AWG", "copper", "aluminum", "3/0 AWG", "4 AWG"],
    ["3/0 AWG", "copper", "aluminum", "250 kcmil", "2 AWG"],
    ["350 kcmil", "copper", "aluminum", "500 kcmil", "1/0 AWG"],
    ["600 kcmil", "copper", "aluminum", "900 kcmil", "3/0 AWG"],
    ["1000 kcmil", "copper", "aluminum", "1750 kcmil", "4/0 AWG"],
  ] as const)("at any size in 2011 and 2014: %s %s with a %s jumper counts as %s", (...example) => {
    const [size, supply, jumper, assumed, answer] = example;
    for (const year of ["2011", "2014"] as const) {
      const result = sizeSupplySideBondingJumper(ask(year, sets(1, size, supply), jumper));
      expect(step(result, "assumed").conductors[0]?.assumed).toBe(assumed);
      expect(step(result, "row")).toMatchObject({ entered: jumper, read: jumper });
      expect(sizeIn(result)).toBe(answer);
    }
  });

  it("is not always the larger of the two readings", () => {
    // 3 x 300 kcmil aluminum are assumed: 900 kcmil, the end of a row; the table alone puts 634.8 kcmil copper one row further.
    const supply = sets(3, "4/0 AWG", "copper");
    for (const year of ["2011", "2014"] as const) {
      const result = sizeSupplySideBondingJumper(ask(year, supply, "aluminum"));
      expect(brief(result)).toEqual(["3/0 AWG", 167800, "row"]);
      expect(result.readings[0]?.otherwise).toEqual([
        { alternative: "above-threshold", requiredArea: 211600 },
      ]);
    }
    expect(brief(sizeSupplySideBondingJumper(ask("2017", supply, "aluminum")))).toEqual([
      "4/0 AWG",
      211600,
      "row",
    ]);
  });

  it("counts a conductor that the ampacity table leaves out as the next larger", () => {
    const result = sizeSupplySideBondingJumper(ask("2011", sets(1, "14 AWG", "aluminum"), "copper"));
    expect(step(result, "assumed").conductors).toMatchObject([
      { installedAmperes: 20, assumed: "14 AWG", area: 4110 },
    ]);
    expect(sizeIn(result)).toBe("8 AWG");
  });
});

describe("supply-side bonding jumper for sets with unlike phases", () => {
  const supply = [
    phases(["500 kcmil", "250 kcmil", "250 kcmil"], "copper"),
    phases(["250 kcmil", "500 kcmil", "250 kcmil"], "copper"),
  ];
  const twice = supply.map((set) => ({ ...set, count: 2 }));

  it.each(["2008", "2011", "2014", "2017", "2020"] as const)(
    "adds corresponding conductors in %s",
    (year) => {
      const once = sizeSupplySideBondingJumper(ask(year, supply, "copper"));
      expect(step(once, "sum")).toMatchObject({ rule: "corresponding", area: 750000 });
      expect(brief(sizeSupplySideBondingJumper(ask(year, twice, "copper")))).toEqual([
        "4/0 AWG",
        187500,
        "one-eighth",
      ]);
    },
  );

  it.each(["2023", "2026"] as const)("adds the largest of each set in %s", (year) => {
    const once = sizeSupplySideBondingJumper(ask(year, supply, "copper"));
    expect(step(once, "sum")).toMatchObject({ rule: "largest", area: 1000000 });
    expect(step(once, "sum").citation.section).toBe("250.102(C)(2)");
    expect(brief(sizeSupplySideBondingJumper(ask(year, twice, "copper")))).toEqual([
      "250 kcmil",
      250000,
      "one-eighth",
    ]);
  });
});

describe("supply-side bonding jumper of one raceway", () => {
  it.each(editionYears)(
    "may be smaller than 1/0 AWG in %s: the floor is for parallel grounded conductors",
    (year) => {
      expect(sizeIn(sizeSupplySideBondingJumper(ask(year, sets(1, "4/0 AWG", "copper"), "copper")))).toBe(
        "2 AWG",
      );
    },
  );

  it.each(editionYears)("takes both sets that share the raceway in %s", (year) => {
    expect(sizeIn(sizeSupplySideBondingJumper(ask(year, sets(2, "500 kcmil", "copper"), "copper")))).toBe(
      "2/0 AWG",
    );
  });
});
