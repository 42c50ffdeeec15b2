import {
  type Code,
  type EditionYear,
  type Electrode,
  editionYears,
  groundingElectrodeConductor,
  type Material,
  size,
} from "bondmil";
import { describe, expect, it } from "vitest";
import { concrete, one, pipe, ring, rod, sized, steel } from "./electrode/asked.js";
import { brief, cautionsOf, phases, sizeIn } from "./jumper/supplies.js";

describe("several enclosures or systems", () => {
  const big = ["500 kcmil", "250 kcmil", "250 kcmil"] as const;
  const turned = ["250 kcmil", "500 kcmil", "250 kcmil"] as const;
  const unlike = { sets: [phases([...big], "copper"), phases([...turned], "copper")] };

  it.each(editionYears)("add each set's largest conductor for a common conductor in %s", (year) => {
    const common = sized(year, unlike, [pipe], { part: "common" });
    expect(common.steps[0]).toMatchObject({ kind: "sum", rule: "largest", area: 1000000 });
    const atOnePlace = sized(year, unlike);
    expect(atOnePlace.steps[0]).toMatchObject({ kind: "sum", rule: "corresponding", area: 750000 });
  });

  it("add corresponding conductors where they come directly from the drop", () => {
    const sizes = ["600 kcmil", "500 kcmil", "500 kcmil"] as const;
    const shifted = ["500 kcmil", "600 kcmil", "500 kcmil"] as const;
    const supply = { sets: [phases([...sizes], "copper"), phases([...shifted], "copper")] };
    const common = { part: "common" } as const;
    expect(sizeIn(sized("2017", supply, [pipe], common))).toBe("3/0 AWG");
    const direct = sized("2017", supply, [pipe], { ...common, fromDrop: true });
    expect(sizeIn(direct)).toBe("2/0 AWG");
    expect(direct.steps[0]).toMatchObject({ area: 1100000, citation: { section: "Table 250.66 note 1" } });
    expect(sizeIn(sized("2017", supply, [pipe], { ...common, fromDrop: false }))).toBe("3/0 AWG");
  });

  it.each(["common", "tap"] as const)("limit the %s by its electrodes, unless read otherwise", (part) => {
    const found = sized("2020", one(2, "500 kcmil"), [concrete], { part });
    expect(sizeIn(found)).toBe("4 AWG");
    expect(found.readings).toEqual([
      {
        id: "electrode-ceiling-on-common-conductor",
        chosen: "applies",
        otherwise: [{ alternative: "table-only", requiredArea: 133100 }],
      },
    ]);
    const code: Code = {
      year: "2020",
      readings: { "electrode-ceiling-on-common-conductor": "table-only" },
    };
    expect(sizeIn(sized("2020", one(2, "500 kcmil"), [concrete], { part, code }))).toBe("2/0 AWG");
    expect(sizeIn(sized("2020", one(2, "500 kcmil"), [concrete], { code }))).toBe("4 AWG");
  });

  it("of a building on a feeder are described from 2014", () => {
    const codes = (year: EditionYear, part: "only" | "common" | "tap") =>
      cautionsOf(sized(year, one(1, "500 kcmil"), [pipe], { system: "building", part }));
    for (const year of ["2008", "2011"] as const) {
      expect(codes(year, "common")).toEqual(["common-conductor-of-services-only"]);
      expect(codes(year, "tap")).toEqual(["common-conductor-of-services-only"]);
      expect(codes(year, "only")).toEqual([]);
    }
    expect(codes("2014", "common")).toEqual([]);
  });

  it("tap a common conductor of derived systems, limited by an exception since 2020", () => {
    const tap = { system: "separately-derived", part: "tap" } as const;
    const since = sized("2020", one(1, "500 kcmil"), [rod], tap);
    expect(brief(since)).toEqual(["6 AWG", 26240, "cap"]);
    expect(since.readings).toEqual([]);
    expect(since.steps.find(({ kind }) => kind === "cap")?.citation.section).toBe(
      "250.30(A)(6) Exception to (a)(1) and (b)",
    );
    const before = sized("2017", one(1, "500 kcmil"), [rod], tap);
    expect(before.readings.map(({ id }) => id)).toEqual(["electrode-ceiling-on-common-conductor"]);
    expect(sizeIn(sized("2017", one(1, "500 kcmil"), [steel], tap))).toBe("1/0 AWG");
  });
});

describe("the common conductor of several derived systems", () => {
  const common = (
    year: EditionYear,
    electrodes: readonly Electrode[],
    material: Material = "copper",
    code: Code = { year },
  ) =>
    size(groundingElectrodeConductor, {
      code,
      system: "separately-derived",
      part: "common",
      conductor: { material },
      electrodes,
    });

  it.each(editionYears)("has a fixed size in %s", (year) => {
    const found = common(year, [steel]);
    expect(brief(found)).toEqual(["3/0 AWG", 167800, "named-size"]);
    expect(found.citation.section).toBe(year === "2008" ? "250.30(A)(4)" : "250.30(A)(6)");
    expect(brief(common(year, [steel], "aluminum"))).toEqual(["250 kcmil", 250000, "named-size"]);
    expect(cautionsOf(common(year, [steel], "aluminum"))).toEqual(["aluminum-grounding-restrictions"]);
    expect(sizeIn(common(year, [rod, pipe]))).toBe("3/0 AWG");
  });

  it.each(["2008", "2011", "2014", "2017"] as const)("has it whatever its electrodes in %s", (year) => {
    for (const electrode of [rod, concrete, ring("2 AWG")])
      expect(sizeIn(common(year, [electrode]))).toBe("3/0 AWG");
  });

  it.each(["2020", "2023", "2026"] as const)("is limited where all electrodes are in %s", (year) => {
    expect(brief(common(year, [rod]))).toEqual(["6 AWG", 26240, "cap"]);
    expect(brief(common(year, [rod, concrete]))).toEqual(["4 AWG", 41740, "cap"]);
    expect(brief(common(year, [ring("2/0 AWG"), rod]))).toEqual(["2/0 AWG", 133100, "cap"]);
    expect(brief(common(year, [ring("250 kcmil")]))).toEqual(["3/0 AWG", 167800, "named-size"]);
    expect(common(year, [rod]).steps[1]?.citation.section).toBe("250.30(A)(6) Exception to (a)(1) and (b)");
    expect(sizeIn(common(year, [rod, steel]))).toBe("3/0 AWG");
    expect(sizeIn(common(year, [concrete], "aluminum"))).toBe("250 kcmil");
  });

  it("of copper-clad aluminum is a reading in 2020", () => {
    expect(brief(common("2020", [rod], "copper-clad aluminum"))).toEqual(["250 kcmil", 250000, "named-size"]);
    expect(common("2020", [rod], "copper-clad aluminum").readings.map(({ id }) => id)).toEqual([
      "copper-clad-to-rods",
    ]);
    expect(sizeIn(common("2023", [rod], "copper-clad aluminum"))).toBe("4 AWG");
  });
});
