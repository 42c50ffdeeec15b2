import {
  areaOf,
  type EditionYear,
  editionYears,
  equipmentBondingJumper,
  equipmentGroundingConductor,
  type ProtectedCircuit,
  size,
  standardSizes,
} from "bondmil";
import fc from "fast-check";
import { describe, expect, it } from "vitest";

type Metal = "copper" | "aluminum";

const sizers = {
  "equipment-grounding-conductor": (
    year: EditionYear,
    material: Metal,
    circuits: readonly ProtectedCircuit[],
  ) => size(equipmentGroundingConductor, { code: { year }, circuits, conductor: { material } }),
  "equipment-bonding-jumper": (year: EditionYear, material: Metal, circuits: readonly ProtectedCircuit[]) =>
    size(equipmentBondingJumper, { code: { year }, circuits, conductor: { material } }),
} as const;

const ratings = Array.from({ length: 600 }, (_, i) => (i + 1) * 10);
const metal = fc.constantFrom<Metal>("copper", "aluminum");
const year = fc.constantFrom(...editionYears);
const rating = fc.integer({ min: 1, max: 6000 });
const circuits = fc.array(
  rating.map((amperes): ProtectedCircuit => ({ device: { amperes } })),
  { minLength: 1, maxLength: 5 },
);

describe.each(Object.entries(sizers))("%s", (_, size) => {
  it("never gets smaller with a larger device, in any edition and metal", () => {
    for (const edition of editionYears) {
      for (const material of ["copper", "aluminum"] as const) {
        const areas = ratings.map(
          (amperes) => size(edition, material, [{ device: { amperes } }]).requiredArea,
        );
        expect(areas).toEqual([...areas].sort((a, b) => a - b));
      }
    }
  });

  it("is never smaller in aluminum than in copper", () => {
    for (const edition of editionYears) {
      for (const amperes of ratings) {
        const one = [{ device: { amperes } }];
        const [copper, aluminum] = [size(edition, "copper", one), size(edition, "aluminum", one)];
        expect(aluminum.requiredArea).toBeGreaterThan(copper.requiredArea);
      }
    }
  });

  it("does not depend on the order of circuits, and serves each of them", () => {
    fc.assert(
      fc.property(year, metal, circuits, (edition, material, list) => {
        const together = size(edition, material, list).requiredArea;
        expect(size(edition, material, [...list].reverse()).requiredArea).toBe(together);
        for (const one of list)
          expect(together).toBeGreaterThanOrEqual(size(edition, material, [one]).requiredArea);
      }),
    );
  });

  it("is never above the circuit conductors of its metal, and an increase never lowers it", () => {
    const sizes = standardSizes.filter((one) => areaOf(one) >= areaOf("12 AWG"));
    const place = fc.nat(sizes.length - 1);
    fc.assert(
      fc.property(year, metal, rating, place, place, (edition, material, amperes, a, b) => {
        const [from, to] = [sizes[Math.min(a, b)] ?? "12 AWG", sizes[Math.max(a, b)] ?? "12 AWG"];
        const conductors = { sets: [{ count: 1, size: to, material }] };
        const increasedFrom = {
          conductors: { sets: [{ count: 1, size: from, material }] },
          reason: "voltage-drop",
        } as const;
        const plain = size(edition, material, [{ device: { amperes }, conductors }]);
        const increased = size(edition, material, [{ device: { amperes }, conductors, increasedFrom }]);
        expect(increased.requiredArea).toBeGreaterThanOrEqual(plain.requiredArea);
        expect(increased.requiredArea).toBeLessThanOrEqual(Math.max(areaOf(to), areaOf("14 AWG")));
      }),
    );
  });
});
