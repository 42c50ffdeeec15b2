import { type ConductorSize, editionYears, type Material, type Supply } from "bondmil";
import { describe, expect, it } from "vitest";
import { requiredForLoad } from "../../src/supply/for-load.js";
import { aluminum, one, pipe, rod, sized } from "./electrode/asked.js";
import { brief, cautionsOf, sectionOf, sets, sizeIn } from "./jumper/supplies.js";

describe("a grounding electrode conductor", () => {
  it.each(editionYears)("follows the rows of the table in %s, whatever its material", (year) => {
    const rows: readonly (readonly [ConductorSize, Material, string, string])[] = [
      ["2 AWG", "copper", "8 AWG", "6 AWG"],
      ["1 AWG", "copper", "6 AWG", "4 AWG"],
      ["1/0 AWG", "copper", "6 AWG", "4 AWG"],
      ["2/0 AWG", "copper", "4 AWG", "2 AWG"],
      ["3/0 AWG", "copper", "4 AWG", "2 AWG"],
      ["4/0 AWG", "copper", "2 AWG", "1/0 AWG"],
      ["350 kcmil", "copper", "2 AWG", "1/0 AWG"],
      ["400 kcmil", "copper", "1/0 AWG", "3/0 AWG"],
      ["600 kcmil", "copper", "1/0 AWG", "3/0 AWG"],
      ["700 kcmil", "copper", "2/0 AWG", "4/0 AWG"],
      ["1000 kcmil", "copper", "2/0 AWG", "4/0 AWG"],
      ["1250 kcmil", "copper", "3/0 AWG", "250 kcmil"],
      ["1/0 AWG", "aluminum", "8 AWG", "6 AWG"],
      ["3/0 AWG", "aluminum", "6 AWG", "4 AWG"],
      ["250 kcmil", "aluminum", "4 AWG", "2 AWG"],
      ["500 kcmil", "aluminum", "2 AWG", "1/0 AWG"],
      ["900 kcmil", "copper-clad aluminum", "1/0 AWG", "3/0 AWG"],
      ["1750 kcmil", "aluminum", "2/0 AWG", "4/0 AWG"],
      ["2000 kcmil", "aluminum", "3/0 AWG", "250 kcmil"],
    ];
    for (const [supplied, material, inCopper, inAluminum] of rows) {
      expect(sizeIn(sized(year, one(1, supplied, material)))).toBe(inCopper);
      expect(sizeIn(sized(year, one(1, supplied, material), [pipe], aluminum))).toBe(inAluminum);
    }
  });

  it.each(editionYears)("stops at the last row in %s: no one-eighth, no assumed conductors", (year) => {
    const large = sized(year, one(20, "2000 kcmil"));
    expect(brief(large)).toEqual(["3/0 AWG", 167800, "row"]);
    expect(large.steps.map(({ kind }) => kind)).toEqual(["sum", "row", "standard-size"]);
    expect(sizeIn(sized(year, one(20, "2000 kcmil"), [pipe], aluminum))).toBe("250 kcmil");
  });

  it("adds the sets of a parallel run, however many raceways they use", () => {
    expect(sizeIn(sized("2017", one(4, "250 kcmil")))).toBe("2/0 AWG");
    expect(sizeIn(sized("2017", one(2, "3/0 AWG")))).toBe("2 AWG");
  });

  it("says what it is, on what it rests, and that it clears no fault", () => {
    const found = sized("2023", one(1, "500 kcmil"));
    expect(found).toMatchObject({
      role: "grounding-electrode-conductor",
      purpose: "electrode-system",
      citation: { section: "250.24(E)", evidence: "single" },
      readings: [],
      cautions: [],
    });
    expect(found.steps.map(({ citation }) => citation.section)).toEqual([
      "Table 250.66",
      "Table 250.66",
      "Chapter 9 Table 8",
    ]);
    expect(sized("2026", one(1, "500 kcmil")).evidence).toBe("carried");
    expect(sized("2014", one(1, "500 kcmil")).evidence).toBe("bracketed");
  });

  it.each([
    ["service", undefined, "2020", "250.24(D)"],
    ["service", "tap", "2020", "250.64(D)(1)"],
    ["service", "common", "2020", "250.64(D)(1)"],
    ["separately-derived", undefined, "2020", "250.30(A)(5)"],
    ["separately-derived", undefined, "2008", "250.30(A)(3)"],
    ["separately-derived", "tap", "2020", "250.30(A)(6)"],
    ["building", undefined, "2020", "250.32(E)"],
  ] as const)("of a %s, part %s, cites in %s %s", (system, part, year, section) => {
    const found = sized(year, one(1, "500 kcmil"), [pipe], { system, ...(part && { part }) });
    expect(found.citation.section).toBe(section);
    expect(sizeIn(found)).toBe("1/0 AWG");
  });

  it.each([
    ["service", "2020", "250.24(E)"],
    ["service", "2023", "250.24(F)"],
    ["separately-derived", "2017", "250.30(B)(1)"],
    ["building", "2017", "250.32(E)"],
  ] as const)("of an ungrounded %s has the same size in %s by %s", (system, year, section) => {
    const grounded = sized(year, one(1, "500 kcmil"), [rod], { system });
    const ungrounded = sized(year, one(1, "500 kcmil"), [rod], { system, ungrounded: true });
    expect(ungrounded.citation.section).toBe(section);
    expect({ ...ungrounded, citation: grounded.citation }).toEqual(grounded);
  });

  it.each(["common", "tap"] as const)(
    "of an ungrounded service, part %s, keeps the rule of its part",
    (part) => {
      const found = sized("2020", one(2, "500 kcmil"), [pipe], { part, ungrounded: true });
      expect(found.citation.section).toBe("250.64(D)(1)");
    },
  );

  it.each(["2008", "2011", "2014"] as const)(
    "in common or as a tap is of services only before 2014: %s",
    (year) => {
      const said = (system: "service" | "building", part: "common" | "tap") =>
        cautionsOf(sized(year, one(2, "500 kcmil"), [pipe], { system, part })).includes(
          "common-conductor-of-services-only",
        );
      for (const part of ["common", "tap"] as const)
        expect([said("service", part), said("building", part)]).toEqual([false, year !== "2014"]);
    },
  );

  it("takes the conductors that a load requires from note 2 of its own table", () => {
    for (const year of editionYears) {
      const supply = requiredForLoad(year, { amperes: 350, material: "copper", sets: 1 });
      const found = supply && sized(year, supply);
      expect(found && sizeIn(found)).toBe("1/0 AWG");
      expect(found && sectionOf(found, "conductors-required-for-load")).toBe("Table 250.66 note 2");
    }
  });

  it("takes a supply of both metals by assumed conductors, and says so", () => {
    const supply = { sets: [sets(1, "4/0 AWG", "aluminum"), sets(1, "2/0 AWG", "copper")] };
    const found = sized("2020", supply);
    // 4/0 AWG aluminum carries 180 A at 75 C; 2/0 AWG copper 175 A, 3/0 AWG copper 200 A.
    expect(found.steps.find(({ kind }) => kind === "assumed")).toMatchObject({
      conductors: [{ installed: { size: "4/0 AWG", material: "aluminum" }, assumed: "3/0 AWG" }],
      area: 167800 + 133100,
    });
    expect(sizeIn(found)).toBe("2 AWG");
    expect(cautionsOf(found)).toContain("mixed-supply-materials");
  });
});

describe("no grounding electrode conductor", () => {
  it.each(editionYears)("is required for a small control transformer in %s", (year) => {
    const control = { system: "separately-derived", controlTransformer: true } as const;
    const found = sized(year, one(1, "14 AWG"), [rod], control);
    expect(found).toMatchObject({
      governs: null,
      requiredArea: 0,
      steps: [],
      evidence: found.citation.evidence,
    });
    expect(found.outcome).toMatchObject({ kind: "not-required", why: "control-transformer" });
    const section = year === "2008" ? "250.30(A)(3) Exception No. 3" : "250.30(A)(5) Exception No. 3";
    expect(found.citation.section).toBe(section);
    const tap = sized(year, one(1, "14 AWG"), [rod], { ...control, part: "tap" });
    expect(tap.citation.section).toBe(
      year === "2008" ? "250.30(A)(4) Exception No. 2" : "250.30(A)(6) Exception No. 2",
    );
  });

  it.each(editionYears)("is required for a building on one branch circuit in %s", (year) => {
    const found = sized(year, one(1, "12 AWG"), [rod], { system: "building", onSingleBranchCircuit: true });
    expect(found.outcome).toMatchObject({ kind: "not-required", why: "building-on-one-branch-circuit" });
    expect(found.citation.section).toBe("250.32(A) Exception");
    expect(found.cautions).toEqual([]);
    const feeder = sized(year, one(1, "12 AWG"), [rod], { system: "building", onSingleBranchCircuit: false });
    expect(sizeIn(feeder)).toBe("8 AWG");
  });

  it.each(editionYears)("is excused by a branch circuit of more than 50 A only with a word in %s", (year) => {
    const onOne = (supply: Supply) =>
      sized(year, supply, [rod], { system: "building", onSingleBranchCircuit: true }).cautions;
    const section = Number(year) < 2020 ? "210.3" : "210.18";
    const said = [{ code: "larger-than-shared-branch-circuit", section }];
    expect(onOne(one(1, "6 AWG"))).toEqual([]);
    expect(onOne(one(1, "4 AWG", "aluminum"))).toEqual([]);
    expect(onOne(one(1, "4 AWG"))).toEqual(said);
    expect(onOne(one(1, "3 AWG", "aluminum"))).toEqual(said);
    expect(onOne(one(4, "350 kcmil"))).toEqual(said);
    const small = { size: "12 AWG", material: "copper" } as const;
    const large = { size: "4 AWG", material: "copper" } as const;
    expect(onOne({ sets: [{ count: 1, phases: [small, large] }] })).toEqual(said);
  });

  it("is excused by no control transformer that carries more than 100 A", () => {
    const excused = (supply: Supply) => () =>
      sized("2023", supply, [rod], { system: "separately-derived", controlTransformer: true });
    expect(excused(one(1, "1 AWG"))().outcome.kind).toBe("not-required");
    expect(excused(one(1, "1/0 AWG", "aluminum"))().outcome.kind).toBe("not-required");
    expect(excused(one(1, "1/0 AWG"))).toThrow("no control transformer with conductors for more than 100 A");
  });
});
