import { fromSquareInches, InputError, rectangularBarsFor } from "bondmil";
import fc from "fast-check";
import { describe, expect, it } from "vitest";

describe("rectangular bars", () => {
  it("meet the area, and 1/8 in narrower would not", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 5_000_000 }), (required) => {
        for (const { thickness, width, area } of rectangularBarsFor(required)) {
          expect(area).toBeGreaterThanOrEqual(required);
          expect(width).toBeGreaterThanOrEqual(thickness);
          const narrower = width - 1 / 8;
          if (narrower >= thickness) expect(fromSquareInches(thickness * narrower)).toBeLessThan(required);
        }
      }),
    );
  });

  it.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])("refuse %d", (area) => {
    expect(() => rectangularBarsFor(area)).toThrow(InputError);
  });
});
