import { amend, type Code, editionYears, mainBondingJumper, prepare, type Supply, size } from "bondmil";
import { describe, expect, it } from "vitest";
import { plainly } from "../../src/asking/plainly.js";
import { everyRole } from "../laws/roles.js";

const supply: Supply = { sets: [{ count: 3, size: "600 kcmil", material: "copper" }] };
const conductor = { material: "copper" } as const;
const code = { year: "2023" } as const;

/** Changes every text, number and list inside of a value. */
function spoil(value: unknown): void {
  if (typeof value !== "object" || value === null || Object.isFrozen(value)) return;
  for (const [key, inner] of Object.entries(value)) {
    spoil(inner);
    (value as Record<string, unknown>)[key] = typeof inner === "number" ? -1 : "spoiled";
  }
  if (Array.isArray(value)) value.push("spoiled");
}

describe("what is kept", () => {
  it("cannot be spoiled through an input, of a full or of a prepared sizing", () => {
    const given = {
      code: { year: "2023", readings: { "cap-on-small-supplies": "every-supply" } },
      supply: { sets: [{ count: 1, size: "10 AWG", material: "copper" }] },
      conductor: { material: "copper" },
    } as const;
    const mine = structuredClone(given);
    const before = size(mainBondingJumper, mine);
    const request = {
      code: structuredClone(given.code),
      supplyMaterial: "copper",
      conductor: { material: "copper" },
    } as const;
    const prepared = prepare(mainBondingJumper, request);
    const areaOf10 = () => (prepared.kind === "by-area" ? prepared.requiredArea(10_380) : 0);
    expect(areaOf10()).toBe(10_380);
    spoil(mine);
    spoil(request);
    expect(size(mainBondingJumper, structuredClone(given))).toStrictEqual(before);
    expect(areaOf10()).toBe(10_380);
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
