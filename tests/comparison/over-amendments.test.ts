import {
  type Amendment,
  type Change,
  cableTrayAsEquipmentGroundingConductor,
  compare,
  equipmentGroundingConductor,
  groundingElectrodeConductor,
  type Input,
  InputError,
  mainBondingJumper,
  size,
  supplySideBondingJumper,
} from "bondmil";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, type Uncited, uncited } from "../laws/amendment-arbitraries.js";
import { request } from "../laws/arbitraries.js";

/** Every amendment here is invented. */
const floor: Uncited = { kind: "floor", role: "main-bonding-jumper", copper: "4 AWG" };
const cell = {
  kind: "cell",
  table: "bonding-conductor",
  row: "2 AWG",
  column: "copper",
  size: "6 AWG",
} as const;
const onRoofs: Uncited = {
  kind: "floor",
  role: "main-bonding-jumper",
  copper: "2 AWG",
  when: { location: "rooftop" },
};

const input = (...amendments: readonly Amendment[]): Input<typeof mainBondingJumper> => ({
  code: { year: "2020", amendments },
  supply: { sets: [{ count: 1, size: "2 AWG", material: "copper" }] },
  conductor: { material: "copper" },
});
const over = (...amendments: readonly Amendment[]) =>
  compare(mainBondingJumper, { over: "amendments", input: input(...amendments) });

const short = (changes: readonly Change[]) =>
  changes.map(({ kind, what, before, after }) => [kind, what, before, after]);

describe("comparing amendments", () => {
  it("puts the edition as printed, each amendment alone and all of them side by side", () => {
    const { edition, asPrinted, each, all } = over(...cited([floor, cell]));
    expect(edition).toBe("2020");
    expect(asPrinted.requiredArea).toBe(16_510);
    expect(each.map(({ amendment, result, effect }) => [amendment, result?.requiredArea, effect])).toEqual([
      ["Nowhere, Sec. 0", 41_740, "larger"],
      ["Nowhere, Sec. 1", 26_240, "larger"],
    ]);
    expect([all.result.requiredArea, all.effect]).toEqual([41_740, "larger"]);
  });

  it("tells what an amendment changes, against the edition as printed", () => {
    const [one] = over(...cited([floor])).each;
    const changes = one?.changes.map(({ what, before, after, sectionAfter }) => [
      what,
      before,
      after,
      sectionAfter,
    ]);
    expect(changes).toEqual([
      ["governs", "row", "floor", "250.28(D)(1)"],
      ["floor", null, "4 AWG", "Nowhere, Sec. 0"],
    ]);
  });

  it("takes what follows from another cell as a value, and no limit that was in force unseen as a new one", () => {
    const rod = {
      system: "service",
      supply: { sets: [{ count: 1, size: "2 AWG", material: "copper" }] },
      conductor: { material: "copper" },
      electrodes: [{ kind: "rod" }],
    } as const;
    const larger = { ...cell, table: "electrode-conductor", size: "4 AWG" } as const;
    const amendments = cited([larger, { ...larger, row: "1/0 AWG" }]);
    const { all } = compare(groundingElectrodeConductor, {
      over: "amendments",
      input: { ...rod, code: { year: "2020", amendments } },
    });
    expect(short(all.changes)).toEqual([
      ["value", "row", "8 AWG", "4 AWG"],
      ["value", "governs", "row", "cap"],
    ]);

    // Without the floor of the other amendment too little is required for the limit to show: it may be in force all the same.
    const less = { ...larger, row: "350 kcmil", size: "8 AWG" } as const;
    const rows = ["1/0 AWG", "3/0 AWG", "350 kcmil"].map((row) => ({ ...less, row }));
    const least: Uncited = { kind: "floor", role: "grounding-electrode-conductor", copper: "4 AWG" };
    const service = {
      ...rod,
      supply: { sets: [{ count: 1, size: "250 kcmil", material: "copper" }] },
    } as const;
    const limited = compare(groundingElectrodeConductor, {
      over: "amendments",
      input: { ...service, code: { year: "2020", amendments: cited([...rows, least]) } },
    });
    expect(short(limited.all.changes)).toEqual([
      ["value", "row", "2 AWG", "8 AWG"],
      ["policy", "governs", "cap", "floor"],
      ["policy", "floor", null, "4 AWG"],
    ]);
  });

  it("does not say that a floor is gone where the row of the device lies above it", () => {
    const input = {
      circuits: [{ device: { amperes: 200 } }],
      conductor: { material: "copper" },
      run: { kind: "tray", conductor: "single" },
    } as const;
    const row = { ...cell, table: "equipment-grounding", row: 200 } as const;
    const under = (...amendments: readonly Uncited[]) =>
      compare(equipmentGroundingConductor, {
        over: "amendments",
        input: { ...input, code: { year: "2020", amendments: cited(amendments) } },
      });
    const { asPrinted, all } = under({ ...row, size: "4 AWG" });
    expect(asPrinted.governs).toBe("floor");
    expect(short(all.changes)).toEqual([
      ["value", "rating-row", "6 AWG", "4 AWG"],
      ["value", "governs", "floor", "rating-row"],
    ]);
  });

  it("has the same result where an amendment does not act, and says why", () => {
    const [one] = over(...cited([onRoofs])).each;
    expect(one).toMatchObject({ effect: "same", result: { requiredArea: 16_510 } });
    expect(one?.changes).toMatchObject([
      { kind: "caution", what: "caution", before: null, after: "amendment-condition-unknown" },
    ]);
  });

  it("has nothing to compare without amendments", () => {
    const { asPrinted, each, all } = over();
    expect(each).toEqual([]);
    expect(all).toEqual({ result: asPrinted, effect: "same", changes: [] });
    const { amendments: _, ...code } = input().code;
    expect(compare(mainBondingJumper, { over: "amendments", input: { ...input(), code } })).toEqual(over());
  });

  it("agrees with sizing under each of the codes, and is plain data", () => {
    const list = fc.array(uncited, { maxLength: 4 }).map((some) => cited(some));
    fc.assert(
      fc.property(request, list, (asked, amendments) => {
        const under = (these: readonly Amendment[]) =>
          size(mainBondingJumper, { ...asked, code: { ...asked.code, amendments: these } });
        const ask = () =>
          compare(mainBondingJumper, {
            over: "amendments",
            input: { ...asked, code: { ...asked.code, amendments } },
          });
        let whole: ReturnType<typeof under>;
        try {
          whole = under(amendments);
        } catch (error) {
          expect(error).toBeInstanceOf(InputError);
          expect(ask).toThrow(InputError);
          return;
        }
        const found = ask();
        expect(found.asPrinted).toEqual(size(mainBondingJumper, asked));
        expect(found.all.result).toEqual(whole);
        for (const [i, { result, refused, effect }] of found.each.entries()) {
          if (refused === undefined) {
            expect(result).toEqual(under(amendments.slice(i, i + 1)));
            expect(effect === "same").toBe(result.requiredArea === found.asPrinted.requiredArea);
          } else {
            expect(() => under(amendments.slice(i, i + 1))).toThrow(InputError);
            expect([result, effect]).toEqual([undefined, "other-outcome"]);
          }
        }
        expect(JSON.parse(JSON.stringify(found))).toEqual(found);
      }),
      { numRuns: 500 },
    );
  });

  it("leaves the readings and the circumstances of the code as they are", () => {
    const [one] = cited([{ ...onRoofs }]);
    const amendments = one === undefined ? [] : [one];
    const circumstances = { location: "rooftop" };
    const asked = { ...input(), code: { year: "2020", circumstances, amendments } } as const;
    expect(compare(mainBondingJumper, { over: "amendments", input: asked }).each).toMatchObject([
      { effect: "larger", result: { requiredArea: 66_360 } },
    ]);
    const readings = { "cap-on-small-supplies": "large-supplies-only" } as const;
    const small = {
      ...input(),
      code: { year: "2020", readings, amendments },
      supply: { sets: [{ count: 1, size: "10 AWG", material: "copper" }] },
    } as const;
    const found = compare(mainBondingJumper, { over: "amendments", input: small });
    expect([found.asPrinted.requiredArea, found.all.result.requiredArea]).toEqual([16_510, 16_510]);
  });

  it("knows a conductor that an amendment makes required, and a cable tray that serves no longer", () => {
    const instead = "nonflexible-metal-raceway" as const;
    const wire = cited([{ kind: "always-wire", role: "supply-side-bonding-jumper" }]);
    const raceway = compare(supplySideBondingJumper, {
      over: "amendments",
      input: { ...input(...wire), instead },
    });
    expect(raceway.asPrinted.outcome.kind).toBe("not-required");
    expect(raceway.all).toMatchObject({
      effect: "other-outcome",
      result: { outcome: { kind: "conductor" } },
    });
    const always = cited([{ kind: "always-wire", role: "equipment-grounding-conductor" }]);
    const tray = compare(cableTrayAsEquipmentGroundingConductor, {
      over: "amendments",
      input: { code: { year: "2020", amendments: always }, amperes: 60, metal: "steel" },
    });
    expect(tray.asPrinted.outcome.kind).toBe("permitted");
    expect(tray.all).toMatchObject({
      effect: "other-outcome",
      result: { outcome: { kind: "not-permitted" } },
    });
  });

  it("refuses an amendment that does not stand alone in its own entry, and compares all of them", () => {
    // 4 AWG in the first row is larger than what the second has, so that it stands only with a larger second row.
    const second: Uncited = { ...cell, row: "1/0 AWG", size: "4 AWG" };
    const found = over(...cited([second, { ...cell, size: "4 AWG" }]));
    const issues = found.each.map(({ effect, refused = [] }) => [
      effect,
      ...refused.map(({ code, path, keys }) => [code, path, keys[2]]),
    ]);
    expect(issues).toEqual([["same"], ["other-outcome", ["out-of-order", "code.amendments[1].size", 1]]]);
    expect([found.all.result.requiredArea, found.all.effect]).toEqual([41_740, "larger"]);
  });

  it("refuses what the role or an amendment refuses, and a request that it does not know", () => {
    const wrong = cited([{ ...cell, row: "1 AWG" }]);
    expect(() => over(...wrong)).toThrow(InputError);
    const request = { over: "proposals", input: input() };
    expect(() => compare(mainBondingJumper, request as never)).toThrow(/^over: /);
    for (const bad of [
      undefined,
      "text",
      {},
      { code: "2020" },
      { ...input(), code: { year: "2020", amendments: 1 } },
    ]) {
      const asked = () => compare(mainBondingJumper, { over: "amendments", input: bad } as never);
      expect(asked).toThrow(InputError);
    }
    const editions = { over: "amendments", input: input(), editions: ["2020"] };
    expect(() => compare(mainBondingJumper, editions as never)).toThrow(/^editions: /);
  });
});
