/* Laws of ampacities in their place, of devices and of dwellings. */
import {
  ampacityOf,
  currentCarryingConductors,
  deviceFor,
  dwellingConductor,
  editionYears,
  InputError,
  insulationTypes,
  requiredByLoad,
  standardSizes,
} from "bondmil";
import fc from "fast-check";
import { describe, expect, it } from "vitest";

type Question = Parameters<typeof ampacityOf>[0];
type Temperature = NonNullable<Question["place"]["ambient"]>;

const edition = fc.constantFrom(...editionYears);
const material = fc.constantFrom("copper", "aluminum", "copper-clad aluminum" as const);
const column = fc.constantFrom(60, 75, 90 as const);
const celsius = fc.double({ min: -30, max: 90, noNaN: true });
const question: fc.Arbitrary<Question> = fc.record({
  edition,
  conductor: fc.record({
    size: fc.constantFrom(...standardSizes),
    material,
    insulation: fc.constantFrom(...insulationTypes),
  }),
  place: fc.record({
    location: fc.constantFrom("dry", "damp", "wet" as const),
    ambient: fc.oneof(
      celsius.map((degrees): Temperature => ({ celsius: degrees })),
      fc.integer({ min: -20, max: 190 }).map((fahrenheit): Temperature => ({ fahrenheit })),
    ),
    method: fc.constantFrom("table", "equation" as const),
    currentCarrying: fc.integer({ min: 1, max: 100 }),
    racewayInches: fc.integer({ min: 1, max: 60 }),
  }),
  terminations: fc.oneof(
    column.map((marked): Question["terminations"] => ({ marked })),
    fc.integer({ min: 1, max: 300 }).map((circuitAmperes): Question["terminations"] => ({ circuitAmperes })),
  ),
});

/** Amperes; none where the question is refused, for then nothing may be carried. */
function amperesOf(one: Question): number {
  try {
    return ampacityOf(one).amperes;
  } catch (error) {
    if (error instanceof InputError) return 0;
    throw error;
  }
}

const hotter = ({ place, ...rest }: Question, degrees: number): Question => {
  const { ambient = { celsius: 30 } } = place;
  const other: Temperature =
    ambient.fahrenheit === undefined
      ? { celsius: ambient.celsius + degrees }
      : { fahrenheit: ambient.fahrenheit + degrees };
  return { ...rest, place: { ...place, ambient: other } };
};

/** Laws of one kind: what a change may do to the ampacity. */
const neverRaises = (name: string, change: (one: Question, by: number) => Question) =>
  it(`is never raised by ${name}`, () => {
    fc.assert(
      fc.property(question, fc.integer({ min: 1, max: 40 }), (one, by) => {
        expect(amperesOf(change(one, by))).toBeLessThanOrEqual(amperesOf(one) * (1 + 1e-12));
      }),
    );
  });

describe("the ampacity", () => {
  neverRaises("a hotter place", hotter);
  neverRaises("more conductors", ({ place, ...rest }, by) => ({
    ...rest,
    place: { ...place, currentCarrying: Math.min(100, (place.currentCarrying ?? 3) + by) },
  }));
  neverRaises("a longer raceway", ({ place, ...rest }, by) => ({
    ...rest,
    place: { ...place, racewayInches: (place.racewayInches ?? 1) + by },
  }));
  neverRaises("a roof", ({ place, ...rest }, by) => ({
    ...rest,
    place: { ...place, inchesAboveRoof: by / 2 },
  }));
  neverRaises("terminations at 60 C", (one) => ({ ...one, terminations: { marked: 60 } }));

  it("is never lowered by a greater distance from the roof", () => {
    fc.assert(
      fc.property(question, fc.double({ min: 0, max: 40, noNaN: true }), (one, inches) => {
        const at = (inchesAboveRoof: number) =>
          amperesOf({ ...one, place: { ...one.place, inchesAboveRoof } });
        expect(at(inches + 1)).toBeGreaterThanOrEqual(at(inches));
      }),
    );
  });

  it("is never lowered by a larger size", () => {
    fc.assert(
      fc.property(question, (one) => {
        const amperes = standardSizes.map((size) =>
          amperesOf({ ...one, conductor: { ...one.conductor, size } }),
        );
        expect(amperes).toEqual([...amperes].sort((a, b) => a - b));
      }),
    );
  });

  it("follows from its steps, each beginning where the one before ended", () => {
    let answered = 0;
    fc.assert(
      fc.property(question, (one) => {
        const before = structuredClone(one);
        if (amperesOf(one) === 0) return;
        answered += 1;
        const { steps, amperes } = ampacityOf(one);
        expect(one).toEqual(before);
        const changing = steps.flatMap((step) => ("before" in step ? [step] : []));
        const start = steps.find((step) => step.kind === "table")?.after;
        expect(changing.map((step) => step.before)).toEqual(
          [start, ...changing.map((step) => step.after)].slice(0, -1),
        );
        expect(changing.at(-1)?.after).toBe(amperes);
      }),
      { numRuns: 400 },
    );
    expect(answered).toBeGreaterThan(100);
  });

  it("is the same by the table and by the equation at the upper end of a band, as far as a whole percent goes", () => {
    for (const through of [10, 15, 20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 70, 75, 80, 85])
      for (const [insulation, rated] of [
        ["TW", 60],
        ["THW", 75],
        ["THHN", 90],
      ] as const) {
        if (through >= rated - 2) continue;
        const by = (method: "table" | "equation") => {
          const step = ampacityOf({
            edition: "2023",
            conductor: { size: "500 kcmil", material: "copper", insulation },
            place: { location: "dry", ambient: { celsius: through }, method },
            terminations: { marked: 90 },
          }).steps.find(({ kind }) => kind === "ambient");
          return step !== undefined && "after" in step ? step.after / 430 : Number.NaN;
        };
        const scale = { 60: 320, 75: 380, 90: 430 }[rated] / 430;
        expect(Math.abs(by("table") - by("equation"))).toBeLessThanOrEqual(0.005 * scale + 1e-9);
      }
  });
});

describe("the device", () => {
  const conductors = fc.record({
    size: fc.constantFrom(...standardSizes),
    material,
    sets: fc.integer({ min: 1, max: 12 }),
    amperes: fc.double({ min: 1, max: 700, noNaN: true }),
  });
  const serves = fc.constantFrom(
    "service-or-feeder",
    "branch-circuit",
    "branch-circuit-of-several-receptacles",
    "tap",
    "transformer-secondary" as const,
  );
  const device = fc.constantFrom("circuit-breaker", "fuse" as const);

  it("is never smaller for a larger ampacity", () => {
    fc.assert(
      fc.property(
        edition,
        conductors,
        serves,
        device,
        fc.double({ min: 0, max: 50, noNaN: true }),
        (...all) => {
          const [year, own, serving, kind, more] = all;
          const most = (amperes: number) =>
            deviceFor({ edition: year, conductors: { ...own, amperes }, serves: serving, device: kind }).most;
          expect(most(own.amperes + more)).toBeGreaterThanOrEqual(most(own.amperes));
        },
      ),
    );
  });

  it("is permitted up to the most, and not above it; never above the ampacity for taps, secondaries and above 800 A", () => {
    fc.assert(
      fc.property(edition, conductors, serves, device, (year, own, serving, kind) => {
        const ask = { edition: year, conductors: own, serves: serving, device: kind } as const;
        const { most, standard, ampacity } = deviceFor(ask);
        expect(deviceFor({ ...ask, rating: most }).permitted).toBe(true);
        expect(deviceFor({ ...ask, rating: most + 0.5 }).permitted).toBe(false);
        if (standard !== null) expect(standard).toBeLessThanOrEqual(most);
        if (serving === "tap" || serving === "transformer-secondary" || most > 800)
          expect(most).toBeLessThanOrEqual(ampacity);
      }),
    );
  });
});

describe("the conductors of a dwelling", () => {
  it("are never smaller for a larger rating, nor for a hotter place", () => {
    fc.assert(
      fc.property(
        edition,
        material,
        fc.integer({ min: 100, max: 399 }),
        fc.integer({ min: -10, max: 60 }),
        (year, metal, amperes, degrees) => {
          const area = (rating: number, at: number) => {
            const { size } = dwellingConductor({
              edition: year,
              amperes: rating,
              material: metal,
              system: "120/240-three-wire",
              conditions: {
                insulation: "XHHW-2",
                place: { location: "wet", ambient: { celsius: at } },
                terminations: { marked: 75 },
              },
            });
            return standardSizes.indexOf(size);
          };
          expect(area(amperes + 1, degrees)).toBeGreaterThanOrEqual(area(amperes, degrees));
          expect(area(amperes, degrees + 5)).toBeGreaterThanOrEqual(area(amperes, degrees));
        },
      ),
    );
  });
});

describe("what a load requires", () => {
  it("is at least the load, at most 125 percent of it, and more of what is continuous", () => {
    fc.assert(
      fc.property(
        edition,
        fc.constantFrom("service", "feeder", "branch-circuit" as const),
        fc.integer({ min: 1, max: 5000 }),
        fc.integer({ min: 0, max: 5000 }),
        (year, of, continuous, other) => {
          const required = (one: number, rest: number) =>
            requiredByLoad({ edition: year, of, continuous: one, other: rest }).conductors.amperes;
          const amperes = required(continuous, other);
          expect(amperes).toBeGreaterThanOrEqual(continuous + other);
          expect(amperes).toBeLessThanOrEqual(1.25 * (continuous + other));
          expect(required(continuous + 1, other)).toBeGreaterThan(amperes);
          const all = requiredByLoad({ edition: year, of, continuous, other, listedForAll: true });
          expect(all.conductors.amperes).toBe(all.load);
        },
      ),
    );
  });
});

describe("the count of conductors", () => {
  it("is that of its circuits together, and never smaller with harmonics", () => {
    const kind = fc.constantFrom(
      "two-wire",
      "three-wire-single-phase",
      "two-phases-and-neutral-of-wye",
      "three-wire-three-phase",
      "four-wire-wye" as const,
    );
    const circuits = fc.array(fc.record({ kind, count: fc.integer({ min: 1, max: 9 }) }), {
      minLength: 1,
      maxLength: 5,
    });
    fc.assert(
      fc.property(edition, circuits, (year, all) => {
        const count = (some: typeof all, mostlyNonlinear: boolean) =>
          currentCarryingConductors({
            edition: year,
            circuits: some.map((one) => ({ ...one, mostlyNonlinear })),
          }).count;
        expect(count(all, false)).toBe(all.reduce((sum, one) => sum + count([one], false), 0));
        expect(count(all, true)).toBeGreaterThanOrEqual(count(all, false));
      }),
    );
  });
});
