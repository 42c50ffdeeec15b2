import { readFileSync } from "node:fs";
import {
  areaOf,
  type ConductorSize,
  explain,
  InputError,
  type ShortTimeWithstand,
  type ShortTimeWithstandInput,
  shortTimeWithstand,
  standardSizes,
} from "bondmil";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkWithstand } from "../../tables/tools/generator/emit-withstand.js";
import type { WithstandFile } from "../../tables/tools/generator/withstand-file.js";

const readJson = <T>(name: string): T =>
  JSON.parse(readFileSync(new URL(`../../tables/${name}.json`, import.meta.url), "utf8")) as T;
const file = readJson<WithstandFile>("short-time-withstand");

/** Five-second currents of one ampere per 42.25 circular mils; no outside figure. */
const fiveSecondAmperes: readonly (readonly [ConductorSize, number])[] = [
  ["6 AWG", 621],
  ["4 AWG", 988],
  ["2 AWG", 1571],
  ["1/0 AWG", 2499],
  ["3/0 AWG", 3972],
  ["4/0 AWG", 5008],
  ["250 kcmil", 5917],
  ["500 kcmil", 11834],
];

const insulated = { initial: 75, final: 150 };
const copper = (size: (typeof standardSizes)[number]) => ({ size, material: "copper" }) as const;
const ofArea = (areaCircularMils: number, material: "copper" | "aluminum" = "copper") => ({
  areaCircularMils,
  material,
});

// Published constants, coefficients and withstands are in corpus/references/short-time-withstand.json.
describe("the rule of thumb beside the formula", () => {
  it("is one ampere for 42.25 circular mils for five seconds from 75 C to 150 C", () => {
    const { crossCheck } = shortTimeWithstand({
      conductor: ofArea(42_250),
      temperatures: insulated,
      fault: { amperes: 1000, seconds: 5 },
    });
    expect(crossCheck).toEqual({
      circularMilsPerAmpere: 42.25,
      seconds: 5,
      initial: 75,
      final: 150,
      amperes: 1000,
      capacity: 5_000_000,
      sameTemperatures: true,
      restsOn: "one-practitioner-source",
      evidence: "carried",
    });
  });

  it.each(fiveSecondAmperes)("%s: %d A for five seconds, arithmetic from that rule", (size, amperes) => {
    const { crossCheck } = shortTimeWithstand({
      conductor: { size, material: "copper" },
      temperatures: { initial: 40, final: 250 },
      fault: { letThrough: 1 },
    });
    expect(Math.round(crossCheck?.amperes ?? 0)).toBe(amperes);
    expect(crossCheck?.sameTemperatures).toBe(false);
  });
});

describe("a short-time withstand", () => {
  const result = shortTimeWithstand({
    conductor: copper("4 AWG"),
    temperatures: insulated,
    fault: { amperes: 5000, seconds: 0.25 },
  });

  it("is capacity, let-through and their ratio", () => {
    expect(result).toMatchObject({ size: "4 AWG", area: 41740, material: "copper", temperatures: insulated });
    expect(result.capacity).toBeCloseTo(4_883_238, 0);
    expect(result.letThrough).toBe(6_250_000);
    expect(result.ratio).toBe(result.capacity / result.letThrough);
    expect(result.withstands).toBe(false);
    expect([result.requiredArea, result.smallestSize]).toEqual([47222, "3 AWG"]);
  });

  it("shows its steps with the place of each", () => {
    expect(result.steps.map((step) => [step.kind, step.citation?.section, step.citation?.evidence])).toEqual([
      ["heat", "Table 240.92(B)", "single"],
      ["capacity", "Table 240.92(B)", "single"],
      ["let-through", "Table 240.92(B)", "single"],
      ["required-area", "Table 240.92(B)", "single"],
      ["standard-size", "Chapter 9 Table 8", "bracketed"],
    ]);
    expect(result.evidence).toBe("bracketed");
  });

  it("is plain data that shares nothing with the input", () => {
    const input = {
      conductor: copper("4 AWG"),
      temperatures: { initial: 75, final: 150 },
      fault: { amperes: 5000, seconds: 0.25 },
    };
    const before = structuredClone(input);
    const made = shortTimeWithstand(input);
    expect(JSON.parse(JSON.stringify(made))).toEqual(made);
    expect(made.temperatures).not.toBe(input.temperatures);
    expect(input).toEqual(before);
  });

  it("carries its cautions, and which one of the two on asymmetry", () => {
    const cautionsOf = (fault: ShortTimeWithstandInput["fault"]) =>
      shortTimeWithstand({ conductor: ofArea(1000), temperatures: insulated, fault }).cautions;
    const always = ["never-lowers-the-code-minimum", "not-the-code-size"];
    expect(cautionsOf({ amperes: 100, seconds: 1 })).toEqual([...always, "asymmetry-not-included"]);
    expect(cautionsOf({ letThrough: 10_000 })).toEqual([...always, "let-through-as-stated"]);
  });

  it("takes a stated let-through without citing the code for it", () => {
    const { steps, letThrough } = shortTimeWithstand({
      conductor: copper("10 AWG"),
      temperatures: insulated,
      fault: { letThrough: 300_000 },
    });
    expect(letThrough).toBe(300_000);
    expect(steps.find(({ kind }) => kind === "let-through")).toEqual({
      kind: "let-through",
      amperes: null,
      seconds: null,
      letThrough: 300_000,
      citation: null,
    });
  });

  it("gives an area and no size above the largest standard conductor", () => {
    const large = shortTimeWithstand({
      conductor: copper("2000 kcmil"),
      temperatures: insulated,
      fault: { amperes: 200_000, seconds: 1 },
    });
    expect(large.smallestSize).toBeNull();
    expect(large.requiredArea).toBe(3_777_709);
    expect(large.steps.map(({ kind }) => kind)).not.toContain("standard-size");
    expect(large.evidence).toBe("single");
  });

  it("knows no cross-check for aluminum", () => {
    const aluminum = shortTimeWithstand({
      conductor: { size: "4/0 AWG", material: "aluminum" },
      temperatures: insulated,
      fault: { amperes: 12_000, seconds: 0.2 },
    });
    expect(aluminum.crossCheck).toBeNull();
    expect(explain(aluminum)).not.toContain("practitioner");
  });

  it("is told in sentences, the ratio never rounded up to 1", () => {
    const told = explain(result);
    expect(told).toContain("41,740 cmil takes 4,883,200 A2s [Table 240.92(B)].");
    expect(told).toContain("That requires 47,222 cmil [Table 240.92(B)].");
    expect(told).toContain("from one practitioner source");
    expect(told).toContain("never permit a smaller one");
    const short = shortTimeWithstand({
      conductor: ofArea(41_740),
      temperatures: insulated,
      fault: { letThrough: result.capacity * 1.00001 },
    });
    expect(explain(short)).toContain("Does not withstand the fault: ratio 0.999.");
  });
});

const material = fc.constantFrom("copper" as const, "aluminum" as const);
const temperatures = fc
  .record({ initial: fc.integer({ min: -50, max: 400 }), rise: fc.integer({ min: 1, max: 250 }) })
  .map(({ initial, rise }) => ({ initial, final: initial + rise }));
const timed = fc.record({
  amperes: fc.double({ min: 1, max: 1_000_000, noNaN: true }),
  seconds: fc.double({ min: 0.1, max: 5, noNaN: true }),
});
const stated = fc.record({ letThrough: fc.double({ min: 1, max: 1e12, noNaN: true }) });
const bySize = fc.record({ size: fc.constantFrom(...standardSizes), material });
const byArea = fc.record({ areaCircularMils: fc.integer({ min: 1, max: 100_000_000 }), material });
const conductor: fc.Arbitrary<ShortTimeWithstandInput["conductor"]> = fc.oneof(bySize, byArea);
const fault: fc.Arbitrary<ShortTimeWithstandInput["fault"]> = fc.oneof(timed, stated);
const request: fc.Arbitrary<ShortTimeWithstandInput> = fc.record({
  conductor,
  temperatures,
  fault,
});

const changed = (
  input: ShortTimeWithstandInput,
  change: Partial<ShortTimeWithstandInput>,
): ShortTimeWithstand => shortTimeWithstand({ ...input, ...change });

describe("laws of the short-time withstand", () => {
  it("the smallest area withstands, and one circular mil less does not", () => {
    fc.assert(
      fc.property(request, (input) => {
        const { requiredArea, smallestSize, letThrough } = shortTimeWithstand(input);
        const capacityAt = (area: number): number =>
          shortTimeWithstand({ ...input, conductor: ofArea(1, input.conductor.material) }).capacity *
          area *
          area;
        expect(capacityAt(requiredArea)).toBeGreaterThanOrEqual(letThrough * (1 - 1e-14));
        if (requiredArea > 1) expect(capacityAt(requiredArea - 1)).toBeLessThan(letThrough * (1 + 1e-14));
        if (requiredArea <= 100_000_000) {
          const at = (area: number) =>
            changed(input, { conductor: ofArea(area, input.conductor.material) }).ratio;
          expect(at(requiredArea)).toBeGreaterThanOrEqual(1);
          if (requiredArea > 1) expect(at(requiredArea - 1)).toBeLessThan(1);
        }
        if (smallestSize === null) {
          expect(requiredArea).toBeGreaterThan(2_000_000);
          return;
        }
        const chosen = changed(input, {
          conductor: { size: smallestSize, material: input.conductor.material },
        });
        expect(chosen.withstands).toBe(true);
        const below = standardSizes[standardSizes.indexOf(smallestSize) - 1];
        if (below !== undefined) expect(areaOf(below)).toBeLessThan(requiredArea);
      }),
      { numRuns: 1000 },
    );
  });

  it("a let-through of just the capacity needs just that area, and the next number up one circular mil more", () => {
    fc.assert(
      fc.property(temperatures, fc.integer({ min: 1, max: 2_000_000 }), material, (between, area, metal) => {
        const at = (letThrough: number) =>
          shortTimeWithstand({
            conductor: ofArea(area, metal),
            temperatures: between,
            fault: { letThrough },
          });
        const { capacity } = at(1);
        expect(at(capacity)).toMatchObject({ ratio: 1, withstands: true, requiredArea: area });
        const above = at(capacity * (1 + Number.EPSILON));
        expect(above).toMatchObject({ withstands: false, requiredArea: area + 1 });
        expect(above.ratio).toBeLessThan(1);
      }),
      { numRuns: 1000 },
    );
  });

  it("withstands exactly where the ratio is at least 1", () => {
    fc.assert(
      fc.property(request, (input) => {
        const { ratio, withstands, area, requiredArea } = shortTimeWithstand(input);
        expect(withstands).toBe(ratio >= 1);
        expect(withstands).toBe(area >= requiredArea);
      }),
      { numRuns: 1000 },
    );
  });

  it("more area, less time, a cooler start or a hotter end never make it worse", () => {
    fc.assert(
      fc.property(request, timed, fc.integer({ min: 1, max: 50 }), (any, fault, more) => {
        const area = Math.min(shortTimeWithstand(any).area, 99_999_000);
        const input = { ...any, fault, conductor: ofArea(area, any.conductor.material) };
        const { ratio } = shortTimeWithstand(input);
        const { initial, final } = input.temperatures;
        const better = [
          { conductor: ofArea(area + more, input.conductor.material) },
          { fault: { ...fault, seconds: Math.max(0.1, fault.seconds - more / 20) } },
          { fault: { ...fault, amperes: Math.max(1, fault.amperes - more) } },
          ...(final + more <= 657 ? [{ temperatures: { initial, final: final + more } }] : []),
          ...(initial - more >= -50 ? [{ temperatures: { initial: initial - more, final } }] : []),
        ];
        for (const change of better) expect(changed(input, change).ratio).toBeGreaterThanOrEqual(ratio);
      }),
      { numRuns: 1000 },
    );
  });

  it("aluminum never withstands more than copper", () => {
    fc.assert(
      fc.property(temperatures, fc.integer({ min: 1, max: 2_000_000 }), (between, area) => {
        const [cu, al] = (["copper", "aluminum"] as const).map((metal) =>
          shortTimeWithstand({
            conductor: ofArea(area, metal),
            temperatures: between,
            fault: { letThrough: 1 },
          }),
        );
        expect(cu?.capacity).toBeGreaterThan(al?.capacity ?? Number.POSITIVE_INFINITY);
      }),
    );
  });
});

const good = {
  conductor: copper("4 AWG"),
  temperatures: insulated,
  fault: { amperes: 5000, seconds: 0.25 },
};

function issuesOf(input: unknown): readonly string[] {
  try {
    shortTimeWithstand(input as ShortTimeWithstandInput);
  } catch (error) {
    if (error instanceof InputError) return error.issues.map(({ code, path }) => `${code} ${path}`);
    throw error;
  }
  return [];
}

describe("a wrong input of the short-time withstand", () => {
  it.each<readonly [string, unknown, readonly string[]]>([
    ["nothing", undefined, ["missing "]],
    ["an empty input", {}, ["missing conductor", "missing temperatures", "missing fault"]],
    [
      "no temperatures, which have no default",
      { ...good, temperatures: {} },
      ["missing temperatures.initial", "missing temperatures.final"],
    ],
    [
      "a final temperature at the initial one",
      { ...good, temperatures: { initial: 75, final: 75 } },
      ["out-of-range temperatures.final"],
    ],
    [
      "a final temperature above melting",
      { ...good, temperatures: { initial: 75, final: 1084 } },
      ["out-of-range temperatures.final"],
    ],
    [
      "a final temperature above the melting point of aluminum",
      {
        ...good,
        conductor: { size: "4 AWG", material: "aluminum" },
        temperatures: { initial: 75, final: 658 },
      },
      ["out-of-range temperatures.final"],
    ],
    [
      "an initial temperature far below any climate",
      { ...good, temperatures: { initial: -51, final: 150 } },
      ["out-of-range temperatures.initial"],
    ],
    [
      "temperatures that are no numbers",
      { ...good, temperatures: { initial: "75", final: Number.NaN } },
      ["wrong-type temperatures.initial", "out-of-range temperatures.final"],
    ],
    [
      "a time below 0.1 s",
      { ...good, fault: { amperes: 5000, seconds: 0.09 } },
      ["out-of-range fault.seconds"],
    ],
    [
      "a time above 5 s",
      { ...good, fault: { amperes: 5000, seconds: 5.01 } },
      ["out-of-range fault.seconds"],
    ],
    ["no time", { ...good, fault: { amperes: 5000 } }, ["missing fault.seconds"]],
    [
      "a fault of zero",
      { ...good, fault: { amperes: 0, seconds: 0 } },
      ["not-positive fault.amperes", "not-positive fault.seconds"],
    ],
    [
      "a fault beyond any system",
      { ...good, fault: { amperes: 1_000_001, seconds: 1 } },
      ["out-of-range fault.amperes"],
    ],
    [
      "a let-through beyond any fault",
      { ...good, fault: { letThrough: 5.1e12 } },
      ["out-of-range fault.letThrough"],
    ],
    [
      "both kinds of fault",
      { ...good, fault: { letThrough: 1000, amperes: 5000, seconds: 0.25 } },
      ["unknown-key fault.amperes", "unknown-key fault.seconds"],
    ],
    [
      "both kinds of conductor",
      { ...good, conductor: { size: "4 AWG", areaCircularMils: 41740, material: "copper" } },
      ["unknown-key conductor.size"],
    ],
    [
      "copper-clad aluminum, whose constants are not stated",
      { ...good, conductor: { size: "4 AWG", material: "copper-clad aluminum" } },
      ["unknown-value conductor.material"],
    ],
    [
      "a size that could be two",
      { ...good, conductor: { size: "4", material: "copper" } },
      ["unknown-size conductor.size"],
    ],
    [
      "a fraction of a circular mil",
      { ...good, conductor: ofArea(41740.5) },
      ["not-a-whole-number conductor.areaCircularMils"],
    ],
    [
      "an area beyond any bar",
      { ...good, conductor: ofArea(100_000_001) },
      ["out-of-range conductor.areaCircularMils"],
    ],
    [
      "several things at once",
      { conductor: ofArea(-1), temperatures: { initial: 75 }, fault: { amperes: 5000, seconds: 0.01 } },
      ["not-positive conductor.areaCircularMils", "missing temperatures.final", "out-of-range fault.seconds"],
    ],
  ])("is refused: %s", (_, input, issues) => {
    expect(issuesOf(input)).toEqual(issues);
  });

  it("is sent to the device's let-through below 0.1 s", () => {
    expect(() => shortTimeWithstand({ ...good, fault: { amperes: 5000, seconds: 0.05 } })).toThrow(
      "letThrough",
    );
  });

  it("takes the ends of the range", () => {
    for (const seconds of [0.1, 5]) expect(issuesOf({ ...good, fault: { amperes: 1, seconds } })).toEqual([]);
    expect(issuesOf({ ...good, temperatures: { initial: 1082, final: 1083 } })).toEqual([]);
    expect(issuesOf({ ...good, temperatures: { initial: -50, final: -49 } })).toEqual([]);
    const aluminum = { ...good, conductor: { ...good.conductor, material: "aluminum" } };
    expect(issuesOf({ ...aluminum, temperatures: { initial: 656, final: 657 } })).toEqual([]);
    expect(issuesOf({ ...aluminum, temperatures: { initial: 657, final: 658 } })).toEqual([
      "out-of-range temperatures.initial",
      "out-of-range temperatures.final",
    ]);
  });
});

describe("the file of constants", () => {
  it("holds no fault, and is refused when the metals are swapped or the limits leave nothing", () => {
    expect(checkWithstand(file)).toEqual([]);
    const { copper: cu, aluminum: al } = file.metals;
    expect(checkWithstand({ ...file, metals: { copper: al, aluminum: cu } })).toEqual([
      "aluminum withstands as much as copper",
    ]);
    const limits = { ...file.limits, mostSeconds: 0.1, lowestInitial: -230 };
    expect(checkWithstand({ ...file, limits })).toEqual([
      "no time is left between the limits",
      "aluminum: the lowest temperature has no logarithm",
    ]);
  });
});
