import {
  type Change,
  cableTrayAsEquipmentGroundingConductor,
  compare,
  type EditionComparison,
  editionYears,
  equipmentBondingJumper,
  equipmentGroundingConductor,
  groundingElectrodeConductor,
  type Input,
  InputError,
  intersystemBondingConductor,
  mainBondingJumper,
  type Sizing,
  type SizingResult,
  size,
  structuralMetalBondingJumper,
  supplySideBondingJumper,
  systemBondingJumper,
  waterPipingBondingJumper,
} from "bondmil";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { ComparedResult } from "../../src/comparison/comparison.js";
import { readings, request, year } from "../laws/arbitraries.js";

const copper = { material: "copper" } as const;
const copperSets = (count: number, size: "10 AWG" | "500 kcmil" | "600 kcmil") =>
  ({ sets: [{ count, size, material: "copper" }] }) as const;

/** The changes of an edition in short. */
function short(
  comparison: EditionComparison,
  edition: string,
  kinds: readonly Change["kind"][],
): readonly (readonly unknown[])[] {
  const entry = comparison.find((one) => one.edition === edition);
  return (entry?.changes ?? [])
    .filter(({ kind }) => kinds.includes(kind))
    .map(({ kind, what, of, before, after }) => [kind, what, of, before, after]);
}

const rules = ["value", "policy", "reading"] as const;

describe("comparing editions", () => {
  const jumpers = fc.constantFrom(mainBondingJumper, systemBondingJumper, supplySideBondingJumper);
  const asked = fc.record({
    role: jumpers as fc.Arbitrary<Sizing<Input<typeof mainBondingJumper>, SizingResult>>,
    input: request,
    chosen: fc.option(readings, { nil: undefined }),
    editions: fc.option(fc.array(year, { minLength: 1, maxLength: 9 }), { nil: undefined }),
  });
  const compared = ({
    role,
    input,
    chosen,
    editions,
  }: typeof asked extends fc.Arbitrary<infer T> ? T : never) => {
    const code = chosen === undefined ? {} : { readings: chosen };
    return compare(role, { over: "editions", input: { ...input, code }, ...(editions && { editions }) });
  };

  it("gives exactly the single results, in the order that was asked for", () => {
    fc.assert(
      fc.property(asked, (one) => {
        const { role, input, chosen, editions = editionYears } = one;
        const comparison = compared(one);
        expect(comparison.map(({ edition }) => edition)).toEqual(editions);
        for (const { edition, result } of comparison) {
          const code = { year: edition, ...(chosen && { readings: chosen }) };
          expect(result).toStrictEqual(size(role, { ...input, code }));
        }
      }),
      { numRuns: 200 },
    );
  });

  it("survives JSON, leaves its input alone and gives the same again", () => {
    fc.assert(
      fc.property(asked, (one) => {
        const before = JSON.stringify(one.input);
        const comparison = compared(one);
        expect(JSON.parse(JSON.stringify(comparison))).toStrictEqual(comparison);
        expect(JSON.stringify(one.input)).toBe(before);
        expect(compared(one)).toStrictEqual(comparison);
      }),
      { numRuns: 200 },
    );
  });

  it("says why whenever the area changes, and never only that it does", () => {
    let changed = 0;
    fc.assert(
      fc.property(asked, (one) => {
        compared(one).forEach(({ effect, changes, result }, place, all) => {
          const before = all[place - 1]?.result;
          if (before === undefined || result === undefined) return;
          const difference = result.requiredArea - before.requiredArea;
          expect(effect).toBe(difference === 0 ? "same" : difference > 0 ? "larger" : "smaller");
          if (difference === 0) return;
          changed++;
          const reasons = changes.filter(({ kind }) => (rules as readonly string[]).includes(kind));
          expect(reasons.map(({ what }) => what)).not.toEqual([]);
          expect(reasons.filter(({ what }) => what === "required-area")).toEqual([]);
        });
      }),
      { numRuns: 500 },
    );
    expect(changed).toBeGreaterThan(20);
  });

  it("has nothing to tell of an edition beside itself", () => {
    fc.assert(
      fc.property(asked, (one) => {
        const { edition } = compared(one)[0] ?? {};
        const editions = [edition ?? "2008", edition ?? "2008"] as const;
        expect(compared({ ...one, editions: [...editions] })[1]).toMatchObject({
          effect: "same",
          changes: [],
        });
      }),
      { numRuns: 100 },
    );
  });

  it("tells a change backwards as it tells it forwards, with before and after exchanged", () => {
    const turned = ({ what, of, before, after }: Change) => [what, of, after, before];
    const plain = ({ what, of, before, after }: Change) => [what, of, before, after];
    fc.assert(
      fc.property(asked, year, year, (one, a, b) => {
        const forwards = compared({ ...one, editions: [a, b] })[1]?.changes ?? [];
        const backwards = compared({ ...one, editions: [b, a] })[1]?.changes ?? [];
        const sorted = (list: readonly unknown[]) => list.map((item) => JSON.stringify(item)).sort();
        expect(sorted(backwards.map(turned))).toEqual(sorted(forwards.map(plain)));
      }),
      { numRuns: 200 },
    );
  });
});

describe("why editions differ", () => {
  it("another cell of a table is a value", () => {
    const editions = compare(equipmentGroundingConductor, {
      over: "editions",
      input: { circuits: [{ device: { amperes: 4000 } }], conductor: { material: "aluminum" } },
    });
    expect(short(editions, "2011", rules)).toEqual([["value", "rating-row", null, "800 kcmil", "750 kcmil"]]);
    expect(editions[1]).toMatchObject({ edition: "2011", effect: "smaller" });
    expect(editions[1]?.changes[0]).toMatchObject({ evidenceBefore: "memory", evidenceAfter: "single" });
    for (const later of ["2014", "2017", "2020", "2023", "2026"])
      expect(short(editions, later, rules)).toEqual([]);
  });

  it("another rule is a policy, and one in force on both sides that acts on one alone is not", () => {
    const water = compare(waterPipingBondingJumper, {
      over: "editions",
      input: { system: "service", supply: copperSets(6, "500 kcmil"), conductor: copper },
    });
    expect(short(water, "2017", rules)).toEqual([
      ["policy", "row", "copper", "3/0 AWG", null],
      ["policy", "governs", null, "row", "one-eighth"],
      ["policy", "one-eighth", "copper", null, 375000],
    ]);
    expect(short(water, "2020", rules)).toEqual([
      ["policy", "governs", null, "one-eighth", "cap"],
      ["policy", "cap", "largest-size", null, 167800],
    ]);
    const small = compare(structuralMetalBondingJumper, {
      over: "editions",
      input: { system: "service", supply: copperSets(1, "500 kcmil"), conductor: copper },
    });
    for (const { edition } of small) expect(short(small, edition, rules)).toEqual([]);
    const limited = compare(equipmentGroundingConductor, {
      over: "editions",
      input: {
        circuits: [
          {
            device: { amperes: 4000 },
            conductors: { sets: [{ count: 1, size: "750 kcmil", material: "aluminum" }] },
          },
        ],
        conductor: { material: "aluminum" },
      },
      editions: ["2008", "2011"],
    });
    expect(limited.map(({ result }) => result?.governs)).toEqual(["cap", "rating-row"]);
    expect(short(limited, "2011", rules)).toEqual([
      ["value", "rating-row", null, "800 kcmil", "750 kcmil"],
      ["value", "governs", null, "cap", "rating-row"],
    ]);
  });

  it("a rule that shows and changes nothing is told, without an effect", () => {
    const jumper = compare(mainBondingJumper, {
      over: "editions",
      input: { supply: copperSets(3, "600 kcmil"), conductor: copper },
      editions: ["2011", "2014"],
    });
    expect(jumper[1]?.effect).toBe("same");
    expect(short(jumper, "2014", rules)).toEqual([["policy", "floor", "last-row", "3/0 AWG", null]]);
  });

  it("what another alternative of an open text would undo is a reading", () => {
    const jumper = compare(mainBondingJumper, {
      over: "editions",
      input: { supply: copperSets(1, "10 AWG"), conductor: copper },
    });
    expect(short(jumper, "2017", rules)).toEqual([
      ["reading", "governs", null, "row", "cap"],
      ["reading", "cap", "ungrounded-conductors", null, 10380],
      ["reading", "reading", "cap-in-2014", "absent", null],
      ["reading", "reading", "cap-on-small-supplies", null, "every-supply"],
    ]);
    const cap = jumper[3]?.changes.find(({ what }) => what === "cap");
    expect(cap?.because).toEqual({
      reading: "cap-in-2014",
      edition: "2014",
      chosen: "absent",
      alternative: "as-in-2017",
    });
    const chosen = compare(mainBondingJumper, {
      over: "editions",
      input: {
        code: { readings: { "cap-in-2014": "as-in-2017" } },
        supply: copperSets(1, "10 AWG"),
        conductor: copper,
      },
    });
    expect(short(chosen, "2017", ["value", "policy"])).toEqual([]);
    expect(short(chosen, "2014", rules)[0]).toEqual(["reading", "governs", null, "row", "cap"]);
  });

  it("the same rule elsewhere is a place, told once for each step", () => {
    const conductor = compare(groundingElectrodeConductor, {
      over: "editions",
      input: {
        system: "service",
        supply: copperSets(1, "500 kcmil"),
        conductor: copper,
        electrodes: [{ kind: "metal-water-pipe" }],
      },
      editions: ["2020", "2023"],
    });
    expect(short(conductor, "2023", [...rules, "place", "name"])).toEqual([
      ["place", "rule", null, "250.24(D)", "250.24(E)"],
    ]);
    const jumper = compare(mainBondingJumper, {
      over: "editions",
      input: { supply: copperSets(1, "500 kcmil"), conductor: copper },
      editions: ["2011", "2014"],
    });
    expect(short(jumper, "2014", [...rules, "place"])).toEqual([
      ["place", "sum", null, "Table 250.66", "Table 250.102(C)(1)"],
      ["place", "row", "copper", "Table 250.66", "Table 250.102(C)(1)"],
    ]);
  });

  it("names and evidence are told apart", () => {
    const jumper = compare(supplySideBondingJumper, {
      over: "editions",
      input: { supply: copperSets(1, "500 kcmil"), conductor: copper },
    });
    expect(short(jumper, "2011", ["name", "evidence"])).toEqual([
      [
        "name",
        "name",
        null,
        "equipment bonding jumper on the supply side of the service",
        "supply-side bonding jumper",
      ],
      ["evidence", "evidence", null, "carried", "single"],
    ]);
  });

  it("a limit by one conductor that became one by the set is explained by the reading that kept it", () => {
    const jumper = compare(equipmentBondingJumper, {
      over: "editions",
      input: {
        circuits: [
          {
            device: { amperes: 800 },
            conductors: { sets: [{ count: 2, size: "3 AWG", material: "copper" }] },
          },
        ],
        conductor: copper,
      },
      editions: ["2008", "2011"],
    });
    expect(short(jumper, "2011", rules)[0]).toEqual(["reading", "cap", "circuit-conductors", 52620, 105240]);
  });

  it("an edition that refuses the input says why and stands in its place", () => {
    const tie = compare(intersystemBondingConductor, { over: "editions", input: { termination: "busbar" } });
    expect(tie.map(({ effect, refused }) => [effect, refused?.map(({ code }) => code)])).toEqual([
      ["first", ["unknown-value"]],
      ["same", ["unknown-value"]],
      ["same", ["unknown-value"]],
      ["other-outcome", undefined],
      ["same", undefined],
      ["same", undefined],
      ["same", undefined],
    ]);
    expect(short(tie, "2017", ["policy"])).toEqual([
      ["policy", "outcome", null, "refused: unknown-value termination", "conductor"],
    ]);
    // Two editions that refuse alike have nothing to tell of each other.
    expect(tie.slice(0, 3).map(({ changes }) => changes)).toEqual([[], [], []]);
    expect(JSON.parse(JSON.stringify(tie))).toStrictEqual(tie);
  });

  it("a conductor that is no longer required is another outcome, not a smaller one", () => {
    const input = { termination: "apart", communicationsUnlikely: true } as const;
    const tie = compare(intersystemBondingConductor, { over: "editions", input });
    const excused = tie.filter(({ effect }) => effect === "other-outcome");
    expect(excused.map(({ edition, result }) => [edition, result?.outcome.kind])).toEqual([
      ["2017", "not-required"],
    ]);
    expect(short(tie, "2017", rules)).toEqual([
      ["policy", "outcome", null, "conductor", "not-required: communications-unlikely"],
    ]);
  });

  it("a cable tray is compared too", () => {
    const tray = compare(cableTrayAsEquipmentGroundingConductor, {
      over: "editions",
      input: { amperes: 800, metal: "aluminum" },
    });
    expect(tray.every(({ result }) => result?.outcome.kind === "permitted")).toBe(true);
    expect(short(tray, "2020", ["place"])).toEqual([
      ["place", "rule", null, "Table 392.60(A)", "Table 392.60(B)"],
    ]);
  });
});

describe("a request that is wrong", () => {
  const issues = (action: () => EditionComparison<ComparedResult>): readonly (readonly string[])[] => {
    try {
      action();
      return [];
    } catch (error) {
      if (error instanceof InputError) return error.issues.map(({ code, path }) => [code, path]);
      throw error;
    }
  };
  const input = { supply: copperSets(1, "500 kcmil"), conductor: copper };

  it("is refused with everything that is wrong", () => {
    const wrong = { over: "editions", input: 7, editions: ["2022", "2023"], more: 1 };
    expect(issues(() => compare(mainBondingJumper, wrong as never))).toEqual([
      ["unknown-key", "more"],
      ["unknown-value", "editions[0]"],
      ["wrong-type", "input"],
    ]);
    expect(issues(() => compare(mainBondingJumper, { over: "editions", input, editions: [] }))).toEqual([
      ["empty-list", "editions"],
    ]);
    const request = { over: "editions", input } as const;
    expect(issues(() => compare(undefined as never, request))).toEqual([["missing", "role"]]);
    expect(issues(() => compare("main-bonding-jumper" as never, request))).toEqual([["wrong-type", "role"]]);
    expect(issues(() => compare(mainBondingJumper, { input } as never))).toEqual([["missing", "over"]]);
    expect(issues(() => compare(mainBondingJumper, { over: "editions", input: null } as never))).toEqual([
      ["wrong-type", "input"],
    ]);
    expect(issues(() => compare(mainBondingJumper, { over: "editions" } as never))).toEqual([
      ["missing", "input"],
    ]);
    const code = { yaer: "2020" };
    expect(
      issues(() => compare(mainBondingJumper, { over: "editions", input: { ...input, code } as never })),
    ).toEqual([["unknown-key", "input.code.yaer"]]);
  });

  it("and a fault in the role itself is passed on", () => {
    const broken: typeof mainBondingJumper = {
      ...mainBondingJumper,
      decide: () => {
        throw new RangeError("broken");
      },
    };
    expect(() => compare(broken, { over: "editions", input })).toThrow(RangeError);
  });

  it("does not compile", () => {
    const supply = copperSets(1, "500 kcmil");
    // @ts-expect-error The conductor is missing.
    const missing = () => compare(mainBondingJumper, { over: "editions", input: { supply } });
    const occupancy = { system: "occupancy", supply, conductor: copper } as const;
    // @ts-expect-error Piping of one occupancy goes by a device.
    const other = () => compare(waterPipingBondingJumper, { over: "editions", input: occupancy });
    expect(missing()[0]?.refused?.map(({ path }) => path)).toEqual(["conductor"]);
    expect(other()[0]?.refused?.map(({ path }) => path)).toEqual(["supply", "deviceAmperes"]);
  });
});
