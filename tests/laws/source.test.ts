import { type ArrangementsInput, arrangementsOf, materials, systemBondingJumper } from "bondmil";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { material, ofColumn, type SupplyShape, supplyOf, temperature, year } from "./arbitraries.js";

/** Several enclosures whose feeders list equally many phases, so that corresponding conductors can be added. */
function systemOf(shape: SupplyShape): fc.Arbitrary<ArrangementsInput<"system-bonding-jumper">> {
  const supplies = fc.array(supplyOf({ ...shape, phases: 3 }), { minLength: 1, maxLength: 4 });
  return fc.record({
    code: fc.record({ year }),
    source: fc.record({ id: fc.constant("source"), outdoors: fc.boolean() }),
    enclosures: supplies.map((list) => list.map((supply, i) => ({ id: `enclosure ${i + 1}`, supply }))),
    conductor: fc.record({ material }),
    temperature,
  });
}

describe("a jumper at the source", () => {
  it.each([
    ["copper", ofColumn("copper")],
    ["aluminum", ofColumn("aluminum")],
    ["any", materials],
  ] as const)("is never smaller than one in an enclosure: %s feeders", (_name, from) => {
    fc.assert(
      fc.property(systemOf({ materials: from }), (input) => {
        const { arrangements } = arrangementsOf(systemBondingJumper, input);
        const areasIn = (id: string) =>
          arrangements.find((one) => one.id === id)?.conductors.map(({ result }) => result.requiredArea) ??
          [];
        const inEnclosures = areasIn("jumper-in-each-enclosure");
        const [atSource, ...others] = areasIn("jumper-at-source");
        expect(others).toEqual([]);
        expect(inEnclosures).toHaveLength(input.enclosures.length);
        for (const area of inEnclosures) expect(atSource).toBeGreaterThanOrEqual(area);
      }),
      { numRuns: 1000 },
    );
  });

  it("is the same as the one in the only enclosure", () => {
    fc.assert(
      fc.property(systemOf({}), (input) => {
        const { arrangements } = arrangementsOf(systemBondingJumper, {
          ...input,
          enclosures: input.enclosures.slice(0, 1),
        });
        const [inEnclosure, atSource] = arrangements.map(({ conductors }) => conductors[0]?.result);
        expect(atSource).toEqual(inEnclosure);
      }),
      { numRuns: 300 },
    );
  });

  it("stays at least as large when feeders of another material join", () => {
    const aluminum = { count: 3, size: "1 AWG", material: "aluminum" } as const;
    const copper = { count: 1, size: "14 AWG", material: "copper" } as const;
    const { arrangements } = arrangementsOf(systemBondingJumper, {
      code: { year: "2023" },
      source: { id: "T1", outdoors: false },
      enclosures: [
        { id: "P1", supply: { sets: [aluminum] } },
        { id: "P2", supply: { sets: [copper] } },
      ],
      conductor: { material: "copper" },
    });
    const [inEnclosures, atSource] = arrangements.map(({ conductors }) =>
      conductors.map(({ result }) => result.requiredArea),
    );
    expect(atSource?.[0]).toBeGreaterThanOrEqual(inEnclosures?.[0] ?? 0);
  });
});
