import {
  type Amendment,
  cableTrayAsEquipmentGroundingConductor,
  compare,
  comparisonDocument,
  type Input,
  InputError,
  mainBondingJumper,
  type Sizing,
  type SizingResult,
  size,
  supplySideBondingJumper,
  systemBondingJumper,
} from "bondmil";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readings, request } from "../laws/arbitraries.js";

const small: Input<typeof mainBondingJumper> = {
  code: { year: "2020" },
  supply: { sets: [{ count: 1, size: "10 AWG", material: "copper" }] },
  conductor: { material: "copper" },
};

describe("comparing readings", () => {
  it("puts the whole results side by side, one reading changed at a time", () => {
    const jumpers = fc.constantFrom<Sizing<Input<typeof mainBondingJumper>, SizingResult>>(
      mainBondingJumper,
      systemBondingJumper,
      supplySideBondingJumper,
    );
    fc.assert(
      fc.property(jumpers, request, readings, (role, input, chosen) => {
        const code = { ...input.code, readings: chosen };
        const comparison = compare(role, { over: "readings", input: { ...input, code } });
        expect(comparison.result).toStrictEqual(size(role, { ...input, code }));
        for (const { reading, alternative, result, effect } of comparison.otherwise) {
          const other = { ...code, readings: { ...chosen, [reading]: alternative } };
          expect(result).toStrictEqual(size(role, { ...input, code: other }));
          expect(effect === "same").toBe(result.requiredArea === comparison.result.requiredArea);
        }
        expect(JSON.parse(JSON.stringify(comparison))).toStrictEqual(comparison);
      }),
      { numRuns: 500 },
    );
  });

  it("tells what a reading changes", () => {
    const { edition, otherwise } = compare(mainBondingJumper, { over: "readings", input: small });
    expect(edition).toBe("2020");
    expect(otherwise).toMatchObject([
      { reading: "cap-on-small-supplies", chosen: "every-supply", effect: "larger" },
    ]);
    const { changes = [] } = otherwise[0] ?? {};
    expect(changes.map(({ kind, what, before, after }) => [kind, what, before, after])).toEqual([
      ["policy", "cap", 10380, null],
      ["policy", "governs", "cap", "row"],
      ["reading", "reading", "every-supply", "large-supplies-only"],
      ["caution", "caution", "cap-applied", null],
    ]);
  });

  it("goes both ways", () => {
    const code = { year: "2020", readings: { "cap-on-small-supplies": "large-supplies-only" } } as const;
    const { otherwise } = compare(mainBondingJumper, { over: "readings", input: { ...small, code } });
    expect(otherwise.map(({ alternative, effect }) => [alternative, effect])).toEqual([
      ["every-supply", "smaller"],
    ]);
  });

  it("has nothing beside what a jurisdiction enforces: the reading is no longer open", () => {
    const amendment: Amendment = {
      kind: "reading",
      reading: "cap-on-small-supplies",
      alternative: "large-supplies-only",
      citation: { jurisdiction: "Example County", section: "12-3" },
    };
    const code = { year: "2020", amendments: [amendment] } as const;
    const { result, otherwise } = compare(mainBondingJumper, { over: "readings", input: { ...small, code } });
    expect(result.requiredArea).toBe(16510);
    expect(otherwise).toEqual([]);
  });

  it("says what an alternative requires with the amendments of the code", () => {
    const floor: Amendment = {
      kind: "floor",
      role: "main-bonding-jumper",
      copper: "8 AWG",
      citation: { jurisdiction: "Example County", section: "12-4" },
    };
    const code = { year: "2020", amendments: [floor] } as const;
    const { result, otherwise } = compare(mainBondingJumper, { over: "readings", input: { ...small, code } });
    expect(result).toMatchObject({ requiredArea: 16510, readings: [] });
    expect(otherwise).toEqual([]);
  });

  it("has nothing beside the result where no reading has a say", () => {
    const large = compare(mainBondingJumper, {
      over: "readings",
      input: { ...small, supply: { sets: [{ count: 1, size: "500 kcmil", material: "copper" }] } },
    });
    expect(large.otherwise).toEqual([]);
    const tray = compare(cableTrayAsEquipmentGroundingConductor, {
      over: "readings",
      input: { code: { year: "2020" }, amperes: 100, metal: "steel" },
    });
    expect(tray.otherwise).toEqual([]);
  });

  it("refuses what the role refuses", () => {
    const bad = { ...small, code: { year: "2019" } } as never;
    expect(() => compare(mainBondingJumper, { over: "readings", input: bad })).toThrow(InputError);
    expect(() => compare(undefined as never, { over: "readings", input: small })).toThrow(InputError);
    // The role itself checks its code, and names what is wrong in it as it does elsewhere.
    const misspelled = { ...small, code: { yaer: "2020" } } as never;
    expect(() => compare(mainBondingJumper, { over: "readings", input: misspelled })).toThrow(
      /^code\.yaer: /,
    );
  });

  it("is written only where it is whole", () => {
    expect(() => comparisonDocument({ otherwise: 1 } as never)).toThrow(
      /^edition: .*\nresult: .*\notherwise: /,
    );
  });
});
