import {
  areaOf,
  conductorSizes,
  editionYears,
  InputError,
  largestDeviceFor,
  sizeEquipmentGroundingConductor,
} from "bondmil";
import { describe, expect, it } from "vitest";

const columns = ["copper", "aluminum"] as const;

describe("the largest device for a conductor", () => {
  it("is the last one whose row the conductor meets: walked over every size", () => {
    for (const year of editionYears) {
      for (const material of columns) {
        const required = (amperes: number) =>
          sizeEquipmentGroundingConductor({
            code: { year },
            circuits: [{ device: { amperes } }],
            conductor: { material },
          }).requiredArea;
        for (const size of conductorSizes) {
          const found = largestDeviceFor({ code: { year }, conductor: { size, material } });
          if (found.amperes === null) {
            expect(required(1)).toBeGreaterThan(areaOf(size));
            expect(found).toMatchObject({ reserve: null, row: { through: 15 } });
          } else {
            expect(required(found.amperes)).toBe(areaOf(size) - (found.reserve?.area ?? 0));
            expect(found.amperes === 6000 || required(found.amperes + 1) > areaOf(size)).toBe(true);
          }
        }
      }
    }
  });

  it("takes the larger of two rows of one size, and tells the reserve", () => {
    const found = largestDeviceFor({
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
        largestDeviceFor({ code: { year }, conductor: { size: "1200 kcmil", material: "aluminum" } }).amperes,
    );
    expect(amperes).toEqual([6000, 6000, 6000, 6000, 4000, 4000, 4000]);
  });

  it("refuses what it does not know", () => {
    const input = { code: { year: "2023" }, conductor: { size: "4", material: "copper" } };
    expect(() => largestDeviceFor(input as never)).toThrow(InputError);
  });
});
