import {
  type Conductor,
  type EditionYear,
  editionYears,
  electrodeRacewayBondingJumper,
  type Material,
  size,
} from "bondmil";
import { describe, expect, it } from "vitest";

const sized = (year: EditionYear, enclosed: readonly Conductor[], ferrous = true) =>
  size(electrodeRacewayBondingJumper, {
    code: { year },
    ferrous,
    enclosed,
    conductor: { material: "copper" },
  });

describe("the jumper at each end of a raceway around an electrode conductor", () => {
  it.each(editionYears)("is as large as the conductor inside, as installed, in %s", (year) => {
    const found = sized(year, [{ size: "500 kcmil", material: "copper" }]);
    expect(found).toMatchObject({
      role: "electrode-raceway-bonding-jumper",
      purpose: "electrode-system",
      outcome: { kind: "conductor", size: "500 kcmil", quantity: 2 },
      governs: "named-size",
      citation: { section: "250.64(E)" },
    });
    expect(found.steps[0]).toMatchObject({ kind: "named-size", from: "other-conductor", size: "500 kcmil" });
  });

  it("is as large as the largest of several, wherever it stands", () => {
    const enclosed = (["4 AWG", "4/0 AWG", "6 AWG", "1 AWG"] as const).map(
      (one): Conductor => ({ size: one, material: "copper" }),
    );
    for (const list of [enclosed, [...enclosed].reverse()]) {
      expect(sized("2020", list).outcome).toEqual({ kind: "conductor", size: "4/0 AWG", quantity: 2 });
    }
  });

  it("goes by size, not by conductance", () => {
    const enclosed: readonly Conductor[] = [
      { size: "2 AWG", material: "aluminum" },
      { size: "4 AWG", material: "copper" },
    ];
    expect(sized("2020", enclosed).requiredArea).toBe(66360);
  });

  it.each(editionYears)("is not required around nonferrous metal in %s", (year) => {
    const found = sized(year, [{ size: "4 AWG", material: "copper" }], false);
    expect(found.outcome).toMatchObject({ kind: "not-required", why: "nonferrous-raceway" });
    expect(found.requiredArea).toBe(0);
  });

  it("says that aluminum of the same size as copper inside carries less", () => {
    const codes = (material: Material, inside: Material) =>
      size(electrodeRacewayBondingJumper, {
        code: { year: "2020" },
        ferrous: true,
        enclosed: [{ size: "4 AWG", material: inside }],
        conductor: { material },
      }).cautions;
    expect(codes("aluminum", "copper")).toEqual([{ code: "same-size-in-aluminum", section: "250.64(E)" }]);
    expect(codes("aluminum", "copper-clad aluminum")).toEqual([]);
    expect(codes("copper", "copper")).toEqual([]);
  });

  it("has the evidence of its section", () => {
    const inside: readonly Conductor[] = [{ size: "4 AWG", material: "copper" }];
    expect(sized("2017", inside).evidence).toBe("single");
    expect(sized("2008", inside).evidence).toBe("carried");
  });
});
