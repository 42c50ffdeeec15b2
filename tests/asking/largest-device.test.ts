import {
  type Amendment,
  amend,
  areaOf,
  type ConductorSize,
  conductorSizes,
  editionYears,
  equipmentBondingJumper,
  equipmentGroundingConductor,
  InputError,
  largestDevice,
  type Material,
  otherPipingBondingJumper,
  size,
} from "bondmil";
import { describe, expect, it } from "vitest";

const columns = ["copper", "aluminum"] as const;

describe("the largest device for a conductor", () => {
  it("is the last one whose row the conductor meets: walked over every size", () => {
    for (const year of editionYears) {
      for (const material of columns) {
        const required = (amperes: number) =>
          size(equipmentGroundingConductor, {
            code: { year },
            circuits: [{ device: { amperes } }],
            conductor: { material },
          }).requiredArea;
        for (const installed of conductorSizes) {
          const found = largestDevice(equipmentGroundingConductor, {
            code: { year },
            conductor: { size: installed, material },
          });
          if (found.amperes === null) {
            expect(required(1)).toBeGreaterThan(areaOf(installed));
            expect(found).toMatchObject({ reserve: null, row: { through: 15 } });
          } else {
            expect(required(found.amperes)).toBe(areaOf(installed) - (found.reserve?.area ?? 0));
            expect(found.amperes === 6000 || required(found.amperes + 1) > areaOf(installed)).toBe(true);
          }
        }
      }
    }
  });

  it("takes the larger of two rows of one size, and tells the reserve", () => {
    const found = largestDevice(equipmentGroundingConductor, {
      code: { year: "2023" },
      conductor: { size: "700 kcmil", material: "aluminum" },
    });
    expect(found).toMatchObject({
      amperes: 3000,
      area: 700000,
      reserve: { area: 100000, percent: 16.7 },
      row: { size: "600 kcmil", citation: { section: "Table 250.122", evidence: "single" } },
    });
  });

  it("differs between editions where the table does", () => {
    const amperes = editionYears.map(
      (year) =>
        largestDevice(equipmentGroundingConductor, {
          code: { year },
          conductor: { size: "1200 kcmil", material: "aluminum" },
        }).amperes,
    );
    expect(amperes).toEqual([6000, 6000, 6000, 6000, 4000, 4000, 4000]);
  });

  it("refuses what it does not know", () => {
    const input = { code: { year: "2023" }, conductor: { size: "4", material: "copper" } };
    expect(() => largestDevice(equipmentGroundingConductor, input as never)).toThrow(InputError);
  });
});

describe("the largest device for a jumper on the load side", () => {
  const serves = (
    year: (typeof editionYears)[number],
    size: ConductorSize,
    material: Material = "copper",
    ...amendments: readonly Amendment[]
  ) => {
    const code = amend({ year }, ...amendments);
    return largestDevice(equipmentBondingJumper, { code, conductor: { size, material } });
  };
  const floor = {
    kind: "floor",
    role: "equipment-bonding-jumper",
    copper: "8 AWG",
    citation: { jurisdiction: "Example County", section: "Sec. 12-3" },
  } as const;

  it("is none below 14 AWG in 2008, and that of the first row from there on", () => {
    expect(serves("2008", "16 AWG")).toMatchObject({
      role: "equipment-bonding-jumper",
      edition: "2008",
      amperes: null,
      row: { through: 15, size: "14 AWG" },
      reserve: null,
    });
    expect(serves("2008", "14 AWG")).toMatchObject({ amperes: 15, reserve: { area: 0, percent: 0 } });
    expect(serves("2008", "14 AWG", "aluminum").amperes).toBeNull();
    expect(serves("2008", "12 AWG", "aluminum").amperes).toBe(15);
  });

  it("is none below an amended minimum size, and as printed from there on", () => {
    for (const year of ["2008", "2023"] as const) {
      expect(serves(year, "10 AWG").amperes).toBe(60);
      expect(serves(year, "10 AWG", "copper", floor)).toMatchObject({
        amperes: null,
        row: { through: 15 },
        reserve: null,
      });
      expect(serves(year, "8 AWG", "copper", floor)).toEqual(serves(year, "8 AWG"));
      expect(serves(year, "10 AWG", "aluminum", floor)).toEqual(serves(year, "10 AWG", "aluminum"));
    }
  });

  it("does not mind a minimum size of another role, or one whose condition is not met", () => {
    const code = amend({ year: "2023", circumstances: { location: "indoors" } }, floor, {
      ...floor,
      role: "other-piping-bonding-jumper",
      when: { location: "rooftop" },
    });
    const conductor = { size: "10 AWG", material: "copper" } as const;
    expect(largestDevice(otherPipingBondingJumper, { code, conductor }).amperes).toBe(60);
    expect(largestDevice(equipmentBondingJumper, { code, conductor }).amperes).toBeNull();
  });
});
