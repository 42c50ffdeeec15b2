import {
  areaOf,
  editionYears,
  equipmentGroundingConductor,
  InputError,
  mainBondingJumper,
  otherPipingBondingJumper,
  size,
  standardSizes,
  supplySideBondingJumper,
  sweep,
} from "bondmil";
import { describe, expect, it } from "vitest";

function issues(action: () => unknown): readonly (readonly string[])[] {
  try {
    action();
    return [];
  } catch (error) {
    if (error instanceof InputError) return error.issues.map(({ code, path }) => [code, path]);
    throw error;
  }
}

describe("a sweep over supplies", () => {
  const whole = sweep(mainBondingJumper, { supplyMaterial: "aluminum", material: "copper" });

  it("walks every size, 1 to 20 sets and every edition, in this order", () => {
    expect(whole).toHaveLength(standardSizes.length * 20 * editionYears.length);
    expect(whole.slice(0, 8).map(({ supplySize, sets, edition }) => [supplySize, sets, edition])).toEqual([
      ...editionYears.map((edition) => ["18 AWG", 1, edition]),
      ["18 AWG", 2, "2008"],
    ]);
    expect(new Set(whole.map((row) => Object.keys(row).join())).size).toBe(1);
    expect(JSON.parse(JSON.stringify(whole))).toStrictEqual(whole);
  });

  it("has in each row what the function says", () => {
    for (const row of whole.filter((_, place) => place % 37 === 0)) {
      const result = size(mainBondingJumper, {
        code: { year: row.edition },
        supply: { sets: [{ count: row.sets, size: row.supplySize, material: "aluminum" }] },
        conductor: { material: "copper" },
      });
      const { outcome, requiredArea, governs, evidence } = result;
      expect(row).toMatchObject({ requiredArea, governs, evidence, outcome: outcome.kind, refused: null });
      expect(row.size).toBe(outcome.kind === "conductor" ? outcome.size : null);
      expect(row.supplyArea).toBe(row.sets * areaOf(row.supplySize));
    }
  });

  it("takes what is asked for, and names the place of what governs", () => {
    const rows = sweep(mainBondingJumper, {
      editions: ["2023", "2011"],
      supplyMaterial: "copper",
      material: "copper",
      sizes: ["600 kcmil", "2000 kcmil"],
      counts: [3, 9],
    });
    expect(rows.map((row) => [row.supplyArea, row.edition, row.requiredArea, row.size, row.section])).toEqual(
      [
        [1800000, "2023", 225000, "250 kcmil", "Table 250.102(C)(1) note 1"],
        [1800000, "2011", 225000, "250 kcmil", "250.28(D)(1)"],
        [5400000, "2023", 675000, "700 kcmil", "Table 250.102(C)(1) note 1"],
        [5400000, "2011", 675000, "700 kcmil", "250.28(D)(1)"],
        [6000000, "2023", 750000, "750 kcmil", "Table 250.102(C)(1) note 1"],
        [6000000, "2011", 750000, "750 kcmil", "250.28(D)(1)"],
        [18000000, "2023", 2250000, null, "Table 250.102(C)(1) note 1"],
        [18000000, "2011", 2250000, null, "250.28(D)(1)"],
      ],
    );
    expect(rows.at(-1)?.outcome).toBe("area-only");
  });

  it("names the place of the step that governs where two are of its kind, and of the rule where none does", () => {
    const least = (copper: "6 AWG" | "2 AWG", section: string) =>
      ({
        kind: "floor",
        role: "main-bonding-jumper",
        copper,
        citation: { jurisdiction: "Nowhere", section },
      }) as const;
    const request = {
      editions: ["2020"],
      supplyMaterial: "copper",
      material: "copper",
      sizes: ["2 AWG"],
      counts: [1],
    } as const;
    const amendments = [least("6 AWG", "Sec. 1"), least("2 AWG", "Sec. 2")];
    const [row] = sweep(mainBondingJumper, { ...request, with: { code: { year: "2020", amendments } } });
    expect(row).toMatchObject({ governs: "floor", size: "2 AWG", section: "Nowhere, Sec. 2" });

    const excused = sweep(supplySideBondingJumper, {
      ...request,
      with: { instead: "nonflexible-metal-raceway" },
    });
    expect(excused).toMatchObject([
      { outcome: "not-required", requiredArea: 0, size: null, governs: null, refused: null },
    ]);
    expect(excused[0]?.section).toBe(
      size(supplySideBondingJumper, {
        code: { year: "2020" },
        supply: { sets: [{ count: 1, size: "2 AWG", material: "copper" }] },
        conductor: { material: "copper" },
        instead: "nonflexible-metal-raceway",
      }).citation.section,
    );
  });

  it("refuses a wrong request with everything that is wrong", () => {
    const wrong = { supplyMaterial: "iron", sizes: ["4"], counts: [0], editions: ["2024"], years: ["2023"] };
    expect(issues(() => sweep(mainBondingJumper, wrong as never))).toEqual([
      ["unknown-key", "years"],
      ["unknown-value", "editions[0]"],
      ["unknown-value", "supplyMaterial"],
      ["missing", "material"],
      ["unknown-size", "sizes[0]"],
      ["not-positive", "counts[0]"],
    ]);
    expect(issues(() => sweep(1 as never, wrong as never))).toEqual([["wrong-type", "role"]]);
  });
});

describe("a sweep over devices", () => {
  it("takes the last rating of every row by default", () => {
    const rows = sweep(equipmentGroundingConductor, { editions: ["2017"], material: "copper" });
    expect(rows.map(({ amperes }) => amperes).slice(0, 4)).toEqual([15, 20, 60, 100]);
    expect(rows.at(-1)).toEqual({
      edition: "2017",
      amperes: 6000,
      material: "copper",
      outcome: "conductor",
      requiredArea: 800000,
      size: "800 kcmil",
      governs: "rating-row",
      section: "Table 250.122",
      evidence: "single",
      refused: null,
    });
  });

  it("says in a row what an edition refuses", () => {
    const rows = sweep(equipmentGroundingConductor, {
      editions: ["2017"],
      material: "copper",
      ratings: [6001],
    });
    expect(rows).toEqual([
      {
        edition: "2017",
        amperes: 6001,
        material: "copper",
        outcome: "refused",
        requiredArea: null,
        size: null,
        governs: null,
        section: null,
        evidence: null,
        refused: "out-of-range",
      },
    ]);
  });

  it("names the place of the limit where it brings an increase back to the row", () => {
    const set = (size: "8 AWG" | "10 AWG") => ({ sets: [{ count: 1, size, material: "copper" }] }) as const;
    const circuit = {
      device: { amperes: 100 },
      conductors: set("8 AWG"),
      increasedFrom: { conductors: set("10 AWG"), reason: "voltage-drop" },
    } as const;
    const [row] = sweep(equipmentGroundingConductor, {
      editions: ["2020"],
      material: "copper",
      ratings: [100],
      with: { circuits: [circuit] },
    });
    expect(row).toMatchObject({ governs: "cap", size: "8 AWG", section: "250.122(A)" });
  });

  it("takes another role that goes by the device", () => {
    const rows = sweep(otherPipingBondingJumper, { editions: ["2020"], material: "copper", ratings: [100] });
    expect(rows.map(({ size }) => size)).toEqual(["8 AWG"]);
  });

  it("refuses a wrong request", () => {
    expect(issues(() => sweep(equipmentGroundingConductor, { ratings: [0] } as never))).toEqual([
      ["missing", "material"],
      ["not-positive", "ratings[0]"],
    ]);
    const bySupply = { material: "copper", supplyMaterial: "copper" } as never;
    expect(issues(() => sweep(equipmentGroundingConductor, bySupply))).toEqual([
      ["unknown-key", "supplyMaterial"],
    ]);
    expect(issues(() => sweep(undefined as never, bySupply))).toEqual([["missing", "role"]]);
  });
});
