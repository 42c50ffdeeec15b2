import {
  assumedConductors,
  correspondingSum,
  InputError,
  mainBondingJumper,
  type Supply,
  size,
  sumOfLargest,
  suppliesForLoad,
} from "bondmil";
import { describe, expect, it } from "vitest";
import { writeSupply } from "../../src/supply/index.js";
import { sumOf } from "../../src/supply/sums.js";

const c500 = { size: "500 kcmil", material: "copper" } as const;
const c250 = { size: "250 kcmil", material: "copper" } as const;

describe("the two sums", () => {
  it("agree where phases are alike", () => {
    const supply: Supply = {
      sets: [
        { count: 3, ...c500 },
        { count: 1, ...c250 },
      ],
    };
    expect([correspondingSum(supply), sumOfLargest(supply)]).toEqual([1_750_000, 1_750_000]);
  });

  it("differ where phases differ: 750 and 1000 kcmil", () => {
    const supply: Supply = {
      sets: [
        { count: 1, phases: [c500, c250, c250] },
        { count: 1, phases: [c250, c500, c250] },
      ],
    };
    expect([correspondingSum(supply), sumOfLargest(supply)]).toEqual([750_000, 1_000_000]);
  });

  it("stand beside a reading that counts the one largest conductor", () => {
    const supply: Supply = { sets: [{ count: 3, phases: [c250, c500, c250] }] };
    expect(sumOf(supply, "largest-conductor")).toBe(500_000);
  });

  it("count a uniform set in every phase, and leave an absent phase out", () => {
    const supply: Supply = {
      sets: [
        { count: 2, phases: [c500, null, c500] },
        { count: 1, phases: [null, c250, c250] },
        { count: 1, ...c250 },
      ],
    };
    expect([correspondingSum(supply), sumOfLargest(supply)]).toEqual([1_500_000, 1_500_000]);
  });
});

describe("a supply in words", () => {
  it("names each set, and each phase of unlike ones", () => {
    expect(writeSupply({ sets: [{ count: 3, ...c500 }] })).toBe("3 x 500 kcmil copper");
    expect(
      writeSupply({
        sets: [
          { count: 1, phases: [c500, null, c250] },
          { count: 2, ...c250 },
        ],
      }),
    ).toBe("1 x (500 kcmil copper, none, 250 kcmil copper) + 2 x 250 kcmil copper");
  });
});

describe("conductors of equal ampacity", () => {
  it("are named once per different conductor, and only for the other metal", () => {
    const supply: Supply = {
      sets: [
        { count: 2, size: "350 kcmil", material: "aluminum" },
        { count: 1, size: "350 kcmil", material: "copper-clad aluminum" },
        { count: 1, ...c250 },
      ],
    };
    expect(
      assumedConductors({ edition: "2020", supply, material: "copper", temperature: 75 }).map(
        ({ installed, assumed }) => [installed.size, assumed],
      ),
    ).toEqual([["350 kcmil", "250 kcmil"]]);
  });

  it("stand in for one metal of a size, not for the other", () => {
    const { steps } = size(mainBondingJumper, {
      code: { year: "2023" },
      supply: { sets: [{ count: 1, phases: [c500, { size: "500 kcmil", material: "aluminum" }] }] },
      conductor: { material: "copper" },
    });
    expect(steps[1]).toMatchObject({
      kind: "assumed",
      conductors: [{ assumed: "350 kcmil" }],
      area: 500_000,
    });
  });

  it("depend on the temperature column", () => {
    const supply: Supply = { sets: [{ count: 1, size: "750 kcmil", material: "aluminum" }] };
    const assumed = ([60, 75, 90] as const).map(
      (column) =>
        assumedConductors({ edition: "2020", supply, material: "copper", temperature: column })[0]?.assumed,
    );
    expect(assumed).toEqual(["500 kcmil", "600 kcmil", "600 kcmil"]);
  });

  it("fall back on equal conductance above the largest aluminum conductor, rounded up", () => {
    const supply: Supply = { sets: [{ count: 2, size: "1500 kcmil", material: "copper" }] };
    expect(
      assumedConductors({ edition: "2023", supply, material: "aluminum", temperature: 75 }),
    ).toMatchObject([{ installedAmperes: 625, assumed: null, area: Math.ceil(1_500_000 / 0.61) }]);
  });

  it("count a conductor that the table leaves out as the next larger", () => {
    const supply: Supply = { sets: [{ count: 1, size: "14 AWG", material: "aluminum" }] };
    expect(assumedConductors({ edition: "2023", supply, material: "copper", temperature: 75 })).toMatchObject(
      [{ installedAmperes: 20, assumed: "14 AWG" }],
    );
  });
});

describe("conductors for a load", () => {
  it("use 60 C through 100 A and 75 C above, by default", () => {
    const size = (amperes: number, column?: 60 | 75 | 90) =>
      suppliesForLoad({
        edition: "2020",
        amperes,
        material: "copper",
        ...(column && { temperature: column }),
      })[0]?.sets[0];
    expect(size(100)).toMatchObject({ size: "1 AWG" });
    expect(size(100, 75)).toMatchObject({ size: "3 AWG" });
    expect(size(101)).toMatchObject({ size: "2 AWG" });
  });

  it("start parallel sets at 1/0 AWG (310.10), which carries more than their share", () => {
    const sets = suppliesForLoad({ edition: "2020", amperes: 250, material: "copper", mostSets: 3 }).map(
      (one) => one.sets[0],
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
        const [supply] = suppliesForLoad({ edition: "2008", amperes, material });
        expect(supply?.sets[0]).toMatchObject({ size });
      }
    },
  );

  it("go by the circuit's rating: its terminations and its device", () => {
    const size = (amperes: number, circuitAmperes: number) =>
      suppliesForLoad({ edition: "2020", amperes, circuitAmperes, material: "copper" })[0]?.sets[0];
    expect(size(95, 100)).toMatchObject({ size: "2 AWG" });
    // 75 C above 100 A: 3 AWG carries 100 A.
    expect(size(95, 110)).toMatchObject({ size: "3 AWG" });
    expect(size(12, 20)).toMatchObject({ size: "12 AWG" });
    expect(size(12, 60)).toMatchObject({ size: "8 AWG" });
  });

  it("carry their load into a caution", () => {
    const [supply] = suppliesForLoad({ edition: "2020", amperes: 400, material: "copper" });
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

  it.each([
    [{ edition: "2020", amperes: 0, material: "copper" }, "not-positive", "amperes"],
    [{ edition: "2020", amperes: 5000, material: "copper" }, "out-of-range", "amperes"],
    [{ edition: "2020", amperes: "400", material: "copper" }, "wrong-type", "amperes"],
    [{ edition: "2020", amperes: Number.NaN, material: "copper" }, "out-of-range", "amperes"],
    [{ edition: "2019", amperes: 400, material: "copper" }, "unknown-value", "edition"],
    [{ edition: "2020", amperes: 400, material: "steel" }, "unknown-value", "material"],
    [{ edition: "2020", amperes: 400, material: "copper", temperature: 70 }, "unknown-value", "temperature"],
    [
      { edition: "2020", amperes: 400, circuitAmperes: 300, material: "copper" },
      "out-of-range",
      "circuitAmperes",
    ],
    [{ edition: "2020", amperes: 400, material: "copper", mostSets: 0 }, "not-positive", "mostSets"],
    [{ edition: "2020", amperes: 400, material: "copper", sets: 2 }, "unknown-key", "sets"],
  ])("refuse %j", (load, code, path) => {
    let issues: unknown;
    try {
      suppliesForLoad(load as never);
    } catch (error) {
      if (error instanceof InputError) issues = error.issues;
    }
    expect(issues).toMatchObject([{ code, path }]);
  });

  it("take a member that holds nothing as one that is left out, known or not", () => {
    const load = { edition: "2020", amperes: 400, material: "copper" } as const;
    const more = { temperature: undefined, sets: undefined } as object;
    expect(suppliesForLoad({ ...load, ...more })).toEqual(suppliesForLoad(load));
  });
});
