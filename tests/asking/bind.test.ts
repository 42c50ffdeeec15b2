import {
  amend,
  bind,
  type Code,
  editionYears,
  type Input,
  InputError,
  mainBondingJumper,
  materials,
  prepare,
  type Supply,
  size,
} from "bondmil";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { plainly } from "../../src/asking/plainly.js";
import { supply as anySupply, readings } from "../laws/arbitraries.js";
import { everyRole } from "../laws/roles.js";

const supply: Supply = { sets: [{ count: 3, size: "600 kcmil", material: "copper" }] };
const conductor = { material: "copper" } as const;
const code = { year: "2023" } as const;

function pathsOf(run: () => unknown): readonly string[] {
  try {
    run();
  } catch (error) {
    if (error instanceof InputError) return error.issues.map(({ path, code: what }) => `${path}: ${what}`);
    throw error;
  }
  return [];
}

/** Changes every text, number and list inside of a value. */
function spoil(value: unknown): void {
  if (typeof value !== "object" || value === null || Object.isFrozen(value)) return;
  for (const [key, inner] of Object.entries(value)) {
    spoil(inner);
    (value as Record<string, unknown>)[key] = typeof inner === "number" ? -1 : "spoiled";
  }
  if (Array.isArray(value)) value.push("spoiled");
}

describe("bind", () => {
  it("gives the results of the full call, whatever is held, for every role", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...everyRole),
        fc.constantFrom(...editionYears),
        readings,
        anySupply,
        fc.constantFrom(...materials),
        (role, year, chosen, drawn, material) => {
          const own = role.by === "named-size" ? "copper" : material;
          const input = plainly(role, { code: { year, readings: chosen }, material: own, supply: drawn });
          const { code: held, ...rest } = input as { readonly code: Code };
          const bound = bind(role, { code: held });
          expect(bound(rest)).toStrictEqual(size(role, input));
          expect(bound(rest)).toStrictEqual(size(role, structuredClone(input)));
        },
      ),
      { numRuns: 1500 },
    );
  });

  it("refuses what is wrong in what is held at once, and the rest when it is given", () => {
    const held = { code: { year: "2018" }, conductor: { material: "steel" }, supplies: 1 } as never;
    expect([...pathsOf(() => bind(mainBondingJumper, held))].sort()).toEqual([
      "code.year: unknown-value",
      "conductor.material: unknown-value",
      "supplies: unknown-key",
    ]);
    expect(pathsOf(() => bind(mainBondingJumper, undefined as never))).toEqual([": missing"]);
    const jumper = bind(mainBondingJumper, { code, conductor });
    expect(pathsOf(() => jumper({} as never))).toEqual(["supply: missing"]);
    expect(pathsOf(() => jumper(7 as never))).toEqual([": wrong-type"]);
    expect(pathsOf(() => jumper({ supply, conductor } as never))).toEqual(["conductor: unknown-key"]);
  });
});

describe("what is kept", () => {
  it("cannot be spoiled through a code or a conductor that was held", () => {
    const held = { code: { year: "2023", readings: { "cap-on-small-supplies": "every-supply" } }, conductor };
    const mine = structuredClone(held) as Pick<Input<typeof mainBondingJumper>, "code" | "conductor">;
    const jumper = bind(mainBondingJumper, mine);
    const before = jumper({ supply });
    spoil(mine);
    expect(jumper({ supply })).toStrictEqual(before);
  });

  it.each(everyRole)("cannot be spoiled through a result of $id", (role) => {
    const ask = () => {
      const drawn: Supply = { sets: [{ count: 3, size: "600 kcmil", material: "aluminum" }] };
      return editionYears.map((year) =>
        size(role, plainly(role, { code: { year }, material: "copper", supply: drawn })),
      );
    };
    const before = structuredClone(ask());
    for (const result of ask()) spoil(result);
    expect(ask()).toStrictEqual(before);
  });

  it("cannot be spoiled through an amended code, which is frozen, or by changing a given one between two calls", () => {
    const amended = amend(code, {
      kind: "floor",
      role: "main-bonding-jumper",
      copper: "4/0 AWG",
      citation: { jurisdiction: "Example County", section: "Sec. 1" },
    });
    expect(Object.isFrozen(amended.amendments?.[0])).toBe(true);
    const given: { year: Code["year"]; amendments: NonNullable<Code["amendments"]> } = structuredClone(
      amended,
    ) as never;
    const small: Supply = { sets: [{ count: 1, size: "2 AWG", material: "copper" }] };
    const ask = () => size(mainBondingJumper, { code: given, supply: small, conductor }).requiredArea;
    expect(ask()).toBe(211_600);
    given.amendments = [];
    expect(ask()).toBe(16_510);
  });

  it("is nothing under a code that its owner may still change, asked of the role itself past every check", () => {
    const given: { year: Code["year"]; readings: NonNullable<Code["readings"]> } = {
      year: "2023",
      readings: {},
    };
    const small: Supply = { sets: [{ count: 1, size: "10 AWG", material: "copper" }] };
    const ask = () => mainBondingJumper.decide({ code: given, supply: small, conductor }).requiredArea;
    expect(ask()).toBe(10_380);
    given.readings = { "cap-on-small-supplies": "large-supplies-only" };
    expect(ask()).toBe(16_510);
    given.readings = {};
    expect(ask()).toBe(10_380);
  });

  it("gives way when there are many codes, and answers stay right", () => {
    const areaUnder = (number: number): number => {
      const jurisdiction = `County ${number}`;
      const copper = number % 2 === 0 ? "4/0 AWG" : "250 kcmil";
      const own = amend(code, {
        kind: "floor",
        role: "main-bonding-jumper",
        copper,
        citation: { jurisdiction, section: "1" },
      });
      const small: Supply = { sets: [{ count: 1, size: "2 AWG", material: "copper" }] };
      const result = size(mainBondingJumper, { code: own, supply: small, conductor });
      expect(result.steps.at(-2)?.citation.section).toBe(`County ${number}, 1`);
      return result.requiredArea;
    };
    const areas = Array.from({ length: 200 }, (_, number) => areaUnder(number));
    expect(areas).toEqual(areas.map((_, number) => (number % 2 === 0 ? 211_600 : 250_000)));
    expect(areaUnder(0)).toBe(211_600);
  });

  it("keeps the prepared form of one edition from another's", () => {
    const small = editionYears.map((year) =>
      prepare(mainBondingJumper, { code: { year }, supplyMaterial: "copper", conductor }),
    );
    const full = editionYears.map((year) => size(mainBondingJumper, { code: { year }, supply, conductor }));
    expect(small.map((one) => one.kind === "by-area" && one.requiredArea(1_800_000))).toEqual(
      full.map(({ requiredArea }) => requiredArea),
    );
  });
});
