import { type Input, type mainBondingJumper, type SizingResult, type Supply, size } from "bondmil";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { request, spelledOut } from "./arbitraries.js";
import { jumpers } from "./roles.js";

/** Everything in a result but the supply as it was written and the order in which conductors were met. */
function apartFromOrder({ steps, ...result }: SizingResult): unknown {
  return {
    ...result,
    steps: steps.map((step) => {
      if (step.kind === "sum") return { ...step, supply: null };
      if (step.kind !== "assumed") return step;
      const conductors = new Set(
        // Of alike conductors the first that is met lends its name, aluminum or copper-clad aluminum.
        step.conductors.map((one) => JSON.stringify({ ...one, installed: one.installed.size })),
      );
      return { ...step, conductors };
    }),
  };
}

describe.each(jumpers)("order: $id", (role) => {
  it("does not depend on the order of the sets", () => {
    const shuffled = request.chain((input) => {
      const { sets } = input.supply;
      return fc
        .shuffledSubarray([...sets], { minLength: sets.length })
        .map((other): readonly [Input<typeof mainBondingJumper>, Supply] => [input, { sets: other }]);
    });
    fc.assert(
      fc.property(shuffled, ([input, supply]) => {
        expect(apartFromOrder(size(role, { ...input, supply }))).toEqual(apartFromOrder(size(role, input)));
      }),
      { numRuns: 500 },
    );
  });

  it("does not depend on the order of the phases", () => {
    const mirror = ({ sets }: Supply): Supply => ({
      sets: sets.map((set) =>
        set.phases !== undefined ? { ...set, phases: [...set.phases].reverse() } : set,
      ),
    });
    fc.assert(
      fc.property(request, (input) => {
        const other = size(role, { ...input, supply: mirror(input.supply) });
        expect(apartFromOrder(other)).toEqual(apartFromOrder(size(role, input)));
      }),
      { numRuns: 500 },
    );
  });

  it("takes one entry of n sets for n entries", () => {
    fc.assert(
      fc.property(request, (input) => {
        const other = size(role, { ...input, supply: spelledOut(input.supply) });
        expect(apartFromOrder(other)).toEqual(apartFromOrder(size(role, input)));
      }),
      { numRuns: 500 },
    );
  });

  it("takes a uniform set for one with the same conductor in every phase", () => {
    const written = ({ sets }: Supply): Supply => {
      const phases = Math.max(1, ...sets.map((set) => ("phases" in set ? set.phases.length : 1)));
      return {
        sets: sets.map((set) => {
          if ("phases" in set) return set;
          const { count, ...conductor } = set;
          return { count, phases: new Array(phases).fill(conductor) };
        }),
      };
    };
    fc.assert(
      fc.property(request, (input) => {
        const other = size(role, { ...input, supply: written(input.supply) });
        expect(apartFromOrder(other)).toEqual(apartFromOrder(size(role, input)));
      }),
      { numRuns: 500 },
    );
  });
});
