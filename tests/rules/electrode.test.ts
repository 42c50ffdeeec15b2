import { type Code, type EditionYear, type Electrode, editionYears } from "bondmil";
import { describe, expect, it } from "vitest";
import {
  aluminum,
  concrete,
  copperClad,
  one,
  pipe,
  ring,
  rod,
  sized,
  steel,
} from "../roles/electrode/asked.js";
import { brief, cautionsOf, sectionOf, sizeIn } from "../roles/jumper/supplies.js";

const throughSole: readonly EditionYear[] = ["2008", "2011", "2014"];
const sinceKinds: readonly EditionYear[] = ["2017", "2020", "2023", "2026"];

describe("the size for particular electrodes", () => {
  it.each(editionYears)("limits, and is never a floor, in %s", (year) => {
    const large = one(1, "1000 kcmil");
    expect(brief(sized(year, large, [rod]))).toEqual(["6 AWG", 26240, "cap"]);
    expect(brief(sized(year, large, [concrete]))).toEqual(["4 AWG", 41740, "cap"]);
    expect(brief(sized(year, large, [ring("2 AWG")]))).toEqual(["2 AWG", 66360, "cap"]);
    expect(brief(sized(year, large, [ring("1/0 AWG")]))).toEqual(["1/0 AWG", 105600, "cap"]);
    expect(brief(sized(year, large, [ring("4/0 AWG")]))).toEqual(["2/0 AWG", 133100, "row"]);
    const small = one(1, "4 AWG");
    for (const electrode of [rod, concrete, ring("2 AWG"), pipe])
      expect(brief(sized(year, small, [electrode]))).toEqual(["8 AWG", 16510, "row"]);
  });

  it("is cited, and shown only where it acts", () => {
    const sections = (electrode: Electrode) =>
      sized("2020", one(1, "1000 kcmil"), [electrode])
        .steps.filter(({ kind }) => kind === "cap")
        .map(({ citation }) => citation.section);
    expect(["rod", "pipe", "plate"].map((kind) => sections({ kind } as Electrode))).toEqual(
      Array(3).fill(["250.66(A)"]),
    );
    expect(sections(concrete)).toEqual(["250.66(B)"]);
    expect(sections(ring("2 AWG"))).toEqual(["250.66(C)"]);
    expect(sections(pipe)).toEqual([]);
    expect(sized("2020", one(1, "4 AWG"), [rod]).steps.map(({ kind }) => kind)).not.toContain("cap");
  });

  it("does not hold where the conductor goes on to an electrode that requires more", () => {
    for (const year of editionYears) {
      for (const other of [pipe, steel, { kind: "other" } as const]) {
        expect(sizeIn(sized(year, one(1, "500 kcmil"), [rod, other]))).toBe("1/0 AWG");
        expect(sizeIn(sized(year, one(1, "500 kcmil"), [other, concrete, rod]))).toBe("1/0 AWG");
      }
    }
  });

  it.each(throughSole)("speaks of the sole connection in %s, so different kinds have none", (year) => {
    expect(sizeIn(sized(year, one(1, "500 kcmil"), [concrete, rod]))).toBe("1/0 AWG");
    expect(sizeIn(sized(year, one(1, "500 kcmil"), [rod, { kind: "plate" }]))).toBe("6 AWG");
  });

  it.each(throughSole)("may be read as the largest of several kinds in %s", (year) => {
    const supply = one(1, "500 kcmil");
    const code: Code = { year, readings: { "electrode-ceiling-for-several": "largest-of-kinds" } };
    expect(sizeIn(sized(year, supply, [rod, concrete], { code }))).toBe("4 AWG");
    expect(sizeIn(sized(year, supply, [rod, pipe], { code }))).toBe("1/0 AWG");
    expect(sized(year, supply, [rod, concrete]).readings[0]?.otherwise).toEqual([
      { alternative: "one-electrode-only", requiredArea: 105600 },
      { alternative: "largest-of-kinds", requiredArea: 41740 },
    ]);
  });

  it.each(sinceKinds)("is the largest of the kinds on the conductor in %s", (year) => {
    expect(sizeIn(sized(year, one(1, "500 kcmil"), [rod, concrete]))).toBe("4 AWG");
    expect(sizeIn(sized(year, one(1, "500 kcmil"), [concrete, ring("2 AWG"), rod]))).toBe("2 AWG");
  });

  it.each(throughSole)("holds for several of one kind by default in %s, and says so", (year) => {
    const found = sized(year, one(1, "500 kcmil"), [rod, rod]);
    expect(sizeIn(found)).toBe("6 AWG");
    expect(found.readings).toEqual([
      {
        id: "electrode-ceiling-for-several",
        chosen: "all-of-a-kind",
        otherwise: [
          { alternative: "one-electrode-only", requiredArea: 105600 },
          { alternative: "largest-of-kinds", requiredArea: 26240 },
        ],
      },
    ]);
    const code: Code = { year, readings: { "electrode-ceiling-for-several": "one-electrode-only" } };
    expect(sizeIn(sized(year, one(1, "500 kcmil"), [rod, rod], { code }))).toBe("1/0 AWG");
    expect(sizeIn(sized(year, one(1, "500 kcmil"), [rod], { code }))).toBe("6 AWG");
  });

  it("names aluminum for rods alone; to others the table stands, with a caution", () => {
    const large = one(1, "1000 kcmil");
    for (const year of editionYears) {
      expect(brief(sized(year, large, [rod], aluminum))).toEqual(["4 AWG", 41740, "cap"]);
      expect(
        sectionOf(sized(year, large, [rod], aluminum), "electrode-limit-not-for-material"),
      ).toBeUndefined();
      for (const [electrode, section] of [
        [concrete, "250.66(B)"],
        [ring("2 AWG"), "250.66(C)"],
      ] as const) {
        const found = sized(year, large, [electrode], aluminum);
        expect(sizeIn(found)).toBe("4/0 AWG");
        expect(sectionOf(found, "electrode-limit-not-for-material")).toBe(section);
      }
      expect(cautionsOf(sized(year, large, [pipe], aluminum))).toEqual(["aluminum-grounding-restrictions"]);
    }
    for (const both of [
      [concrete, ring("2 AWG")],
      [ring("2 AWG"), concrete],
    ]) {
      const found = sized("2020", large, both, aluminum);
      expect(sectionOf(found, "electrode-limit-not-for-material")).toBe("250.66(B)");
    }
  });

  it("names copper-clad aluminum from 2023", () => {
    const large = one(1, "1000 kcmil");
    for (const year of ["2023", "2026"] as const) {
      expect(sizeIn(sized(year, large, [rod], copperClad))).toBe("4 AWG");
    }
    for (const year of ["2008", "2011", "2014", "2017", "2020"] as const) {
      const found = sized(year, large, [rod], copperClad);
      expect(sizeIn(found)).toBe("4/0 AWG");
      expect(sectionOf(found, "electrode-limit-not-for-material")).toBe("250.66(A)");
      expect(found.readings).toEqual([
        {
          id: "copper-clad-to-rods",
          chosen: "not-named",
          otherwise: [{ alternative: "as-aluminum", requiredArea: 41740 }],
        },
      ]);
      const code: Code = { year, readings: { "copper-clad-to-rods": "as-aluminum" } };
      expect(sizeIn(sized(year, large, [rod], { code, ...copperClad }))).toBe("4 AWG");
    }
  });

  it("is cited for the electrode that has none in the metal, and not for one that has", () => {
    const found = sized("2020", one(1, "1000 kcmil"), [rod, ring("2 AWG")], aluminum);
    expect(sizeIn(found)).toBe("4/0 AWG");
    expect(sectionOf(found, "electrode-limit-not-for-material")).toBe("250.66(C)");
    expect(cautionsOf(sized("2020", one(1, "1000 kcmil"), [concrete, pipe], aluminum))).toEqual([
      "aluminum-grounding-restrictions",
    ]);
  });

  it.each(throughSole)(
    "takes rods, pipes and plates for one kind in %s, and nothing else with them",
    (year) => {
      const supply = one(1, "500 kcmil");
      for (const kind of ["pipe", "plate"] as const) {
        expect(sizeIn(sized(year, supply, [rod, { kind }]))).toBe("6 AWG");
        expect(sizeIn(sized(year, supply, [{ kind }, rod]))).toBe("6 AWG");
      }
      expect(sizeIn(sized(year, supply, [rod, rod, concrete]))).toBe("1/0 AWG");
      expect(sizeIn(sized(year, supply, [rod, concrete, rod]))).toBe("1/0 AWG");
    },
  );

  it("is lifted by an amendment that takes the limits away", () => {
    const amendments: Code["amendments"] = [
      {
        kind: "basis",
        role: "grounding-electrode-conductor",
        use: "no-electrode-ceiling",
        citation: { jurisdiction: "a city", section: "1" },
      },
    ];
    const found = sized("2020", one(1, "600 kcmil"), [concrete], { code: { year: "2020", amendments } });
    expect(sizeIn(found)).toBe("1/0 AWG");
    expect(cautionsOf(found)).toContain("amended");
  });
});
