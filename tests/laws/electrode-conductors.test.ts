import {
  areaOf,
  arrangementsOf,
  type ConductorSize,
  columnOf,
  conductorSizes,
  type EditionYear,
  type Electrode,
  editionYears,
  electrodeBondingJumper,
  electrodeRacewayBondingJumper,
  groundingElectrodeConductor,
  type Input,
  intersystemBondingConductor,
  type Material,
  type Role,
  type Supply,
  size,
  standardSizeFor,
  standardSizes,
} from "bondmil";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { material, supply, supplyOf, withLarger, year } from "./arbitraries.js";
import { asked, byHand, code, electrode, electrodes } from "./electrodes.js";

/** The roles whose laws are here. */
const here: readonly Role[] = [
  "grounding-electrode-conductor",
  "electrode-bonding-jumper",
  "electrode-raceway-bonding-jumper",
  "intersystem-bonding-conductor",
];

const required = (input: Input<typeof groundingElectrodeConductor>): number =>
  size(groundingElectrodeConductor, input).requiredArea;
const lastRow = (one: Material): number => areaOf(columnOf(one) === "copper" ? "3/0 AWG" : "250 kcmil");

const copper = { material: "copper" } as const;
const fixed = {
  code: { year: "2020" },
  supply: { sets: [{ count: 1, size: "500 kcmil", material: "copper" }] },
} as const;

describe.each(here)("%s", (role) => {
  it("is asked here", () => {
    const results = [
      size(groundingElectrodeConductor, {
        ...fixed,
        system: "service",
        conductor: copper,
        electrodes: [{ kind: "rod" }],
      }),
      size(electrodeBondingJumper, { ...fixed, conductor: copper, electrodes: [{ kind: "rod" }] }),
      size(electrodeRacewayBondingJumper, {
        code: fixed.code,
        ferrous: true,
        enclosed: [{ size: "4 AWG", material: "copper" }],
        conductor: copper,
      }),
      size(intersystemBondingConductor, { code: fixed.code, termination: "apart" }),
    ];
    expect(results.map((one) => one.role)).toContain(role);
  });
});

describe("a grounding electrode conductor", () => {
  it("stops at the last row, whatever the supply", () => {
    fc.assert(
      fc.property(asked, (input) => {
        expect(required(input)).toBeLessThanOrEqual(lastRow(input.conductor.material));
      }),
    );
  });

  it("follows the table over the whole grid of sizes and sets", () => {
    for (const edition of editionYears) {
      for (const supplied of ["copper", "aluminum"] as const) {
        for (const own of ["copper", "aluminum"] as const) {
          const wrong = standardSizes.flatMap((one) =>
            Array.from({ length: 20 }, (_, i) => i + 1).filter(
              (count) =>
                required(gridInput(edition, count, one, supplied, own)) !==
                byHand(count * areaOf(one), supplied, own),
            ),
          );
          expect(wrong).toEqual([]);
        }
      }
    }
  });

  it("never gets smaller by a larger supply", () => {
    fc.assert(
      fc.property(withLarger(supply), asked, ({ small, large }, input) => {
        expect(required({ ...input, supply: large })).toBeGreaterThanOrEqual(
          required({ ...input, supply: small }),
        );
      }),
      { numRuns: 2000 },
    );
  });

  it("never gets smaller by another electrode on it", () => {
    fc.assert(
      fc.property(asked, electrode, (input, more) => {
        const joined = { ...input, electrodes: [...input.electrodes, more] };
        expect(required(joined)).toBeGreaterThanOrEqual(required(input));
      }),
      { numRuns: 2000 },
    );
  });

  it("does not ask in which order its electrodes and sets are named", () => {
    fc.assert(
      fc.property(asked, fc.nat(), (input, turn) => {
        const turned = <T>(list: readonly T[]): readonly T[] => {
          const at = turn % list.length;
          return [...list.slice(at), ...list.slice(0, at)].reverse();
        };
        const result = size(groundingElectrodeConductor, input);
        const otherwise = { ...input, electrodes: turned(input.electrodes) };
        expect(size(groundingElectrodeConductor, otherwise)).toEqual(result);
        const sets = { sets: turned(input.supply.sets) };
        expect(required({ ...input, supply: sets })).toBe(result.requiredArea);
      }),
    );
  });

  it("takes the sizes for particular electrodes as limits, never as floors", () => {
    fc.assert(
      fc.property(asked, (input) => {
        const byTable = required({ ...input, electrodes: [{ kind: "metal-water-pipe" }] });
        const found = required(input);
        expect(found).toBeLessThanOrEqual(byTable);
        const capped = size(groundingElectrodeConductor, input).steps.find((step) => step.kind === "cap");
        expect(found).toBe(capped === undefined ? byTable : capped.requiredArea);
      }),
    );
  });

  it("of aluminum is never smaller than one of copper", () => {
    fc.assert(
      fc.property(
        asked,
        fc.constantFrom("aluminum" as const, "copper-clad aluminum" as const),
        (input, other) => {
          const inCopper = required({ ...input, conductor: copper });
          expect(required({ ...input, conductor: { material: other } })).toBeGreaterThanOrEqual(inCopper);
        },
      ),
    );
  });

  it("names exactly the readings that would change it, with what they ask for", () => {
    const alternatives = {
      "electrode-ceiling-for-several": ["all-of-a-kind", "one-electrode-only", "largest-of-kinds"],
      "electrode-ceiling-on-common-conductor": ["applies", "table-only"],
      "copper-clad-to-rods": ["not-named", "as-aluminum"],
    } as const;
    fc.assert(
      fc.property(asked, (input) => {
        const { requiredArea, readings } = size(groundingElectrodeConductor, input);
        for (const [id, words] of Object.entries(alternatives)) {
          const under = (word: string): number => {
            const chosen = { ...input.code.readings, [id]: word };
            return required({ ...input, code: { ...input.code, readings: chosen } });
          };
          const named = readings.find((reading) => reading.id === id);
          expect(named !== undefined).toBe(words.some((word) => under(word) !== requiredArea));
          for (const other of named?.otherwise ?? [])
            expect(other.requiredArea).toBe(under(other.alternative));
        }
      }),
      { numRuns: 2000 },
    );
  });

  it("leaves its input as it was, and is plain data", () => {
    fc.assert(
      fc.property(asked, (input) => {
        const before = JSON.stringify(input);
        const result = size(groundingElectrodeConductor, input);
        expect(JSON.stringify(input)).toBe(before);
        expect(JSON.parse(JSON.stringify(result))).toEqual(result);
        const { outcome } = result;
        expect(outcome).toMatchObject({ kind: "conductor", size: standardSizeFor(result.requiredArea) });
      }),
    );
  });
});

describe("an excuse from the electrode conductor", () => {
  it("of a building is given with a word, or a control transformer's refused, from one supply up and for every larger", () => {
    const asked = { conductor: copper, electrodes: [{ kind: "rod" }] } as const;
    for (const edition of editionYears) {
      for (const supplied of ["copper", "aluminum"] as const) {
        const supplies = [1, 2, 20].flatMap((count) =>
          standardSizes.map((size) => ({ count, size, material: supplied })),
        );
        const isWarned = (set: (typeof supplies)[number]): boolean =>
          size(groundingElectrodeConductor, {
            ...asked,
            code: { year: edition },
            system: "building",
            supply: { sets: [set] },
            onSingleBranchCircuit: true,
          }).cautions.some((one) => one.code === "larger-than-shared-branch-circuit");
        const isRefused = (set: (typeof supplies)[number]): boolean => {
          try {
            size(groundingElectrodeConductor, {
              ...asked,
              code: { year: edition },
              system: "separately-derived",
              supply: { sets: [set] },
              controlTransformer: true,
            });
            return false;
          } catch {
            return true;
          }
        };
        for (const is of [isWarned, isRefused]) {
          const found = supplies.map(is);
          for (const from of [0, 1, 2].map((i) => i * standardSizes.length)) {
            const line = found.slice(from, from + standardSizes.length);
            const first = line.indexOf(true);
            expect(first).toBeGreaterThanOrEqual(0);
            expect(line.slice(first).every(Boolean)).toBe(true);
          }
        }
        for (const set of supplies) if (isRefused(set)) expect(isWarned(set)).toBe(true);
      }
    }
  });
});

describe("several enclosures or systems", () => {
  const ofSystems = { system: "separately-derived", part: "common" } as const;
  const places = (shape: fc.Arbitrary<Supply>) =>
    fc
      .array(shape, { minLength: 2, maxLength: 4 })
      .map((all) => all.map((one, i) => ({ id: `D${i}`, supply: one })));

  it("have a common conductor at least as large as every tap, the one place and every individual conductor", () => {
    const one = fc.record({
      code,
      system: fc.constantFrom("service" as const, "building" as const),
      enclosures: places(supplyOf({ phases: 3 })),
      conductor: fc.record({ material }),
      electrodes,
    });
    fc.assert(
      fc.property(one, fc.boolean(), (input, fromDrop) => {
        const drop = input.system === "service" ? { fromDrop } : {};
        const [common, individual, atOnePlace] = arrangementsOf(groundingElectrodeConductor, {
          ...input,
          ...drop,
        }).arrangements.map(({ conductors }) => conductors.map(({ result }) => result.requiredArea));
        const [shared = 0, ...taps] = common ?? [];
        for (const tap of taps) expect(shared).toBeGreaterThanOrEqual(tap);
        for (const [i, own] of (individual ?? []).entries()) {
          expect(own).toBeLessThanOrEqual(atOnePlace?.[0] ?? 0);
          if (input.code.readings?.["electrode-ceiling-on-common-conductor"] !== "table-only")
            expect(taps[i]).toBe(own);
        }
        expect(atOnePlace?.[0]).toBeLessThanOrEqual(shared);
      }),
      { numRuns: 1000 },
    );
  });

  it("tap a common conductor of derived systems that is at least as large, unless electrodes limit it and not them", () => {
    fc.assert(
      fc.property(code, supply, fc.record({ material }), electrodes, (chosen, one, conductor, all) => {
        const shared = size(groundingElectrodeConductor, {
          ...ofSystems,
          code: chosen,
          conductor,
          electrodes: all,
        });
        const tap = {
          code: chosen,
          system: "separately-derived",
          part: "tap",
          conductor,
          electrodes: all,
        } as const;
        expect(required({ ...tap, supply: one })).toBeLessThanOrEqual(shared.requiredArea);
      }),
    );
  });

  it("share a conductor of derived systems that another electrode never makes smaller", () => {
    fc.assert(
      fc.property(code, fc.record({ material }), electrodes, electrode, (chosen, conductor, all, more) => {
        const shared = (list: readonly Electrode[]) =>
          size(groundingElectrodeConductor, { ...ofSystems, code: chosen, conductor, electrodes: list })
            .requiredArea;
        expect(shared([...all, more])).toBeGreaterThanOrEqual(shared(all));
        expect(shared([...all].reverse())).toBe(shared(all));
        expect(shared(all)).toBeLessThanOrEqual(lastRow(conductor.material));
      }),
    );
  });
});

describe("a jumper between electrodes", () => {
  it("is as large as an electrode conductor to the electrodes beyond it, or smaller to a supplemental rod", () => {
    fc.assert(
      fc.property(asked, fc.boolean(), (input, supplemental) => {
        const { code: chosen, conductor, electrodes: to, supply: one } = input;
        const jumper = size(electrodeBondingJumper, {
          code: chosen,
          supply: one,
          conductor,
          electrodes: to,
          supplemental,
        });
        const own = required({ code: chosen, system: "service", supply: one, conductor, electrodes: to });
        expect(jumper.requiredArea).toBe(own);
      }),
    );
  });

  it("at a raceway is the largest conductor inside, in any order", () => {
    const inside = fc.array(fc.record({ size: fc.constantFrom(...standardSizes), material }), {
      minLength: 1,
      maxLength: 5,
    });
    fc.assert(
      fc.property(year, inside, material, (edition, enclosed, own) => {
        const sized = (list: typeof enclosed) =>
          size(electrodeRacewayBondingJumper, {
            code: { year: edition },
            ferrous: true,
            enclosed: list,
            conductor: { material: own },
          });
        expect(sized(enclosed).requiredArea).toBe(Math.max(...enclosed.map((one) => areaOf(one.size))));
        expect(sized([...enclosed].reverse())).toEqual(sized(enclosed));
      }),
    );
  });

  it("at a busbar never gets smaller by a larger electrode conductor on it", () => {
    const edition = fc.constantFrom<EditionYear>("2017", "2020", "2023", "2026");
    const two = fc.tuple(fc.constantFrom(...conductorSizes), fc.constantFrom(...conductorSizes));
    fc.assert(
      fc.property(edition, two, (one, sizes) => {
        const [small, large] = [...sizes].sort((a, b) => areaOf(a) - areaOf(b));
        const tie = (onBusbar: ConductorSize = "6 AWG") =>
          size(intersystemBondingConductor, {
            code: { year: one },
            termination: "busbar",
            electrodeConductorOnBusbar: onBusbar,
          }).requiredArea;
        expect(tie(small)).toBeGreaterThanOrEqual(areaOf("6 AWG"));
        expect(tie(large)).toBeGreaterThanOrEqual(tie(small));
      }),
    );
  });
});

function gridInput(
  edition: EditionYear,
  count: number,
  size: ConductorSize,
  supplied: Material,
  own: Material,
): Input<typeof groundingElectrodeConductor> {
  return {
    code: { year: edition },
    system: "service",
    supply: { sets: [{ count, size, material: supplied }] },
    conductor: { material: own },
    electrodes: [{ kind: "metal-water-pipe" }],
  };
}
