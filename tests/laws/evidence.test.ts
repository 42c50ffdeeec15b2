import {
  type Citation,
  type ConductorSize,
  editionYears,
  evidenceLevels,
  type Input,
  type mainBondingJumper,
  size,
  standardSizes,
  type TemperatureColumn,
} from "bondmil";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { JumperRole } from "../roles/jumper/facts.js";
import { requestFor, supply } from "./arbitraries.js";
import { jumpers } from "./roles.js";

const levels: readonly string[] = evidenceLevels;
const rank = (evidence: string) => levels.indexOf(evidence);

/** Every citation in a value, however deep. */
function citationsIn(value: unknown): readonly Citation[] {
  if (typeof value !== "object" || value === null) return [];
  const own = "section" in value && "evidence" in value ? [value as Citation] : [];
  return [...own, ...Object.values(value).flatMap(citationsIn)];
}

function strongerThanItsCitations(
  role: JumperRole,
  input: Input<typeof mainBondingJumper>,
): readonly Citation[] {
  const { evidence, steps, citation } = size(role, input);
  return citationsIn({ steps, citation }).filter((one) => rank(one.evidence) < rank(evidence));
}

describe.each(jumpers)("evidence: $id", (role) => {
  it("is never stronger than anything that the result cites", () => {
    fc.assert(
      fc.property(requestFor(supply), (input: Input<typeof mainBondingJumper>) => {
        expect(strongerThanItsCitations(role, { ...input, temperature: 75 })).toEqual([]);
      }),
      { numRuns: 1000 },
    );
  });

  it("counts single cells of the ampacity table too", () => {
    const wrong = editionYears.flatMap((year) =>
      standardSizes.flatMap((size) =>
        ([60, 75, 90] as const).flatMap((temperature) =>
          (["copper", "aluminum"] as const).flatMap((material) => {
            const conductor = { material: material === "copper" ? "aluminum" : "copper" } as const;
            const sets = [{ count: 20, size, material }];
            const found = strongerThanItsCitations(role, {
              code: { year },
              supply: { sets },
              conductor,
              temperature,
            });
            return found.map((one) => `${year} ${size} ${material} at ${temperature} C: ${one.evidence}`);
          }),
        ),
      ),
    );
    expect(wrong.slice(0, 5)).toEqual([]);
  });

  it("is memory where an ampacity from memory decided, also one that was passed over as too small", () => {
    const evidenceFor = (installed: ConductorSize, temperature: TemperatureColumn) =>
      size(role, {
        code: { year: "2008" },
        supply: { sets: [{ count: 6, size: installed, material: "copper" }] },
        conductor: { material: "aluminum" },
        temperature,
      }).evidence;
    // The ampacity of 600 kcmil copper at 60 C changed in 2011, as did that of 800 kcmil aluminum at 90 C, which is too small for it.
    // No text gives a supply-side jumper of another material in 2008.
    const sure = role.id === "supply-side-bonding-jumper" ? "memory" : "carried";
    expect(evidenceFor("600 kcmil", 75)).toBe(sure);
    expect(evidenceFor("600 kcmil", 60)).toBe("memory");
    expect(evidenceFor("4/0 AWG", 75)).toBe(sure);
    expect(evidenceFor("600 kcmil", 90)).toBe("memory");
  });
});
