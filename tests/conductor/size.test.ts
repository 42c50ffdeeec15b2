import {
  areaOf,
  compareSizes,
  conductorSizes,
  InputError,
  isStandardSize,
  nextSizeDown,
  nextSizeUp,
  standardSizeFor,
  standardSizes,
} from "bondmil";
import { describe, expect, it } from "vitest";

/** ASTM B258: diameter in mils of gauge n, with 1/0 = 0 to 4/0 = -3. */
const diameter = (n: number): number => 5 * 92 ** ((36 - n) / 39);
const gauges = [18, 16, 14, 12, 10, 8, 6, 4, 3, 2, 1, 0, -1, -2, -3] as const;
const nameOf = (n: number): string => (n >= 1 ? `${n} AWG` : `${1 - n}/0 AWG`);
const roundTo = (value: number, step: number): number => Math.round(value / step) * step;

describe("areas against the definition of the gauge (ASTM B258)", () => {
  const awg = standardSizes.filter((size) => size.endsWith("AWG"));

  it("knows every gauge of the definition", () => {
    expect(awg).toEqual(gauges.map(nameOf));
  });

  it.each(gauges)(
    "gauge %i: the diameter to a tenth of a mil, squared and rounded, is the tabulated area",
    (n) => {
      const squared = Math.round(diameter(n) * 10) ** 2 / 100;
      expect(roundTo(squared, squared < 100_000 ? 10 : 100)).toBe(areaOf(awg[gauges.indexOf(n)] ?? "18 AWG"));
    },
  );

  it("differs from the exact formula, rounded alike, at four sizes only", () => {
    const differing = gauges.filter((n, i) => {
      const exact = diameter(n) ** 2;
      return roundTo(exact, exact < 100_000 ? 10 : 100) !== areaOf(awg[i] ?? "18 AWG");
    });
    expect(differing.map(nameOf)).toEqual(["6 AWG", "3 AWG", "2 AWG", "1/0 AWG"]);
  });

  it("takes a kcmil designation as its own area", () => {
    for (const size of conductorSizes.filter((one) => one.endsWith("kcmil"))) {
      expect(areaOf(size)).toBe(Number.parseInt(size, 10) * 1000);
    }
  });
});

describe("order of sizes", () => {
  it("rises by area", () => {
    expect([...conductorSizes].reverse().sort(compareSizes)).toEqual(conductorSizes);
    expect(new Set(conductorSizes.map(areaOf)).size).toBe(conductorSizes.length);
  });

  it("steps up and down through the standard sizes, past 1200 kcmil", () => {
    const up = [];
    for (let size = standardSizes[0] ?? null; size !== null; size = nextSizeUp(size)) up.push(size);
    expect(up).toEqual(standardSizes);
    const down = [];
    for (let size = standardSizes.at(-1) ?? null; size !== null; size = nextSizeDown(size))
      down.unshift(size);
    expect(down).toEqual(standardSizes);
    expect(isStandardSize("1200 kcmil")).toBe(false);
    expect([nextSizeDown("1200 kcmil"), nextSizeUp("1200 kcmil")]).toEqual(["1000 kcmil", "1250 kcmil"]);
  });

  it("meets a requirement that lands exactly on a size with that size", () => {
    for (const size of standardSizes) {
      expect(standardSizeFor(areaOf(size))).toBe(size);
      expect(standardSizeFor(areaOf(size) + 1)).toBe(nextSizeUp(size));
    }
  });

  it("requires nothing of the smallest size, and knows none above the largest", () => {
    expect(standardSizeFor(0)).toBe(standardSizes[0]);
    expect(standardSizeFor(2_000_001)).toBeNull();
    expect(standardSizeFor(Number.MAX_SAFE_INTEGER)).toBeNull();
  });

  it.each(["3", -1, Number.NaN, 2 ** 53, undefined])("refuses an area of %j", (area) => {
    expect(() => standardSizeFor(area as never)).toThrow(/circular mils/);
  });
});

describe("what is not a size", () => {
  const issueOf = (value: unknown): unknown => {
    try {
      return areaOf(value as never);
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      return error.issues[0];
    }
  };
  const inFull = "write the size in full; parseSize parses what people write";
  const any = 'a size such as "4/0 AWG" or "500 kcmil"';

  it.each([
    ["250 MCM", "unknown-size", ["250 kcmil"], '"250 kcmil"'],
    ["#2", "unknown-size", ["2 AWG", "2/0 AWG"], '"2 AWG" or "2/0 AWG"'],
    ["5 AWG", "unknown-size", [], any],
    ["large", "unknown-size", [], any],
    [4, "wrong-type", [], any],
  ])("%j is refused with the sizes of its number", (value, code, alternatives, expected) => {
    expect(issueOf(value)).toMatchObject({ code, alternatives, expected });
    expect(issueOf(value)).toMatchObject({ message: expect.stringContaining(`; ${inFull}`) });
  });

  it("is missing where there is nothing", () => {
    expect(issueOf(undefined)).toMatchObject({
      code: "missing",
      alternatives: [],
      message: `missing, expected ${any}`,
    });
  });
});
