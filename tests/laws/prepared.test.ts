import {
  assumedConductors,
  type Conductor,
  type Input,
  type Material,
  type mainBondingJumper,
  prepare,
  type SizingResult,
  type Step,
  type Supply,
  size,
} from "bondmil";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { oneMaterialSupply, readings, requestFor } from "./arbitraries.js";
import { disagreements } from "./prepared/cases.js";
import { jumpers } from "./roles.js";

function conductorsOf({ sets }: Supply): readonly Conductor[] {
  return sets.flatMap((set) => ("phases" in set ? set.phases.flatMap((one) => one ?? []) : [set]));
}

function areaOfStep({ steps }: SizingResult, kind: "sum" | "assumed"): number | undefined {
  return steps.find((step): step is Extract<Step, { kind: typeof kind }> => step.kind === kind)?.area;
}

describe.each(jumpers)("prepared: $id", (role) => {
  it("agrees with the full path on every supply of one material", () => {
    fc.assert(
      fc.property(
        requestFor(oneMaterialSupply),
        readings,
        (asked: Input<typeof mainBondingJumper>, chosen) => {
          const input: Input<typeof mainBondingJumper> = {
            ...asked,
            code: { ...asked.code, readings: chosen },
          };
          const [first] = conductorsOf(input.supply);
          const supply: Material = first?.material ?? "copper";
          const prepared = prepare(role, {
            code: input.code,
            supplyMaterial: supply,
            conductor: { material: input.conductor.material },
          });
          const full = size(role, input);
          const installed = areaOfStep(full, "sum") ?? Number.NaN;
          if (prepared.kind === "by-area") {
            expect(prepared.requiredArea(installed)).toBe(full.requiredArea);
            return;
          }
          const sets = input.supply.sets.reduce((sum, { count }) => sum + count, 0);
          const assumed = areaOfStep(full, "assumed");
          expect(prepared.needsAssumedArea(installed, sets)).toBe(assumed !== undefined);
          expect(prepared.requiredArea(installed, assumed ?? 0, sets)).toBe(full.requiredArea);
        },
      ),
      { numRuns: 2000 },
    );
  });

  it("agrees under every alternative of every reading", () => {
    const supply = { sets: [{ count: 1, size: "2000 kcmil", material: "aluminum" }] } as const;
    const [assumed] = assumedConductors({ edition: "2023", supply, material: "copper", temperature: 75 });
    for (const alternative of ["as-in-parallel", "parallel-only"] as const) {
      const code = {
        year: "2023",
        readings: { "single-conductor-of-another-material": alternative },
      } as const;
      const prepared = prepare(role, { code, supplyMaterial: "aluminum", conductor: { material: "copper" } });
      if (prepared.kind !== "by-assumed-area") throw new Error("the materials differ");
      const full = size(role, { code, supply, conductor: { material: "copper" } });
      expect(prepared.needsAssumedArea(2000000, 1)).toBe(alternative === "as-in-parallel");
      expect(prepared.requiredArea(2000000, assumed?.area ?? 0, 1)).toBe(full.requiredArea);
      expect(prepared.needsAssumedArea(4000000, 2)).toBe(true);
    }
    for (const alternative of ["every-supply", "large-supplies-only"] as const) {
      const code = { year: "2023", readings: { "cap-on-small-supplies": alternative } } as const;
      const prepared = prepare(role, { code, supplyMaterial: "copper", conductor: { material: "copper" } });
      if (prepared.kind !== "by-area") throw new Error("the materials are the same");
      expect(prepared.requiredArea(10380)).toBe(alternative === "every-supply" ? 10380 : 16510);
    }
  });

  it("wants an assumed area only where supply and jumper are of different columns", () => {
    const kindFor = (supply: Material, jumper: Material) =>
      prepare(role, { code: { year: "2020" }, supplyMaterial: supply, conductor: { material: jumper } }).kind;
    expect(kindFor("copper", "copper")).toBe("by-area");
    expect(kindFor("copper-clad aluminum", "aluminum")).toBe("by-area");
    expect(kindFor("copper", "copper-clad aluminum")).toBe("by-assumed-area");
    expect(kindFor("aluminum", "copper")).toBe("by-assumed-area");
  });
});

describe("prepared: every role that can be", () => {
  it("agrees with the full path wherever the dice fall", () => {
    expect(disagreements(20080101, 5_000)).toEqual([]);
  });
});
