import {
  type Code,
  type EditionYear,
  type Electrode,
  editionYears,
  electrodeBondingJumper,
  type Input,
  size,
} from "bondmil";
import { describe, expect, it } from "vitest";
import { concrete, one, pipe, ring, rod, steel } from "./electrode/asked.js";
import { brief, cautionsOf, sectionOf, sizeIn } from "./jumper/supplies.js";

const sized = (
  year: EditionYear,
  to: readonly Electrode[],
  more: Partial<Input<typeof electrodeBondingJumper>> = {},
) =>
  size(electrodeBondingJumper, {
    code: { year },
    supply: one(1, "600 kcmil"),
    conductor: { material: "copper" },
    electrodes: to,
    ...more,
  });

describe("a bonding jumper between electrodes", () => {
  it.each(editionYears)("is sized as a grounding electrode conductor in %s", (year) => {
    const found = sized(year, [steel]);
    expect(found).toMatchObject({
      role: "electrode-bonding-jumper",
      purpose: "electrode-system",
      citation: { section: "250.53(C)" },
    });
    expect(brief(found)).toEqual(["1/0 AWG", 105600, "row"]);
    expect(brief(sized(year, [pipe], { supply: one(12, "600 kcmil") }))).toEqual(["3/0 AWG", 167800, "row"]);
    expect(sizeIn(sized(year, [steel], { conductor: { material: "aluminum" } }))).toBe("3/0 AWG");
  });

  it.each(editionYears)("needs no more than the electrode beyond it in %s", (year) => {
    expect(brief(sized(year, [rod]))).toEqual(["6 AWG", 26240, "cap"]);
    expect(brief(sized(year, [concrete]))).toEqual(["4 AWG", 41740, "cap"]);
    expect(brief(sized(year, [ring("2 AWG")]))).toEqual(["2 AWG", 66360, "cap"]);
    expect(sizeIn(sized(year, [concrete, steel]))).toBe("1/0 AWG");
    expect(sizeIn(sized(year, [concrete], { supply: one(1, "2 AWG") }))).toBe("8 AWG");
  });

  it("follows a chain: what counts is all that hangs on it", () => {
    const chain = (year: EditionYear) =>
      [[pipe, concrete, rod], [concrete, rod], [rod]].map((to) => sizeIn(sized(year, to)));
    expect(chain("2017")).toEqual(["1/0 AWG", "4 AWG", "6 AWG"]);
    expect(chain("2014")).toEqual(["1/0 AWG", "1/0 AWG", "6 AWG"]);
  });

  it.each(editionYears)("has a sentence of its own for a supplemental rod in %s", (year) => {
    const found = sized(year, [rod], { supplemental: true });
    expect(brief(found)).toEqual(["6 AWG", 26240, "cap"]);
    const cap = (one: typeof found) => one.steps.find(({ kind }) => kind === "cap")?.citation.section;
    expect(cap(found)).toBe("250.53(E)");
    expect(cap(sized(year, [rod]))).toBe("250.66(A)");
    expect(cap(sized(year, [rod, rod], { supplemental: true }))).toBe("250.66(A)");
    expect(cap(sized(year, [concrete], { supplemental: true }))).toBe("250.66(B)");
    expect(sizeIn(sized(year, [steel], { supplemental: true }))).toBe("1/0 AWG");
    expect(sizeIn(sized(year, [rod], { supplemental: true, supply: one(1, "4 AWG") }))).toBe("8 AWG");
  });

  it("names aluminum for rods, and copper-clad aluminum from 2023", () => {
    const clad = { conductor: { material: "copper-clad aluminum" }, supplemental: true } as const;
    expect(sizeIn(sized("2017", [rod], { conductor: { material: "aluminum" }, supplemental: true }))).toBe(
      "4 AWG",
    );
    expect(sizeIn(sized("2023", [rod], clad))).toBe("4 AWG");
    const before = sized("2020", [rod], clad);
    expect(sizeIn(before)).toBe("3/0 AWG");
    expect(before.readings.map(({ id }) => id)).toEqual(["copper-clad-to-rods"]);
    expect(cautionsOf(before)).toContain("electrode-limit-not-for-material");
    expect(sectionOf(before, "aluminum-grounding-restrictions")).toBe("250.64(A)");
  });

  it("says which readings matter", () => {
    const found = sized("2011", [rod, rod]);
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
    expect(sized("2011", [rod]).readings).toEqual([]);
  });

  it("is lifted by an amendment on it", () => {
    const amendments: Code["amendments"] = [
      {
        kind: "basis",
        role: "electrode-bonding-jumper",
        use: "no-electrode-ceiling",
        citation: { jurisdiction: "a city", section: "1" },
      },
    ];
    const code = { year: "2020", amendments } as const;
    expect(sizeIn(sized("2020", [rod], { code }))).toBe("1/0 AWG");
    expect(sizeIn(sized("2020", [rod], { code, supplemental: true }))).toBe("1/0 AWG");
  });
});
