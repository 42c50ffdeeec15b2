import { type ConductorSize, metalMass } from "bondmil";
import { describe, expect, it } from "vitest";

// Weights that are printed as exactly as ours are in corpus/supply/metal-mass.json.

/** Aluminum Electrical Conductor Handbook, table 4-4, solid 1350 wire, pounds per 1000 ft. */
const handbook: readonly (readonly [ConductorSize, number])[] = [
  ["4 AWG", 38.41],
  ["2 AWG", 61.07],
  ["1/0 AWG", 97.15],
  ["4/0 AWG", 194.7],
];

describe("the weight of bare metal", () => {
  it.each(handbook)("of solid %s aluminum is that of the handbook within 0.2 percent", (size, pounds) => {
    const { aluminum } = metalMass({ conductors: [{ count: 1, size, material: "aluminum", solid: true }] });
    expect(Math.abs(aluminum / pounds - 1)).toBeLessThan(0.002);
  });

  it("adds conductors by metal over a length", () => {
    const one = metalMass({ conductors: [{ count: 1, size: "1/0 AWG", material: "copper" }] });
    const both = metalMass({
      conductors: [
        { count: 3, size: "1/0 AWG", material: "copper" },
        { count: 1, size: "2 AWG", material: "aluminum" },
      ],
      feet: 500,
    });
    expect(both.copper).toBeCloseTo(1.5 * one.copper, 10);
    expect(both.aluminum).toBeCloseTo(31.1, 1);
    expect([one.evidence, both.evidence]).toEqual(["single", "memory"]);
  });
});
