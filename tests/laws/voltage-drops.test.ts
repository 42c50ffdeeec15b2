import {
  areaOf,
  type ConductorSize,
  editionYears,
  equipmentGroundingConductor,
  InputError,
  size as sized,
  type VoltageDrop,
  type VoltageDropQuestion,
  voltageDrop,
} from "bondmil";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { conductorImpedance } from "../../src/edition/tables/conductor-impedance.generated.js";

const sizes = conductorImpedance["2023"].rows
  .filter(({ aluminumPvc }) => aluminumPvc !== null)
  .map(({ size }) => size);

// Below a power factor of 0.12 the reactance decides, and it does not always fall with the size.
const impedance: fc.Arbitrary<VoltageDropQuestion["impedance"]> = fc.oneof(
  fc.record({
    from: fc.constant("table-9" as const),
    conduit: fc.constantFrom("pvc", "aluminum", "steel"),
    powerFactor: fc.double({ min: 0.12, max: 1, noNaN: true }),
  } as const),
  fc.record({ from: fc.constant("table-8" as const), celsius: fc.integer({ min: -20, max: 120 }) }),
);

const question: fc.Arbitrary<VoltageDropQuestion> = fc.record({
  edition: fc.constantFrom(...editionYears),
  current: fc.constantFrom("three-phase", "single-phase"),
  volts: fc.constantFrom(120, 208, 240, 480),
  amperes: fc.integer({ min: 1, max: 1000 }),
  feet: fc.integer({ min: 1, max: 2000 }),
  conductors: fc.record({
    sets: fc.integer({ min: 1, max: 4 }),
    size: fc.constantFrom(...sizes),
    material: fc.constantFrom("copper", "aluminum"),
  } as const),
  impedance,
} as const);

function answered(asked: VoltageDropQuestion): VoltageDrop | null {
  try {
    return voltageDrop(asked);
  } catch (error) {
    if (error instanceof InputError) return null;
    throw error;
  }
}

describe("a voltage drop", () => {
  it("is not larger with a larger conductor or one more set", () => {
    fc.assert(
      fc.property(question, fc.constantFrom(...sizes), (asked, other) => {
        const { conductors } = asked;
        const dropOf = (size: ConductorSize, sets = conductors.sets ?? 1) =>
          voltageDrop({ ...asked, conductors: { ...conductors, size, sets } }).volts;
        const isLarger = areaOf(other) >= areaOf(conductors.size);
        const [small, large] = isLarger ? [conductors.size, other] : [other, conductors.size];
        expect(dropOf(large)).toBeLessThanOrEqual(dropOf(small) * (1 + 1e-12));
        expect(dropOf(small, (conductors.sets ?? 1) + 1)).toBeLessThan(dropOf(small));
      }),
    );
  });

  it("goes with the current and the length, and is larger in aluminum and in two wires than in three phases", () => {
    fc.assert(
      fc.property(question, (asked) => {
        const { volts } = voltageDrop(asked);
        expect(voltageDrop({ ...asked, amperes: 2 * asked.amperes }).volts).toBeCloseTo(2 * volts, 6);
        expect(voltageDrop({ ...asked, feet: 3 * asked.feet }).volts / volts).toBeCloseTo(3, 9);
        const of = (material: "copper" | "aluminum", current: "three-phase" | "single-phase") =>
          voltageDrop({ ...asked, current, conductors: { ...asked.conductors, material } }).volts;
        expect(of("copper", "three-phase")).toBeLessThan(of("aluminum", "three-phase"));
        expect(of("copper", "three-phase")).toBeLessThan(of("copper", "single-phase"));
      }),
    );
  });

  it("is kept by what is said to keep it, has no smaller size that does, and never has less metal", () => {
    fc.assert(
      fc.property(question, fc.double({ min: 0.2, max: 10, noNaN: true }), (asked, permittedPercent) => {
        const { conductors } = asked;
        const own = (conductors.sets ?? 1) * areaOf(conductors.size);
        const mostSets = (conductors.sets ?? 1) + 2;
        const answer = answered({ ...asked, permittedPercent, mostSets });
        for (const { sets, size, percent, increased } of answer?.sufficient ?? []) {
          const again = voltageDrop({ ...asked, conductors: { ...conductors, sets, size } });
          expect(again.percent).toBe(percent);
          expect(percent).toBeLessThanOrEqual(permittedPercent);
          expect(sets * areaOf(size)).toBeGreaterThanOrEqual(own);
          expect(increased).toBe(sets * areaOf(size) > own);
          const smaller = sizes.filter(
            (one) =>
              areaOf(one) < areaOf(size) &&
              sets * areaOf(one) >= own &&
              (sets === 1 || areaOf(one) >= areaOf("1/0 AWG")),
          );
          for (const one of smaller) {
            const drop = voltageDrop({ ...asked, conductors: { ...conductors, sets, size: one } });
            expect(drop.percent).toBeGreaterThan(permittedPercent);
          }
        }
      }),
      { numRuns: 50 },
    );
  });

  it("never makes an equipment grounding conductor smaller where it increases the ungrounded ones", () => {
    fc.assert(
      fc.property(question, fc.constantFrom(20, 100, 400, 1000), (asked, amperes) => {
        const [first] = answered({ ...asked, permittedPercent: 3 })?.sufficient ?? [];
        if (first === undefined) return;
        const required = (circuit: Partial<typeof first.circuit>) =>
          sized(equipmentGroundingConductor, {
            code: { year: asked.edition },
            circuits: [{ device: { amperes }, ...circuit }],
            conductor: { material: asked.conductors.material },
          }).requiredArea ?? 0;
        const { conductors } = first.circuit.increasedFrom;
        expect(required(first.circuit)).toBeGreaterThanOrEqual(required({ conductors }));
      }),
      { numRuns: 50 },
    );
  });
});
