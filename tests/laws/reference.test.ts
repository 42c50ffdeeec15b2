import type { Conductor, JumperInput, Supply } from "bondmil";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { request } from "./arbitraries.js";
import { type ReferenceSet, referenceArea, referenceSize } from "./reference.js";
import { jumperRoles, underLaw } from "./roles.js";

function written({ sets }: Supply): readonly ReferenceSet[] {
  const phases = Math.max(1, ...sets.map((set) => ("phases" in set ? set.phases.length : 1)));
  return sets.map((set) =>
    "phases" in set ? set : { count: set.count, phases: new Array<Conductor>(phases).fill(set) },
  );
}

describe.each(jumperRoles)("%s", (role) => {
  it("agrees with a second implementation on any supply", () => {
    fc.assert(
      fc.property(request, (input: JumperInput) => {
        const { requiredArea, outcome } = underLaw[role].size(input);
        const expected = referenceArea({
          year: input.code.year,
          role,
          sets: written(input.supply),
          jumper: input.jumper.material,
          temperature: input.temperature ?? 75,
        });
        expect(requiredArea).toBe(expected);
        const size = input.jumper.form === "bus" ? null : referenceSize(expected);
        expect(outcome).toEqual(
          size === null
            ? {
                kind: "area-only",
                requiredArea: expected,
                why: input.jumper.form === "bus" ? "bus" : "above-largest-standard-size",
              }
            : { kind: "conductor", size, quantity: 1 },
        );
      }),
      { numRuns: 2000 },
    );
  });
});
