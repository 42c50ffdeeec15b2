import { InputError, transformerCurrent } from "bondmil";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { TransformerRating } from "../../src/supply/index.js";

const rating = fc.record({
  kva: fc.double({ min: 0.05, max: 5000, noNaN: true }),
  volts: fc.double({ min: 24, max: 1000, noNaN: true }),
});

describe("the current of a transformer", () => {
  it("is its power by its voltage, in three phases by the root of three too", () => {
    // Catalog values stand in corpus/references/transformer-currents.json.
    expect(transformerCurrent({ kva: 25, volts: 250, phases: 1 })).toBe(100);
    expect(transformerCurrent({ kva: 75, volts: 208, phases: 3 })).toBeCloseTo(208.18, 2);
  });

  it("gives the power back", () => {
    fc.assert(
      fc.property(rating, ({ kva, volts }) => {
        const one = transformerCurrent({ kva, volts, phases: 1 });
        const three = transformerCurrent({ kva, volts, phases: 3 });
        expect((one * volts) / 1000).toBeCloseTo(kva, 6);
        expect(one / three).toBeCloseTo(Math.sqrt(3), 9);
      }),
    );
  });

  it("rises with the power and falls with the voltage", () => {
    fc.assert(
      fc.property(rating, fc.double({ min: 1.001, max: 10, noNaN: true }), ({ kva, volts }, times) => {
        const amperes = transformerCurrent({ kva, volts, phases: 3 });
        expect(transformerCurrent({ kva: kva * times, volts, phases: 3 })).toBeGreaterThan(amperes);
        expect(transformerCurrent({ kva, volts: volts * times, phases: 3 })).toBeLessThan(amperes);
      }),
    );
  });

  it.each<[string, unknown, readonly string[]]>([
    ["nothing", undefined, [": missing"]],
    [
      "everything wrong",
      { kva: 0, volts: "208", phases: 2 },
      ["kva: not-positive", "volts: wrong-type", "phases: unknown-value"],
    ],
    ["no phases", { kva: 45, volts: 208 }, ["phases: missing"]],
    ["a member too many", { kva: 45, volts: 208, phases: 3, impedance: 5 }, ["impedance: unknown-key"]],
  ])("is refused for %s", (_, input, faults) => {
    let found: unknown;
    try {
      transformerCurrent(input as TransformerRating);
    } catch (error) {
      if (error instanceof InputError) found = error.issues.map(({ path, code }) => `${path}: ${code}`);
    }
    expect(found).toEqual(faults);
  });
});
