import {
  type Amendment,
  amend,
  areaOf,
  type EditionYear,
  editionYears,
  groundingElectrodeConductor,
  InputError,
  largestSupply,
  type Material,
  mainBondingJumper,
  materials,
  prepare,
  type RoleBySupply,
  type StandardSize,
  size,
  standardSizes,
  supplySideBondingJumper,
  systemBondingJumper,
} from "bondmil";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { LargestSupplyInput } from "../../src/asking/shape.generated.js";

const jumpers: readonly RoleBySupply[] = [mainBondingJumper, systemBondingJumper, supplySideBondingJumper];

const ask = (
  year: EditionYear,
  installed: StandardSize,
  material: Material = "copper",
  supplyMaterial: Material = material,
  role: RoleBySupply = mainBondingJumper,
) => largestSupply(role, { code: { year }, conductor: { size: installed, material }, supplyMaterial });

const request: fc.Arbitrary<LargestSupplyInput> = fc.record({
  code: fc.record({ year: fc.constantFrom(...editionYears) }),
  conductor: fc.record({
    size: fc.constantFrom(...standardSizes),
    material: fc.constantFrom(...materials),
  }),
  supplyMaterial: fc.constantFrom(...materials),
});
const role = fc.constantFrom(...jumpers);

describe("the largest supply", () => {
  it.each<readonly [StandardSize, Material, number]>([
    ["2 AWG", "copper", 350_000],
    ["1/0 AWG", "copper", 600_000],
    ["2/0 AWG", "copper", 1_100_000],
    ["3/0 AWG", "copper", 8 * 167_800],
    ["4/0 AWG", "copper", 8 * 211_600],
    ["500 kcmil", "copper", 4_000_000],
    ["2000 kcmil", "copper", 16_000_000],
    ["1/0 AWG", "aluminum", 500_000],
    ["4/0 AWG", "aluminum", 1_750_000],
    ["250 kcmil", "aluminum", 2_000_000],
  ])("of %s %s in 2023 ends at a row edge or at eight times its area", (size, material, largest) => {
    const found = ask("2023", size, material);
    expect([found.largest, found.limit]).toEqual([largest, "conductor-area"]);
  });

  it("is where the 2011 table ends below its last row, which stays as a floor", () => {
    expect(ask("2011", "2/0 AWG")).toMatchObject({
      largest: 1_100_000,
      requiredAtLargest: 133_100,
      requiredAbove: 167_800,
    });
  });

  it("follows the cap where it acts, and says what the other reading gives", () => {
    const found = ask("2023", "10 AWG");
    expect(found).toMatchObject({ largest: 10_380, requiredAtLargest: 10_380, requiredAbove: 10_381 });
    expect(found.readings).toEqual([
      {
        id: "cap-on-small-supplies",
        chosen: "every-supply",
        otherwise: [{ alternative: "large-supplies-only", largest: null }],
      },
    ]);
  });

  it("is none for a jumper below every row", () => {
    expect(ask("2011", "10 AWG")).toMatchObject({
      largest: null,
      limit: "conductor-below-every-row",
      requiredAtLargest: null,
      requiredAbove: 16_510,
    });
  });

  it("stops at the threshold where assumed conductors would decide, and says so", () => {
    expect(ask("2023", "4/0 AWG", "copper", "aluminum")).toMatchObject({
      largest: 1_750_000,
      limit: "assumed-conductors-decide-above",
      requiredAtLargest: 133_100,
      requiredAbove: null,
    });
    expect(ask("2023", "2 AWG", "copper", "aluminum")).toMatchObject({
      largest: 500_000,
      limit: "conductor-area",
    });
  });

  it("takes several sets, for which assumed conductors count the soonest", () => {
    const found = largestSupply(mainBondingJumper, {
      code: { year: "2023", readings: { "single-conductor-of-another-material": "parallel-only" } },
      conductor: { size: "4/0 AWG", material: "copper" },
      supplyMaterial: "aluminum",
    });
    expect(found).toMatchObject({ largest: 1_750_000, limit: "assumed-conductors-decide-above" });
  });

  it("is not told where assumed conductors decide at any size", () => {
    const found = ask("2011", "4/0 AWG", "copper", "aluminum", supplySideBondingJumper);
    expect(found).toMatchObject({ largest: null, limit: "assumed-conductors-always-decide" });
    expect(found.readings.map(({ id }) => id)).toEqual(["supply-side-other-material-in-2011"]);
  });

  it("names its rule and the weakest evidence", () => {
    expect(ask("2023", "4/0 AWG").citation.section).toBe("250.28(D)(1)");
    expect(ask("2023", "4/0 AWG").evidence).toBe("single");
    expect(ask("2008", "4/0 AWG").evidence).toBe("carried");
  });

  describe("under amendments", () => {
    const citation = { jurisdiction: "Example County", section: "Sec. 12-3" };
    const under = (amendment: Amendment, installed: StandardSize, circumstances = {}) =>
      largestSupply(mainBondingJumper, {
        code: amend({ year: "2023", circumstances }, amendment),
        conductor: { size: installed, material: "copper" },
        supplyMaterial: "copper",
      });

    it("keeps a floor", () => {
      const floor = { kind: "floor", role: "main-bonding-jumper", copper: "4 AWG", citation } as const;
      expect(under(floor, "6 AWG")).toMatchObject({
        largest: null,
        limit: "conductor-below-every-row",
        requiredAbove: 41_740,
        cautions: [{ code: "amended", section: "Example County, Sec. 12-3" }],
      });
      expect(under(floor, "4 AWG").largest).toBe(167_800);
    });

    it("stays below an amended last row that requires more than the 12.5 percent above it", () => {
      const cell = {
        kind: "cell",
        table: "bonding-conductor",
        row: "1100 kcmil",
        column: "copper",
        size: "250 kcmil",
        citation,
      } as const;
      expect(under(cell, "4/0 AWG")).toMatchObject({ largest: 600_000, requiredAbove: 250_000 });
      expect(under(cell, "250 kcmil").largest).toBe(2_000_000);
    });

    it("says where an enforced reading overrules the one that was chosen, and it matters", () => {
      const enforced = {
        kind: "reading",
        reading: "cap-on-small-supplies",
        alternative: "large-supplies-only",
        citation,
      } as const;
      const codesFor = (installed: StandardSize) => {
        const chosen = { year: "2023", readings: { "cap-on-small-supplies": "every-supply" } } as const;
        return largestSupply(mainBondingJumper, {
          code: amend(chosen, enforced),
          conductor: { size: installed, material: "copper" },
          supplyMaterial: "copper",
        }).cautions.map(({ code }) => code);
      };
      expect(codesFor("10 AWG")).toEqual(["amended", "enforced-reading-overrules-chosen"]);
      expect(codesFor("2 AWG")).toEqual([]);
    });

    it("has no end where the supply does not decide", () => {
      const basis = {
        kind: "basis",
        role: "main-bonding-jumper",
        use: "equipment-grounding-table",
        citation,
      } as const;
      const circumstances = { serviceAmperes: 200 };
      expect(under(basis, "6 AWG", circumstances)).toMatchObject({
        largest: null,
        limit: "supply-does-not-decide",
      });
      expect(under(basis, "8 AWG", circumstances).limit).toBe("conductor-below-every-row");
    });
  });

  it("requires at most the jumper, and one circular mil more requires more", () => {
    fc.assert(
      fc.property(role, request, (jumper, input) => {
        const { code, conductor, supplyMaterial } = input;
        const prepared = prepare(jumper, {
          code,
          supplyMaterial,
          conductor: { material: conductor.material },
        });
        const { largest, limit, requiredAtLargest, requiredAbove } = largestSupply(jumper, input);
        const area = areaOf(conductor.size);
        const needsAssumed = (supply: number): boolean =>
          prepared.kind === "by-assumed-area" && prepared.needsAssumedArea(supply, 2);
        const required = (supply: number): number =>
          prepared.kind === "by-area" ? prepared.requiredArea(supply) : prepared.requiredArea(supply, 0, 2);
        const next = (largest ?? 0) + 1;
        if (largest !== null) {
          expect(needsAssumed(largest)).toBe(false);
          expect(requiredAtLargest).toBe(required(largest));
          expect(requiredAtLargest).toBeLessThanOrEqual(area);
        }
        if (limit === "conductor-area" || limit === "conductor-below-every-row") {
          expect(requiredAbove).toBe(required(next));
          expect(requiredAbove).toBeGreaterThan(area);
        } else {
          expect(needsAssumed(next)).toBe(true);
          expect(requiredAbove).toBeNull();
        }
        expect(largest === null).toBe(
          limit === "conductor-below-every-row" || limit === "assumed-conductors-always-decide",
        );
      }),
      { numRuns: 2000 },
    );
  });

  it("agrees with the full sizing of every supply of one size and material", () => {
    for (const year of editionYears) {
      for (const jumper of standardSizes) {
        const { largest } = ask(year, jumper);
        for (const installed of ["2 AWG", "350 kcmil", "600 kcmil", "2000 kcmil"] as const) {
          for (const count of [1, 2, 7]) {
            const { requiredArea } = size(mainBondingJumper, {
              code: { year },
              supply: { sets: [{ count, size: installed, material: "copper" }] },
              conductor: { material: "copper" },
            });
            const fits = count * areaOf(installed) <= (largest ?? 0);
            expect(requiredArea <= areaOf(jumper)).toBe(fits);
          }
        }
      }
    }
  });

  it("never shrinks with a larger jumper", () => {
    fc.assert(
      fc.property(role, request, fc.constantFrom(...standardSizes), (jumper, input, other) => {
        const { conductor } = input;
        const sizes = [conductor.size, other].sort((a, b) => areaOf(a) - areaOf(b));
        const [small, large] = sizes.map(
          (one) => largestSupply(jumper, { ...input, conductor: { ...conductor, size: one } }).largest ?? 0,
        );
        expect(large).toBeGreaterThanOrEqual(small ?? Number.NaN);
      }),
    );
  });

  it("is plain data that shares nothing with the input", () => {
    const input: LargestSupplyInput = {
      code: { year: "2023" },
      conductor: { size: "10 AWG", material: "copper" },
      supplyMaterial: "copper",
    };
    const before = structuredClone(input);
    const found = largestSupply(mainBondingJumper, input);
    expect(JSON.parse(JSON.stringify(found))).toEqual(found);
    expect(found.conductor).not.toBe(input.conductor);
    expect(input).toEqual(before);
  });

  it("refuses everything that is wrong at once", () => {
    const wrong = { code: { year: "2022" }, conductor: { size: "4" }, more: 1 };
    expect(issuesOf(() => largestSupply(mainBondingJumper, wrong as never))).toEqual([
      "unknown-key more",
      "unknown-value code.year",
      "unknown-size conductor.size",
      "missing conductor.material",
      "missing supplyMaterial",
    ]);
  });
});

function issuesOf(action: () => unknown): readonly string[] {
  try {
    action();
  } catch (error) {
    if (error instanceof InputError) return error.issues.map(({ code, path }) => `${code} ${path}`);
    throw error;
  }
  return [];
}

describe("an electrode conductor", () => {
  const serves = (installed: "6 AWG" | "2/0 AWG" | "3/0 AWG") =>
    largestSupply(groundingElectrodeConductor, {
      code: { year: "2020" },
      conductor: { size: installed, material: "copper" },
      supplyMaterial: "copper",
    });

  it("serves through the end of its row, and every supply from the last row on", () => {
    expect(serves("6 AWG")).toMatchObject({
      largest: 105_600,
      limit: "conductor-area",
      requiredAbove: 41_740,
    });
    expect(serves("2/0 AWG")).toMatchObject({ largest: 1_100_000, requiredAbove: 167_800 });
    expect(serves("3/0 AWG")).toMatchObject({ largest: null, limit: "supply-does-not-decide" });
  });
});
