import {
  areaOf,
  conductorSizes,
  formatSize,
  InputError,
  nextSizeDown,
  nextSizeUp,
  parseSize,
  standardSizeFor,
  standardSizes,
} from "bondmil";
import fc from "fast-check";
import { describe, expect, it } from "vitest";

describe("sizes", () => {
  it.each(conductorSizes)("%s is read back from its own text", (size) => {
    expect(parseSize(formatSize(size))).toBe(size);
    expect(parseSize(`  ${formatSize(size).toUpperCase()} `)).toBe(size);
  });

  it("parse to a size or raise an InputError, whatever the text", () => {
    const parts = fc.constantFrom(
      "0",
      "1",
      "2",
      "4",
      "250",
      "500",
      "1,000",
      "/0",
      "#",
      " ",
      "AWG",
      "kcmil",
      "MCM",
      "aught",
      "one",
    );
    const text = fc.oneof(
      fc.string(),
      fc.array(parts, { maxLength: 5 }).map((list) => list.join("")),
    );
    fc.assert(
      fc.property(text, (written) => {
        try {
          const size = parseSize(written);
          expect(conductorSizes).toContain(size);
          expect(parseSize(formatSize(size))).toBe(size);
        } catch (error) {
          expect(error).toBeInstanceOf(InputError);
        }
      }),
      { numRuns: 1000 },
    );
  });

  it("are the smallest with an area", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 2100000 }), (area) => {
        const size = standardSizeFor(area);
        if (size === null) {
          expect(area).toBeGreaterThan(2000000);
          return;
        }
        expect(areaOf(size)).toBeGreaterThanOrEqual(area);
        const below = nextSizeDown(size);
        if (below !== null) expect(areaOf(below)).toBeLessThan(area);
      }),
    );
  });

  it("step up and down through every standard size and nothing else", () => {
    for (const [i, size] of standardSizes.entries()) {
      expect(standardSizeFor(areaOf(size))).toBe(size);
      expect(nextSizeUp(size)).toBe(standardSizes[i + 1] ?? null);
      expect(nextSizeDown(size)).toBe(standardSizes[i - 1] ?? null);
    }
  });
});
