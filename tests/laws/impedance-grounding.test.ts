/* Laws of impedance-grounding-conductor and impedance-bonding-jumper. */
import {
  areaOf,
  type ConductorColumn,
  type EditionYear,
  impedanceBondingJumper,
  impedanceGroundingConductor,
  type Material,
  type Supply,
  size,
} from "bondmil";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { supply, temperature, withLarger, year } from "./arbitraries.js";

const columns: readonly ConductorColumn[] = ["copper", "aluminum"];
const amperes = fc.integer({ min: 1, max: 500 });
/** The last row of the electrode conductor table. */
const last = { copper: 167800, aluminum: 250000 };

describe("the conductors of a grounding impedance", () => {
  const toImpedance = (edition: EditionYear, current: number, own: Material, column?: 60 | 75 | 90) =>
    size(impedanceGroundingConductor, {
      code: { year: edition },
      impedanceAmperes: current,
      conductor: { material: own },
      ...(column && { temperature: column }),
    });

  it("impedance-grounding-conductor: never falls as the current rises, nor below its least size", () => {
    fc.assert(
      fc.property(year, fc.constantFrom(...columns), amperes, amperes, temperature, (...drawn) => {
        const [edition, own, one, other, column] = drawn;
        const required = (current: number) =>
          toImpedance(edition, Math.min(current, 300), own, column).requiredArea;
        const [low, high] = [Math.min(one, other), Math.max(one, other)];
        expect(required(high)).toBeGreaterThanOrEqual(required(low));
        expect(required(low)).toBeGreaterThanOrEqual(areaOf(own === "copper" ? "8 AWG" : "6 AWG"));
        expect(
          toImpedance(edition, Math.min(high, 300), "aluminum", column).requiredArea,
        ).toBeGreaterThanOrEqual(toImpedance(edition, Math.min(high, 300), "copper", column).requiredArea);
      }),
    );
  });

  it("impedance-bonding-jumper: at the impedance contains, and ends with the last row of its table", () => {
    fc.assert(
      fc.property(year, fc.constantFrom(...columns), withLarger(supply), (edition, own, { small, large }) => {
        const required = (one: Supply) =>
          size(impedanceBondingJumper, {
            code: { year: edition },
            electrodeConductorAt: "impedance",
            supply: one,
            conductor: { material: own },
          }).requiredArea;
        expect(required(large)).toBeGreaterThanOrEqual(required(small));
        expect(required(large)).toBeLessThanOrEqual(last[own]);
      }),
    );
  });

  it("impedance-bonding-jumper: at the first disconnect equals the conductor to the impedance", () => {
    fc.assert(
      fc.property(year, fc.constantFrom(...columns), amperes, (edition, own, current) => {
        const conductor = toImpedance(edition, Math.min(current, 300), own);
        if (conductor.outcome.kind !== "conductor") throw new Error("a current that one conductor carries");
        const jumper = size(impedanceBondingJumper, {
          code: { year: edition },
          electrodeConductorAt: "first-disconnect",
          impedanceConductor: conductor.outcome.size,
          conductor: { material: own },
        });
        expect(jumper.outcome).toEqual(conductor.outcome);
      }),
    );
  });
});
