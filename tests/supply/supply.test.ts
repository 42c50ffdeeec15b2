import {
  assumedConductors,
  correspondingSum,
  InputError,
  mainBondingJumper,
  type Supply,
  size,
  sumOfLargest,
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

describe("sets that cannot be added", () => {
  const issuesOf = (...counts: readonly number[]) => {
    const sets = counts.map((count) => ({ count, size: "1/0 AWG", material: "copper" }) as const);
    try {
      sumOfLargest({ sets });
      return [];
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      return error.issues.map(({ code, path }) => `${code} ${path}`);
    }
  };

  it("are more than 2000 together", () => {
    const full = Array.from({ length: 20 }, () => 100);
    expect(issuesOf(...full)).toEqual([]);
    expect(issuesOf(...full, 1)).toEqual(["out-of-range sets"]);
  });
});
