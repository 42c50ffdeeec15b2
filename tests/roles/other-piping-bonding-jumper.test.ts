import {
  type EditionYear,
  editionYears,
  equipmentGroundingConductor,
  type Input,
  InputError,
  type Material,
  otherPipingBondingJumper,
  type SizingResult,
  size,
} from "bondmil";
import { describe, expect, it } from "vitest";
import { brief, cautionsOf, kinds, sectionOf, sizeIn, step } from "./jumper/supplies.js";

const sized = (year: EditionYear, deviceAmperes: number, material: Material = "copper"): SizingResult =>
  size(otherPipingBondingJumper, { code: { year }, deviceAmperes, conductor: { material } });

describe.each(editionYears)("other metal piping in %s", (year) => {
  it("goes by the circuit that is likely to energize it", () => {
    expect(brief(sized(year, 15))).toEqual(["14 AWG", 4110, "rating-row"]);
    expect(brief(sized(year, 20))).toEqual(["12 AWG", 6530, "rating-row"]);
    expect(brief(sized(year, 21))).toEqual(["10 AWG", 10380, "rating-row"]);
    expect(brief(sized(year, 60))).toEqual(["10 AWG", 10380, "rating-row"]);
    expect(brief(sized(year, 61))).toEqual(["8 AWG", 16510, "rating-row"]);
    expect(brief(sized(year, 200))).toEqual(["6 AWG", 26240, "rating-row"]);
    expect(sizeIn(sized(year, 200, "aluminum"))).toBe("4 AWG");
    expect(sizeIn(sized(year, 15, "copper-clad aluminum"))).toBe("12 AWG");
  });

  it("is as large as the equipment grounding conductor of that circuit", () => {
    for (const amperes of [15, 100, 399.5, 6000]) {
      for (const material of ["copper", "aluminum"] as const) {
        const grounding = size(equipmentGroundingConductor, {
          code: { year },
          circuits: [{ device: { amperes } }],
          conductor: { material },
        });
        const jumper = sized(year, amperes, material);
        expect([jumper.requiredArea, jumper.outcome]).toEqual([grounding.requiredArea, grounding.outcome]);
      }
    }
  });

  it("says that this conductor may serve in its place", () => {
    const result = sized(year, 20);
    expect(cautionsOf(result)).toEqual(["equipment-grounding-conductor-may-serve"]);
    expect(sectionOf(result, "equipment-grounding-conductor-may-serve")).toBe("250.104(B)");
  });

  it("has its role, purpose, rule and steps", () => {
    const result = sized(year, 20);
    expect(result).toMatchObject({
      role: "other-piping-bonding-jumper",
      purpose: "equalizing",
      edition: year,
      citation: { section: "250.104(B)" },
      readings: [],
    });
    expect(kinds(result)).toEqual(["rating-row", "standard-size"]);
    expect(step(result, "rating-row")).toMatchObject({
      amperes: 20,
      through: 20,
      citation: { section: "Table 250.122" },
    });
  });
});

describe("other metal piping", () => {
  it("takes the next standard size where the table has one that is not", () => {
    const result = sized("2017", 6000, "aluminum");
    expect(step(result, "rating-row").size).toBe("1200 kcmil");
    expect(sizeIn(result)).toBe("1250 kcmil");
    expect(cautionsOf(result)).toEqual([
      "equipment-grounding-conductor-may-serve",
      "table-size-not-standard",
    ]);
    expect(cautionsOf(sized("2020", 6000, "aluminum"))).not.toContain("table-size-not-standard");
  });

  it("is weak evidence where the table is", () => {
    expect(editionYears.map((year) => sized(year, 20).evidence)).toEqual([
      "carried",
      "single",
      "bracketed",
      "single",
      "bracketed",
      "bracketed",
      "carried",
    ]);
    expect(sized("2008", 4000, "aluminum").evidence).toBe("memory");
  });

  it("is refused with everything that is wrong", () => {
    const issues = (input: unknown): readonly string[] => {
      try {
        size(otherPipingBondingJumper, input as Input<typeof otherPipingBondingJumper>);
      } catch (error) {
        if (error instanceof InputError) return error.issues.map(({ code, path }) => `${code} ${path}`);
      }
      return [];
    };
    expect(issues({})).toEqual(["missing code", "missing deviceAmperes", "missing conductor"]);
    expect(
      issues({ code: { year: "2023" }, deviceAmperes: 7000, conductor: { material: "steel" }, supply: {} }),
    ).toEqual(["unknown-key supply", "unknown-value conductor.material", "out-of-range deviceAmperes"]);
    expect(
      issues({ code: { year: "2023" }, deviceAmperes: "20", conductor: { material: "copper" } }),
    ).toEqual(["wrong-type deviceAmperes"]);
  });
});
