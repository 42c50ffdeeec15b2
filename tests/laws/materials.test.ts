import {
  areaOf,
  editionYears,
  type Input,
  type mainBondingJumper,
  size,
  standardSizes,
  systemBondingJumper,
} from "bondmil";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { requestFor, supplyOf } from "./arbitraries.js";
import { jumpers } from "./roles.js";

/** Aluminum has no ampacity below 12 AWG, so smaller conductors have no counterpart in the other material. */
const withAmpacity = standardSizes.filter((one) => areaOf(one) >= areaOf("12 AWG"));

describe.each(jumpers)("materials: $id", (role) => {
  it("never asks for less aluminum than copper, except where the cap decides", () => {
    fc.assert(
      fc.property(requestFor(supplyOf({ sizes: withAmpacity })), (input: Input<typeof mainBondingJumper>) => {
        const required = (material: "copper" | "aluminum") =>
          size(role, { ...input, conductor: { material } });
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
      size(role, { code: { year: "2023" }, supply, conductor: { material } });
    expect(required("aluminum").governs).toBe("cap");
    expect(required("aluminum").requiredArea).toBeLessThan(required("copper").requiredArea);
  });

  it("does not tell copper-clad aluminum from aluminum", () => {
    const anyOf = requestFor(supplyOf({ materials: ["aluminum"] }));
    fc.assert(
      fc.property(anyOf, (input: Input<typeof mainBondingJumper>) => {
        const text = JSON.stringify(input);
        const clad = JSON.parse(text.replaceAll('"aluminum"', '"copper-clad aluminum"')) as Input<
          typeof mainBondingJumper
        >;
        const { requiredArea, governs } = size(role, input);
        expect(size(role, clad)).toMatchObject({ requiredArea, governs });
      }),
    );
  });
});

describe("the system bonding jumper of a control transformer", () => {
  const small = standardSizes.filter((one) => areaOf(one) <= areaOf("1 AWG"));
  const columns = ["copper", "aluminum"] as const;
  const required = (year: (typeof editionYears)[number], one: number, own: "copper" | "aluminum", of = own) =>
    size(systemBondingJumper, {
      code: { year },
      supply: { sets: [{ count: 1, size: small[one] ?? "1 AWG", material: of }] },
      conductor: { material: own },
      controlTransformer: true,
    }).requiredArea;

  it("over the whole grid is never smaller in aluminum, nor by a larger supply, nor than the supply", () => {
    for (const year of editionYears) {
      for (const supplied of columns) {
        const wrong = small.filter((one, i) => {
          const [copper, aluminum] = columns.map((own) => required(year, i, own, supplied));
          const before = columns.map((own) => required(year, Math.max(0, i - 1), own, supplied));
          return (
            Number(aluminum) < Number(copper) ||
            Number(copper) < areaOf(one) ||
            Number(copper) < Number(before[0]) ||
            Number(aluminum) < Number(before[1])
          );
        });
        expect(wrong).toEqual([]);
      }
    }
  });
});
