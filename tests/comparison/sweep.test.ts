import {
  areaOf,
  editionYears,
  InputError,
  type SupplySweepRequest,
  sizeEquipmentGroundingConductor,
  sizeMainBondingJumper,
  sizeOtherPipingBondingJumper,
  standardSizes,
  sweepRating,
  sweepSupplyArea,
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
  const whole = sweepSupplyArea({
    size: sizeMainBondingJumper,
    material: "aluminum",
    jumperMaterial: "copper",
  });

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
      const result = sizeMainBondingJumper({
        code: { year: row.edition },
        supply: { sets: [{ count: row.sets, size: row.supplySize, material: "aluminum" }] },
        jumper: { material: "copper" },
      });
      const { outcome, requiredArea, governs, evidence } = result;
      expect(row).toMatchObject({ requiredArea, governs, evidence, outcome: outcome.kind, refused: null });
      expect(row.size).toBe(outcome.kind === "conductor" ? outcome.size : null);
      expect(row.supplyArea).toBe(row.sets * areaOf(row.supplySize));
    }
  });

  it("takes what is asked for, and names the place of what governs", () => {
    const rows = sweepSupplyArea({
      size: sizeMainBondingJumper,
      years: ["2023", "2011"],
      material: "copper",
      jumperMaterial: "copper",
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

  it("refuses a wrong request with everything that is wrong", () => {
    const wrong = { size: 1, material: "iron", sizes: ["4"], counts: [0], years: ["2024"], jumper: "copper" };
    expect(issues(() => sweepSupplyArea(wrong as unknown as SupplySweepRequest))).toEqual([
      ["unknown-key", "jumper"],
      ["wrong-type", "size"],
      ["unknown-value", "years[0]"],
      ["unknown-value", "material"],
      ["missing", "jumperMaterial"],
      ["unknown-size", "sizes[0]"],
      ["not-positive", "counts[0]"],
    ]);
  });
});

describe("a sweep over devices", () => {
  it("asks for the row ends of the tables unless told", () => {
    const rows = sweepRating({ size: sizeEquipmentGroundingConductor, years: ["2017"], material: "copper" });
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
    const rows = sweepRating({
      size: sizeEquipmentGroundingConductor,
      years: ["2017"],
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

  it("takes another function that goes by the device", () => {
    const rows = sweepRating({
      size: ({ code, circuits, conductor }) => {
        const device = circuits[0]?.device;
        const deviceAmperes = device !== undefined && "amperes" in device ? device.amperes : 0;
        return sizeOtherPipingBondingJumper({ code, deviceAmperes, jumper: conductor });
      },
      years: ["2020"],
      material: "copper",
      ratings: [100],
    });
    expect(rows.map(({ size }) => size)).toEqual(["8 AWG"]);
  });

  it("refuses a wrong request", () => {
    expect(issues(() => sweepRating({ material: "copper", ratings: [0] } as never))).toEqual([
      ["missing", "size"],
      ["not-positive", "ratings[0]"],
    ]);
  });
});
