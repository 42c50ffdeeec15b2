import { areaOf, editionYears, smallestConductorFor, standardSizes, tableAmpacity } from "bondmil";
import { describe, expect, it } from "vitest";

const columns = [60, 75, 90] as const;

describe("ampacity table", () => {
  it("has the same 75 C values in every edition", () => {
    for (const size of standardSizes) {
      for (const material of ["copper", "aluminum"] as const) {
        const values = editionYears.map(
          (year) => tableAmpacity({ edition: year, size, material, temperature: 75 }).amperes,
        );
        expect(new Set(values).size).toBe(1);
      }
    }
  });

  it("changed in 15 cells in 2011, all at 60 and 90 C; for 2008 a maker of cable gives five of them and the others rest on memory", () => {
    const changed = standardSizes.flatMap((size) =>
      (["copper", "aluminum"] as const).flatMap((material) =>
        columns
          .filter(
            (column) =>
              tableAmpacity({ edition: "2008", size, material, temperature: column }).amperes !==
              tableAmpacity({ edition: "2011", size, material, temperature: column }).amperes,
          )
          .map(
            (column) =>
              tableAmpacity({ edition: "2008", size, material, temperature: column }).citation.evidence,
          ),
      ),
    );
    const counted = (level: string) => changed.filter((one) => one === level).length;
    expect([changed.length, counted("carried"), counted("memory")]).toEqual([15, 5, 10]);
  });

  it("rises with size and temperature, and is smaller for aluminum", () => {
    for (const year of editionYears) {
      for (const column of columns) {
        const copper = standardSizes.flatMap(
          (size) =>
            tableAmpacity({ edition: year, size, material: "copper", temperature: column }).amperes ?? [],
        );
        expect(copper).toEqual([...copper].sort((a, b) => a - b));
      }
      for (const size of standardSizes) {
        const [low, middle, high] = columns.map(
          (column) =>
            tableAmpacity({ edition: year, size, material: "copper", temperature: column }).amperes ?? 0,
        );
        expect((low ?? 0) <= (middle ?? 0) && (middle ?? 0) <= (high ?? 0)).toBe(true);
        expect(
          tableAmpacity({ edition: year, size, material: "aluminum", temperature: 75 }).amperes ?? 0,
        ).toBeLessThanOrEqual(middle ?? 0);
      }
    }
  });

  it("finds the smallest conductor, or none", () => {
    for (const amperes of [1, 55, 200, 310, 311, 560]) {
      const size = smallestConductorFor({ edition: "2023", amperes, material: "aluminum", temperature: 75 });
      const smaller = standardSizes.filter((one) => size !== null && areaOf(one) < areaOf(size));
      expect(
        tableAmpacity({ edition: "2023", size: size ?? "18 AWG", material: "aluminum", temperature: 75 })
          .amperes,
      ).toBeGreaterThanOrEqual(amperes);
      expect(
        smaller.every(
          (one) =>
            (tableAmpacity({ edition: "2023", size: one, material: "aluminum", temperature: 75 }).amperes ??
              0) < amperes,
        ),
      ).toBe(true);
    }
    expect(
      smallestConductorFor({ edition: "2023", amperes: 561, material: "aluminum", temperature: 75 }),
    ).toBeNull();
  });

  it("has the number of its edition", () => {
    expect(
      editionYears.map(
        (year) =>
          tableAmpacity({ edition: year, size: "4 AWG", material: "copper", temperature: 75 }).citation
            .section,
      ),
    ).toEqual([
      "Table 310.16",
      "Table 310.15(B)(16)",
      "Table 310.15(B)(16)",
      "Table 310.15(B)(16)",
      "Table 310.16",
      "Table 310.16",
      "Table 310.16",
    ]);
  });
});
