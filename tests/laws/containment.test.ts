import {
  type ConductorColumn,
  editionYears,
  type Input,
  type Material,
  type mainBondingJumper,
  type Supply,
  size,
  standardSizes,
} from "bondmil";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  material,
  ofColumn,
  readings,
  supply,
  supplyOf,
  temperature,
  withLarger,
  year,
} from "./arbitraries.js";
import { jumpers } from "./roles.js";

/** One alternative gives containment up by its own words: it has the last test of this file. */
const code = fc.record({
  year,
  readings: readings.filter((one) => one["single-conductor-of-another-material"] !== "parallel-only"),
});

/**
 * If every conductor of one supply is matched in another by one of the same material and at least its area, the other
 * never gets a smaller jumper.
 */
describe.each(jumpers)("containment: $id", (role) => {
  function neverSmaller(pairs: fc.Arbitrary<{ readonly small: Supply; readonly large: Supply }>): void {
    fc.assert(
      fc.property(pairs, code, material, temperature, ({ small, large }, chosen, jumper, column) => {
        const required = (one: Supply) => {
          const input: Input<typeof mainBondingJumper> = {
            code: chosen,
            supply: one,
            conductor: { material: jumper },
            temperature: column,
          };
          return size(role, input).requiredArea;
        };
        expect(required(large)).toBeGreaterThanOrEqual(required(small));
      }),
      { numRuns: 3000 },
    );
  }

  it.each(["copper", "aluminum"] as const)("holds within %s", (column) => {
    const shape = { materials: ofColumn(column) };
    neverSmaller(withLarger(supplyOf(shape), shape));
  });

  it("holds for any supply and whatever joins it", () => {
    neverSmaller(withLarger(supply));
  });

  // Walked in full instead of drawn, because the supplies at which this can fail are few.
  it.each([
    ["copper", "aluminum", "copper"],
    ["copper", "aluminum", "aluminum"],
    ["aluminum", "copper", "copper"],
    ["aluminum", "copper", "aluminum"],
  ] as const)(
    "holds when a supply of %s is joined by a set of %s, for a jumper of %s",
    (first, second, jumper) => {
      const wrong = editionYears.flatMap((edition) => joinedSmaller(edition, first, second, jumper));
      expect(wrong.slice(0, 5)).toEqual([]);
    },
  );

  function joinedSmaller(
    edition: (typeof editionYears)[number],
    first: ConductorColumn,
    second: ConductorColumn,
    jumper: Material,
  ): readonly string[] {
    return standardSizes.flatMap((one) =>
      Array.from({ length: 20 }, (_, i) => i + 1).flatMap((count) => {
        const alone = { count, size: one, material: first };
        const required = (sets: Supply["sets"]) =>
          size(role, {
            code: { year: edition },
            supply: { sets },
            conductor: { material: jumper },
          }).requiredArea;
        const before = required([alone]);
        const after = required([alone, { count: 1, size: "18 AWG", material: second }]);
        return after < before ? [`${edition}: ${count} x ${one}: ${before} to ${after}`] : [];
      }),
    );
  }

  // 1200 kcmil is a size that only another table names; it can still be installed.
  it.each(["copper", "aluminum"] as const)("places 1200 kcmil %s between its neighbors", (supplied) => {
    for (const edition of editionYears) {
      for (const jumper of ["copper", "aluminum"] as const) {
        for (const count of [1, 2, 5]) {
          const required = (one: "1000 kcmil" | "1200 kcmil" | "1250 kcmil") =>
            size(role, {
              code: { year: edition },
              supply: { sets: [{ count, size: one, material: supplied }] },
              conductor: { material: jumper },
            }).requiredArea;
          expect(required("1200 kcmil")).toBeGreaterThanOrEqual(required("1000 kcmil"));
          expect(required("1200 kcmil")).toBeLessThanOrEqual(required("1250 kcmil"));
        }
      }
    }
  });

  it("is given up by the reading that replaces parallel conductors only", () => {
    const required = (sets: Supply["sets"]) =>
      size(role, {
        code: { year: "2023", readings: { "single-conductor-of-another-material": "parallel-only" } },
        supply: { sets },
        conductor: { material: "copper" },
      }).requiredArea;
    const large = { count: 1, size: "2000 kcmil", material: "aluminum" } as const;
    // 1250 kcmil and 1 AWG copper are assumed for the two, nothing for the one.
    expect(required([large])).toBe(250000);
    expect(required([large, { count: 1, size: "1/0 AWG", material: "aluminum" }])).toBe(166712);
  });
});
