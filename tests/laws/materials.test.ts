import { areaOf, type JumperInput, standardSizes } from "bondmil";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { requestFor, supplyOf } from "./arbitraries.js";
import { jumperRoles, underLaw } from "./roles.js";

/** Aluminum has no ampacity below 12 AWG, so smaller conductors have no counterpart in the other material. */
const withAmpacity = standardSizes.filter((one) => areaOf(one) >= areaOf("12 AWG"));

describe.each(jumperRoles)("materials: %s", (role) => {
  const { size } = underLaw[role];

  it("never asks for less aluminum than copper, except where the cap decides", () => {
    fc.assert(
      fc.property(requestFor(supplyOf({ sizes: withAmpacity })), (input: JumperInput) => {
        const required = (material: "copper" | "aluminum") => size({ ...input, jumper: { material } });
        const aluminum = required("aluminum");
        if (aluminum.governs === "cap") return;
        expect(aluminum.requiredArea).toBeGreaterThanOrEqual(required("copper").requiredArea);
      }),
      { numRuns: 2000 },
    );
  });

  it("does less where the cap decides", () => {
    const supply = { sets: [{ count: 1, size: "10 AWG", material: "aluminum" }] } as const;
    const required = (material: "copper" | "aluminum") =>
      size({ code: { year: "2023" }, supply, jumper: { material } });
    expect(required("aluminum").governs).toBe("cap");
    expect(required("aluminum").requiredArea).toBeLessThan(required("copper").requiredArea);
  });

  it("does not tell copper-clad aluminum from aluminum", () => {
    const anyOf = requestFor(supplyOf({ materials: ["aluminum"] }));
    fc.assert(
      fc.property(anyOf, (input: JumperInput) => {
        const text = JSON.stringify(input);
        const clad = JSON.parse(text.replaceAll('"aluminum"', '"copper-clad aluminum"')) as JumperInput;
        const { requiredArea, governs } = size(input);
        expect(size(clad)).toMatchObject({ requiredArea, governs });
      }),
    );
  });
});
