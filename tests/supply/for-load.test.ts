import { mainBondingJumper, size } from "bondmil";
import { describe, expect, it } from "vitest";
import { requiredForLoad } from "../../src/supply/for-load.js";

describe("conductors for a load", () => {
  it("use 60 C through 100 A and 75 C above, by default", () => {
    const size = (amperes: number, temperature?: 60 | 75 | 90) =>
      requiredForLoad("2020", { amperes, material: "copper", sets: 1, ...(temperature && { temperature }) })
        ?.sets[0];
    expect(size(100)).toMatchObject({ size: "1 AWG" });
    expect(size(100, 75)).toMatchObject({ size: "3 AWG" });
    expect(size(101)).toMatchObject({ size: "2 AWG" });
  });

  it("start parallel sets at 1/0 AWG (310.10), which carries more than their share", () => {
    const sets = [1, 2, 3].map(
      (count) => requiredForLoad("2020", { amperes: 250, material: "copper", sets: count })?.sets[0],
    );
    // 125 A each would be 1 AWG; 2 x 1/0 AWG copper at 75 C are 300 A.
    expect(sets).toEqual([
      { count: 1, size: "250 kcmil", material: "copper" },
      { count: 2, size: "1/0 AWG", material: "copper" },
      { count: 3, size: "1/0 AWG", material: "copper" },
    ]);
  });

  // 240.4(D): copper 14, 12 and 10 AWG on at most 15, 20 and 30 A, aluminum 12 and 10 AWG on at most 15 and 25 A, whatever the table lets them carry.
  it.each([
    [15, "14 AWG", "12 AWG"],
    [16, "12 AWG", "10 AWG"],
    [20, "12 AWG", "10 AWG"],
    [21, "10 AWG", "10 AWG"],
    [25, "10 AWG", "10 AWG"],
    [26, "10 AWG", "8 AWG"],
    [30, "10 AWG", "8 AWG"],
    [31, "8 AWG", "6 AWG"],
  ] as const)(
    "limit small conductors: %i A are %s copper and %s aluminum in 2008",
    (amperes, copper, aluminum) => {
      for (const [material, size] of [
        ["copper", copper],
        ["aluminum", aluminum],
      ] as const) {
        expect(requiredForLoad("2008", { amperes, material, sets: 1 })?.sets[0]).toMatchObject({ size });
      }
    },
  );

  it("go by the circuit's rating: its terminations and its device", () => {
    const size = (amperes: number, circuitAmperes: number) =>
      requiredForLoad("2020", { amperes, circuitAmperes, material: "copper", sets: 1 })?.sets[0];
    expect(size(95, 100)).toMatchObject({ size: "2 AWG" });
    // 75 C above 100 A: 3 AWG carries 100 A.
    expect(size(95, 110)).toMatchObject({ size: "3 AWG" });
    expect(size(12, 20)).toMatchObject({ size: "12 AWG" });
    expect(size(12, 60)).toMatchObject({ size: "8 AWG" });
  });

  it("are none for more than the table carries, or behind a device below the load", () => {
    expect(requiredForLoad("2020", { amperes: 5000, material: "copper", sets: 1 })).toBeNull();
    expect(
      requiredForLoad("2020", { amperes: 400, circuitAmperes: 300, material: "copper", sets: 1 }),
    ).toBeNull();
  });

  it("carry their load into a caution", () => {
    const supply = requiredForLoad("2020", { amperes: 400, material: "copper", sets: 1 });
    const { cautions } = size(mainBondingJumper, {
      code: { year: "2020" },
      supply: supply ?? { sets: [] },
      conductor: { material: "copper" },
    });
    expect(cautions).toContainEqual({
      code: "conductors-required-for-load",
      section: "Table 250.102(C)(1) note 4",
    });
  });
});
