import {
  areaOf,
  InputError,
  largestSupply,
  mainBondingJumper,
  reserveOf,
  type StandardSize,
  size,
  standardSizes,
  supplySideBondingJumper,
} from "bondmil";
import { describe, expect, it } from "vitest";
import type { ReserveInput } from "../../src/asking/reserve.js";

function issuesOf(action: () => unknown): readonly string[] {
  try {
    action();
  } catch (error) {
    if (error instanceof InputError) return error.issues.map(({ code, path }) => `${code} ${path}`);
    throw error;
  }
  return [];
}

describe("the reserve of an installed conductor", () => {
  const result = size(mainBondingJumper, {
    code: { year: "2023" },
    supply: { sets: [{ count: 3, size: "600 kcmil", material: "copper" }] },
    conductor: { material: "copper" },
  });

  it.each<readonly [StandardSize, number, string, boolean]>([
    ["250 kcmil", 25_000, "11.1", true],
    ["4/0 AWG", -13_400, "-6.0", false],
    ["500 kcmil", 275_000, "122.2", true],
  ])("%s: %d circular mils", (installed, reserve, percent, meets) => {
    const found = reserveOf({ installed: { size: installed, material: "copper" }, result });
    expect(found).toMatchObject({ area: areaOf(installed), requiredArea: 225_000, reserve, meets });
    expect(found.percent?.toFixed(1)).toBe(percent);
  });

  it("is none, and met, where the conductor has just the area", () => {
    const exact = size(mainBondingJumper, {
      code: { year: "2023" },
      supply: { sets: [{ count: 4, size: "1000 kcmil", material: "copper" }] },
      conductor: { material: "copper" },
    });
    expect(reserveOf({ installed: { size: "500 kcmil", material: "copper" }, result: exact })).toEqual({
      area: 500_000,
      requiredArea: 500_000,
      reserve: 0,
      percent: 0,
      meets: true,
    });
  });

  it("has no percentage where none is required", () => {
    const none = size(supplySideBondingJumper, {
      code: { year: "2023" },
      supply: { sets: [{ count: 1, size: "4/0 AWG", material: "copper" }] },
      conductor: { material: "copper" },
      instead: "nonflexible-metal-raceway",
    });
    expect(reserveOf({ installed: { size: "4 AWG", material: "copper" }, result: none })).toEqual({
      area: 41_740,
      requiredArea: 0,
      reserve: 41_740,
      percent: null,
      meets: true,
    });
  });

  it("counts copper-clad aluminum as aluminum, and refuses another material than the result's", () => {
    const aluminum = size(mainBondingJumper, {
      code: { year: "2023" },
      supply: { sets: [{ count: 1, size: "500 kcmil", material: "aluminum" }] },
      conductor: { material: "aluminum" },
    });
    const installed = { size: "1/0 AWG", material: "copper-clad aluminum" } as const;
    expect(reserveOf({ installed, result: aluminum }).reserve).toBe(0);
    expect(issuesOf(() => reserveOf({ installed, result }))).toEqual(["unknown-value installed.material"]);
  });

  it("refuses what is no result", () => {
    const wrong = { installed: { size: "4 AWG", material: "tin" }, result: { requiredArea: -1 } };
    expect(issuesOf(() => reserveOf(wrong as unknown as ReserveInput))).toEqual([
      "unknown-value installed.material",
      "missing result.material",
      "wrong-type result.requiredArea",
    ]);
  });

  it("is never negative for the largest supply that is found for it", () => {
    for (const installed of standardSizes) {
      const { largest } = largestSupply(mainBondingJumper, {
        code: { year: "2023" },
        conductor: { size: installed, material: "copper" },
        supplyMaterial: "copper",
      });
      if (largest === null || largest > 2_000_000) continue;
      const supply = standardSizes.filter((one) => areaOf(one) <= largest).at(-1);
      if (supply === undefined) continue;
      const required = size(mainBondingJumper, {
        code: { year: "2023" },
        supply: { sets: [{ count: 1, size: supply, material: "copper" }] },
        conductor: { material: "copper" },
      });
      expect(reserveOf({ installed: { size: installed, material: "copper" }, result: required }).meets).toBe(
        true,
      );
    }
  });
});
