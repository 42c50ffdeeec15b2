import {
  type EditionYear,
  editionYears,
  explain,
  type Input,
  InputError,
  type Material,
  type SizingResult,
  type Supply,
  size,
  waterPipingBondingJumper,
} from "bondmil";
import { describe, expect, it } from "vitest";
import { inEveryEdition } from "./jumper/facts.js";
import { brief, cautionsOf, kinds, phases, sectionOf, sets, sizeIn, step } from "./jumper/supplies.js";

const of = (...all: Supply["sets"]): Supply => ({ sets: all });
const atSystem = (
  year: EditionYear,
  supply: Supply,
  material: Material = "copper",
  system: "service" | "separately-derived" = "service",
  readings: object = {},
): SizingResult =>
  size(waterPipingBondingJumper, { code: { year, readings }, system, supply, conductor: { material } });
const atBuilding = (
  year: EditionYear,
  supply: Supply,
  deviceAmperes?: number,
  material: Material = "copper",
): SizingResult =>
  size(waterPipingBondingJumper, {
    code: { year },
    system: "building",
    supply,
    ...(deviceAmperes === undefined ? {} : { deviceAmperes }),
    conductor: { material },
  });

const byElectrodeTable: readonly EditionYear[] = ["2008", "2011", "2014"];
const withLargestSize: readonly EditionYear[] = ["2020", "2023", "2026"];
const large = of(sets(6, "500 kcmil", "copper"));
const evidence = {
  ...inEveryEdition("bracketed"),
  "2008": "carried",
  "2011": "single",
  "2014": "carried",
  "2017": "single",
  "2026": "carried",
};

describe.each(["service", "separately-derived"] as const)("water piping at a %s", (system) => {
  const section = system === "service" ? "250.104(A)(1)" : "250.104(D)(1)";

  it.each(editionYears)("goes by the rows up to the last in %s", (year) => {
    for (const [size, answer] of [
      ["2 AWG", "8 AWG"],
      ["1/0 AWG", "6 AWG"],
      ["3/0 AWG", "4 AWG"],
      ["4/0 AWG", "2 AWG"],
      ["350 kcmil", "2 AWG"],
      ["600 kcmil", "1/0 AWG"],
    ] as const)
      expect(sizeIn(atSystem(year, of(sets(1, size, "copper")), "copper", system))).toBe(answer);
    expect(sizeIn(atSystem(year, of(sets(2, "500 kcmil", "copper")), "copper", system))).toBe("2/0 AWG");
  });

  it.each(byElectrodeTable)("ends with the last row of Table 250.66 in %s", (year) => {
    const result = atSystem(year, large, "copper", system);
    expect(brief(result)).toEqual(["3/0 AWG", 167800, "row"]);
    expect(step(result, "row")).toMatchObject({ through: null, citation: { section: "Table 250.66" } });
    expect(brief(atSystem(year, of(sets(9, "500 kcmil", "aluminum")), "aluminum", system))).toEqual([
      "250 kcmil",
      250000,
      "row",
    ]);
    expect(kinds(result)).toEqual(["sum", "row", "standard-size"]);
  });

  it("has no end in 2017", () => {
    const result = atSystem("2017", large, "copper", system);
    expect(brief(result)).toEqual(["400 kcmil", 375000, "one-eighth"]);
    expect(step(result, "one-eighth").citation.section).toBe("Table 250.102(C)(1) note 1");
  });

  it.each(withLargestSize)("rises to no more than 3/0 AWG or 250 kcmil in %s", (year) => {
    const result = atSystem(year, large, "copper", system);
    expect(brief(result)).toEqual(["3/0 AWG", 167800, "cap"]);
    expect(step(result, "one-eighth").requiredArea).toBe(375000);
    expect(step(result, "cap")).toMatchObject({ why: "largest-size", citation: { section } });
    expect(explain(result)).toContain("Not required above the largest size that the section names");
    expect(cautionsOf(result)).toEqual([]);
    for (const material of ["aluminum", "copper-clad aluminum"] as const) {
      expect(brief(atSystem(year, of(sets(9, "500 kcmil", "aluminum")), material, system))).toEqual([
        "250 kcmil",
        250000,
        "cap",
      ]);
    }
  });

  it.each(withLargestSize)("leaves 12.5 percent below the largest size alone in %s", (year) => {
    // 2 x 600 kcmil: 12.5 percent is 150 kcmil, below 3/0 AWG.
    const result = atSystem(year, of(sets(2, "600 kcmil", "copper")), "copper", system);
    expect(brief(result)).toEqual(["3/0 AWG", 150000, "one-eighth"]);
    expect(kinds(result)).not.toContain("cap");
  });

  it.each(editionYears)("cites its rule and its weakest evidence in %s", (year) => {
    const result = atSystem(year, of(sets(1, "3/0 AWG", "copper")), "copper", system);
    expect(result).toMatchObject({
      role: "water-piping-bonding-jumper",
      purpose: "equalizing",
      edition: year,
      citation: { section },
      evidence: evidence[year],
      readings: [],
      cautions: [],
    });
  });

  it.each(editionYears)("enters the supply's column and reads the jumper's in %s", (year) => {
    const result = atSystem(year, of(sets(1, "600 kcmil", "aluminum")), "copper", system);
    expect(brief(result)).toEqual(["1/0 AWG", 105600, "row"]);
    expect(step(result, "row")).toMatchObject({ entered: "aluminum", read: "copper" });
  });

  it("replaces conductors of another material above the threshold only where the bonding table is entered", () => {
    const supply = of(sets(4, "600 kcmil", "aluminum"));
    for (const year of editionYears) {
      const result = atSystem(year, supply, "copper", system);
      expect(kinds(result).includes("assumed")).toBe(!byElectrodeTable.includes(year));
    }
    expect(brief(atSystem("2017", supply, "copper", system))).toEqual(["250 kcmil", 250000, "one-eighth"]);
    expect(brief(atSystem("2014", supply, "copper", system))).toEqual(["3/0 AWG", 167800, "row"]);
  });

  it("adds corresponding conductors, not each set's largest", () => {
    const supply = of(
      phases(["500 kcmil", "250 kcmil", "250 kcmil"], "copper"),
      phases(["250 kcmil", "500 kcmil", "250 kcmil"], "copper"),
    );
    for (const year of editionYears) {
      expect(step(atSystem(year, supply, "copper", system), "sum")).toMatchObject({
        rule: "corresponding",
        area: 750000,
      });
    }
  });

  it.each(["2017", ...withLargestSize] as const)(
    "keeps the cap of other jumpers as a reading in %s",
    (year) => {
      const supply = of(sets(1, "10 AWG", "copper"));
      const plain = atSystem(year, supply, "copper", system);
      expect(brief(plain)).toEqual(["8 AWG", 16510, "row"]);
      expect(plain.readings).toEqual([
        {
          id: "cap-on-piping-jumpers",
          chosen: "no-cap",
          otherwise: [{ alternative: "as-for-other-jumpers", requiredArea: 10380 }],
        },
      ]);
      const readings = { "cap-on-piping-jumpers": "as-for-other-jumpers" };
      const capped = atSystem(year, supply, "copper", system, readings);
      expect(brief(capped)).toEqual(["10 AWG", 10380, "cap"]);
      expect(step(capped, "cap")).toMatchObject({
        why: "ungrounded-conductors",
        citation: { section: "Table 250.102(C)(1) note 1" },
      });
      expect(sectionOf(capped, "cap-applied")).toBe("Table 250.102(C)(1) note 1");
    },
  );

  it.each(byElectrodeTable)("has no such reading in %s", (year) => {
    const readings = { "cap-on-piping-jumpers": "as-for-other-jumpers" };
    const result = atSystem(year, of(sets(1, "10 AWG", "copper")), "copper", system, readings);
    expect(brief(result)).toEqual(["8 AWG", 16510, "row"]);
    expect(result.readings).toEqual([]);
  });
});

describe("water piping that is the electrode of a separately derived system", () => {
  it.each(editionYears)("needs no further jumper in %s", (year) => {
    const result = size(waterPipingBondingJumper, {
      code: { year },
      system: "separately-derived",
      supply: large,
      conductor: { material: "copper" },
      isElectrode: true,
    });
    expect(result.outcome).toMatchObject({
      kind: "not-required",
      why: "part-is-the-electrode",
      citation: { section: "250.104(D)(1)" },
    });
    expect(result).toMatchObject({ requiredArea: 0, governs: null, steps: [] });
  });

  it("needs one if it is not", () => {
    const input = {
      code: { year: "2020" },
      system: "separately-derived",
      supply: large,
      conductor: { material: "copper" },
      isElectrode: false,
    } as const;
    expect(sizeIn(size(waterPipingBondingJumper, input))).toBe("3/0 AWG");
  });
});

describe("water piping of a building on a feeder", () => {
  const feeder = of(sets(2, "350 kcmil", "copper"));

  it.each(["2008", "2011", "2014", "2017"] as const)(
    "goes by the conductors in %s, whatever the device",
    (year) => {
      for (const amperes of [undefined, 600, 6000]) {
        const result = atBuilding(year, feeder, amperes);
        expect(brief(result)).toEqual(["2/0 AWG", 133100, "row"]);
        expect(result.citation.section).toBe("250.104(A)(3)");
        expect(cautionsOf(result)).toEqual([]);
      }
    },
  );

  it.each(withLargestSize)("goes by the device in %s", (year) => {
    const result = atBuilding(year, feeder, 600);
    expect(brief(result)).toEqual(["1 AWG", 83690, "rating-row"]);
    expect(kinds(result)).toEqual(["rating-row", "standard-size"]);
    expect(result.citation.section).toBe("250.104(A)(3)");
    expect(step(result, "rating-row").citation.section).toBe("Table 250.122");
    expect(cautionsOf(result)).toEqual([]);
  });

  it.each(withLargestSize)("goes by the conductors without a device in %s, and says so", (year) => {
    const result = atBuilding(year, feeder);
    expect(brief(result)).toEqual(["2/0 AWG", 133100, "row"]);
    expect(cautionsOf(result)).toEqual(["no-device-sized-by-conductors"]);
    expect(sectionOf(result, "no-device-sized-by-conductors")).toBe("250.104(A)(3)");
  });

  it.each(["2017", ...withLargestSize] as const)(
    "is limited to one feeder conductor, not to the set, in %s",
    (year) => {
      const supply = of(sets(20, "250 kcmil", "copper"));
      // 12.5 percent of 5000 kcmil is 625 kcmil.
      expect(brief(atBuilding(year, supply))).toEqual(["250 kcmil", 250000, "cap"]);
      expect(step(atBuilding(year, supply), "cap").citation.section).toBe("250.104(A)(3)");
    },
  );

  it.each(byElectrodeTable)("is limited to one feeder conductor in %s", (year) => {
    expect(brief(atBuilding(year, of(sets(1, "10 AWG", "copper"))))).toEqual(["10 AWG", 10380, "cap"]);
    // The last row, 3/0 AWG, against parallel 2/0 AWG.
    expect(brief(atBuilding(year, of(sets(12, "2/0 AWG", "copper"))))).toEqual(["2/0 AWG", 133100, "cap"]);
  });

  it.each(withLargestSize)("is limited to one feeder conductor by the device in %s", (year) => {
    const result = atBuilding(year, of(sets(12, "3/0 AWG", "copper")), 2500);
    expect(brief(result)).toEqual(["3/0 AWG", 167800, "cap"]);
    expect(kinds(result)).toEqual(["rating-row", "cap", "standard-size"]);
    expect(cautionsOf(result)).toEqual(["limited-to-circuit-conductors"]);
    expect(sectionOf(result, "limited-to-circuit-conductors")).toBe("250.104(A)(3)");
  });

  it("takes the largest conductor of unlike ones", () => {
    const supply = of(phases(["2/0 AWG", "1/0 AWG", "1/0 AWG"], "copper"));
    expect(brief(atBuilding("2020", supply, 1600))).toEqual(["2/0 AWG", 133100, "cap"]);
  });

  it("is not limited across materials, and says so", () => {
    const result = atBuilding("2023", of(sets(1, "12 AWG", "aluminum")), 100);
    expect(brief(result)).toEqual(["8 AWG", 16510, "rating-row"]);
    expect(cautionsOf(result)).toEqual(["no-cap-across-materials"]);
    const mixed = of(sets(1, "12 AWG", "aluminum"), sets(1, "12 AWG", "copper"));
    expect(cautionsOf(atBuilding("2023", mixed, 100))).toEqual([
      "no-cap-across-materials",
      "parallel-below-1-0",
    ]);
    expect(cautionsOf(atBuilding("2023", of(sets(1, "1/0 AWG", "aluminum")), 100))).toEqual([]);
  });

  it("has no reading of the table's cap: its own sentence limits it", () => {
    for (const year of editionYears)
      expect(atBuilding(year, of(sets(1, "10 AWG", "copper"))).readings).toEqual([]);
  });

  it("knows a size of the table that is not standard", () => {
    const result = atBuilding("2020", of(sets(10, "2000 kcmil", "aluminum")), 5000, "aluminum");
    expect(sizeIn(result)).toBe("1250 kcmil");
    expect(cautionsOf(result)).toEqual([]);
  });

  it("says when no conductors are chosen yet", () => {
    const supply = { ...feeder, requiredForAmperes: 600 };
    expect(cautionsOf(atBuilding("2023", supply, 600))).toEqual(["conductors-required-for-load"]);
    expect(cautionsOf(atBuilding("2017", supply))).toEqual(["conductors-required-for-load"]);
  });
});

describe("water piping of one occupancy", () => {
  const occupancy = (year: EditionYear, deviceAmperes: number, material: Material = "copper"): SizingResult =>
    size(waterPipingBondingJumper, {
      code: { year },
      system: "occupancy",
      deviceAmperes,
      conductor: { material },
    });

  it.each(editionYears)("goes by the device in %s", (year) => {
    expect(brief(occupancy(year, 100))).toEqual(["8 AWG", 16510, "rating-row"]);
    expect(brief(occupancy(year, 125))).toEqual(["6 AWG", 26240, "rating-row"]);
    expect(occupancy(year, 125).citation.section).toBe("250.104(A)(2)");
    expect(sizeIn(occupancy(year, 125, "aluminum"))).toBe("4 AWG");
  });

  it("takes the next standard size where the table has one that is not", () => {
    const result = occupancy("2017", 5000, "aluminum");
    expect(step(result, "rating-row").size).toBe("1200 kcmil");
    expect(sizeIn(result)).toBe("1250 kcmil");
    expect(cautionsOf(result)).toEqual(["table-size-not-standard"]);
    expect(sectionOf(result, "table-size-not-standard")).toBe("Table 250.122");
  });
});

describe("a bad input", () => {
  const issues = (input: unknown): readonly string[] => {
    try {
      size(waterPipingBondingJumper, input as Input<typeof waterPipingBondingJumper>);
    } catch (error) {
      if (error instanceof InputError) return error.issues.map(({ code, path }) => `${code} ${path}`);
    }
    return [];
  };
  const code = { year: "2023" };
  const conductor = { material: "copper" };

  it("is refused with everything that is wrong", () => {
    expect(issues({})).toEqual(["missing system", "missing code", "missing conductor"]);
    expect(issues({ system: "ship", code, conductor })).toEqual(["unknown-value system"]);
    expect(issues({ system: "service", code: { year: "2024" }, conductor: { material: "tin" } })).toEqual([
      "unknown-value code.year",
      "missing supply",
      "unknown-value conductor.material",
    ]);
    expect(issues({ system: "occupancy", code, conductor, supply: large })).toEqual([
      "unknown-key supply",
      "missing deviceAmperes",
    ]);
    expect(issues({ system: "building", code, conductor, supply: large, deviceAmperes: 6001 })).toEqual([
      "out-of-range deviceAmperes",
    ]);
    expect(issues({ system: "building", code, conductor, supply: large, deviceAmperes: 0 })).toEqual([
      "not-positive deviceAmperes",
    ]);
    expect(
      issues({ system: "separately-derived", code, conductor, supply: large, isElectrode: "yes" }),
    ).toEqual(["wrong-type isElectrode"]);
  });

  it("is one that asks at a place for what another place has", () => {
    expect(issues({ system: "service", code, conductor, supply: large, isElectrode: true })).toEqual([
      "unknown-key isElectrode",
    ]);
    expect(issues({ system: "service", code, conductor, supply: large, deviceAmperes: 400 })).toEqual([
      "unknown-key deviceAmperes",
    ]);
  });
});
