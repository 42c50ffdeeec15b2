import {
  type EditionYear,
  editionYears,
  type Input,
  InputError,
  type Material,
  type SizingResult,
  type Supply,
  size,
  structuralMetalBondingJumper,
  waterPipingBondingJumper,
} from "bondmil";
import { describe, expect, it } from "vitest";
import { brief, cautionsOf, kinds, sets, sizeIn, step } from "./jumper/supplies.js";

const owners = ["service", "building", "separately-derived"] as const;
const of = (...all: Supply["sets"]): Supply => ({ sets: all });
const sized = (
  year: EditionYear,
  owner: Input<typeof structuralMetalBondingJumper>["system"],
  supply: Supply,
  material: Material = "copper",
  more: Partial<Input<typeof structuralMetalBondingJumper>> = {},
): SizingResult =>
  size(structuralMetalBondingJumper, {
    code: { year },
    system: owner,
    supply,
    conductor: { material },
    ...more,
  });
const large = of(sets(6, "500 kcmil", "copper"));

describe.each(owners)("structural metal of a %s", (owner) => {
  const section = owner === "separately-derived" ? "250.104(D)(2)" : "250.104(C)";

  it.each(["2008", "2011", "2014"] as const)("ends with the table's last row in %s", (year) => {
    expect(brief(sized(year, owner, large))).toEqual(["3/0 AWG", 167800, "row"]);
    expect(brief(sized(year, owner, of(sets(9, "500 kcmil", "aluminum")), "aluminum"))).toEqual([
      "250 kcmil",
      250000,
      "row",
    ]);
  });

  it("has no end in 2017", () => {
    expect(brief(sized("2017", owner, large))).toEqual(["400 kcmil", 375000, "one-eighth"]);
  });

  it.each(["2020", "2023", "2026"] as const)("rises to no more than 3/0 AWG or 250 kcmil in %s", (year) => {
    const result = sized(year, owner, large);
    expect(brief(result)).toEqual(["3/0 AWG", 167800, "cap"]);
    expect(kinds(result)).toEqual(["sum", "one-eighth", "cap", "standard-size"]);
    expect(cautionsOf(result)).toEqual([]);
    expect(step(result, "cap")).toMatchObject({ why: "largest-size", citation: { section } });
    expect(brief(sized(year, owner, of(sets(9, "500 kcmil", "aluminum")), "aluminum"))).toEqual([
      "250 kcmil",
      250000,
      "cap",
    ]);
  });

  it.each(editionYears)("goes by the row in %s and cites its rule", (year) => {
    const result = sized(year, owner, of(sets(1, "3/0 AWG", "copper")));
    expect(brief(result)).toEqual(["4 AWG", 41740, "row"]);
    expect(result).toMatchObject({
      role: "structural-metal-bonding-jumper",
      purpose: "equalizing",
      citation: { section },
      readings: [],
      cautions: [],
    });
  });

  it.each(editionYears)("is sized as water piping in %s", (year) => {
    if (owner === "building") return;
    for (const supply of [large, of(sets(1, "10 AWG", "copper")), of(sets(5, "600 kcmil", "aluminum"))]) {
      const water = size(waterPipingBondingJumper, {
        code: { year },
        system: owner,
        supply,
        conductor: { material: "copper" },
      });
      expect(brief(sized(year, owner, supply))).toEqual(brief(water));
    }
  });

  it.each(["2017", "2020", "2023", "2026"] as const)(
    "keeps the cap of other jumpers as a reading in %s",
    (year) => {
      const small = of(sets(1, "10 AWG", "copper"));
      expect(sized(year, owner, small).readings).toEqual([
        {
          id: "cap-on-piping-jumpers",
          chosen: "no-cap",
          otherwise: [{ alternative: "as-for-other-jumpers", requiredArea: 10380 }],
        },
      ]);
      const code = { year, readings: { "cap-on-piping-jumpers": "as-for-other-jumpers" } } as const;
      expect(brief(sized(year, owner, small, "copper", { code }))).toEqual(["10 AWG", 10380, "cap"]);
    },
  );

  it.each(editionYears)("needs no jumper where the frame is the electrode in %s", (year) => {
    const result = sized(year, owner, large, "copper", { isElectrode: true });
    expect(result.outcome).toMatchObject({
      kind: "not-required",
      why: "part-is-the-electrode",
      citation: { section },
    });
    expect(
      sizeIn(sized(year, owner, of(sets(1, "3/0 AWG", "copper")), "copper", { isElectrode: false })),
    ).toBe("4 AWG");
  });
});

describe("structural metal", () => {
  it("is weak evidence where only an older edition was quoted", () => {
    const levels = (owner: Input<typeof structuralMetalBondingJumper>["system"]) =>
      editionYears.map((year) => sized(year, owner, large, "copper", { isElectrode: true }).evidence);
    expect(levels("service")).toEqual([
      "carried",
      "carried",
      "carried",
      "single",
      "single",
      "single",
      "carried",
    ]);
    expect(levels("separately-derived")).toEqual([
      "carried",
      "single",
      "bracketed",
      "single",
      "single",
      "single",
      "carried",
    ]);
  });

  it("takes the conductors of the feeder as they are, also enlarged ones", () => {
    expect(sizeIn(sized("2020", "building", of(sets(1, "3/0 AWG", "copper"))))).toBe("4 AWG");
  });

  it("warns of parallel conductors below 1/0 AWG", () => {
    expect(cautionsOf(sized("2023", "service", of(sets(2, "2 AWG", "copper"))))).toEqual([
      "parallel-below-1-0",
    ]);
  });

  it("is refused with everything that is wrong", () => {
    const issues = (input: unknown): readonly string[] => {
      try {
        size(structuralMetalBondingJumper, input as Input<typeof structuralMetalBondingJumper>);
      } catch (error) {
        if (error instanceof InputError) return error.issues.map(({ code, path }) => `${code} ${path}`);
      }
      return [];
    };
    expect(issues({})).toEqual(["missing code", "missing system", "missing supply", "missing conductor"]);
    expect(
      issues({
        code: { year: "2023" },
        system: "occupancy",
        supply: { sets: [] },
        conductor: { material: "copper", form: "bus" },
        isElectrode: 1,
        deviceAmperes: 100,
      }),
    ).toEqual([
      "unknown-key deviceAmperes",
      "unknown-value system",
      "empty-list supply.sets",
      "unknown-key conductor.form",
      "wrong-type isElectrode",
    ]);
  });
});
