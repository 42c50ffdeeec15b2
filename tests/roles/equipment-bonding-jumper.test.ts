import {
  areaOf,
  type EditionYear,
  editionYears,
  equipmentBondingJumper,
  equipmentGroundingConductor,
  type Input,
  InputError,
  type Material,
  type ProtectedCircuit,
  size,
} from "bondmil";
import { describe, expect, it } from "vitest";

const sized = (
  year: EditionYear,
  circuits: readonly ProtectedCircuit[],
  rest: Partial<Input<typeof equipmentBondingJumper>> = {},
) => size(equipmentBondingJumper, { code: { year }, circuits, conductor: { material: "copper" }, ...rest });
const parallel = (count: number, sized: "3/0 AWG" | "1/0 AWG" | "16 AWG", material: Material = "copper") => ({
  sets: [{ count, size: sized, material }],
});

describe("an equipment bonding jumper on the load side", () => {
  it.each(editionYears)("is sized as an equipment grounding conductor in %s", (year) => {
    for (const amperes of [15, 60, 61, 400, 1200, 6000]) {
      const circuits = [{ device: { amperes } }];
      const grounding = size(equipmentGroundingConductor, {
        code: { year },
        circuits,
        conductor: { material: "aluminum" },
      });
      expect(sized(year, circuits, { conductor: { material: "aluminum" } }).requiredArea).toBe(
        grounding.requiredArea,
      );
    }
  });

  it("goes by the largest device where it serves several raceways in common", () => {
    const found = sized(
      "2023",
      [400, 600, 1200].map((amperes) => ({ device: { amperes } })),
    );
    expect(found.outcome).toEqual({ kind: "conductor", size: "3/0 AWG", quantity: 1 });
    expect(found.steps[1]).toMatchObject({ kind: "shared", decides: 2, citation: { section: "250.102(D)" } });
  });

  it("has its role, purpose and rule", () => {
    expect(sized("2017", [{ device: { amperes: 200 } }])).toMatchObject({
      role: "equipment-bonding-jumper",
      purpose: "fault-path",
      citation: { section: "250.102(D)", evidence: "single" },
      evidence: "single",
      governs: "rating-row",
    });
  });

  it("is limited to one conductor in 2008 and to the set since", () => {
    const circuits = [{ device: { amperes: 1600 }, conductors: parallel(4, "1/0 AWG") }];
    expect(sized("2008", circuits)).toMatchObject({ requiredArea: 105600, governs: "cap" });
    for (const year of editionYears.slice(1)) {
      const found = sized(year, circuits);
      expect(found.requiredArea).toBe(211600);
      expect(found.readings).toEqual([
        {
          id: "load-side-jumper-limit",
          chosen: "whole-set",
          otherwise: [
            { alternative: "one-conductor", requiredArea: 105600 },
            { alternative: "no-limit", requiredArea: 211600 },
          ],
        },
      ]);
    }
  });

  it("knows the table alone as a reading", () => {
    const circuits = [{ device: { amperes: 6000 }, conductors: parallel(2, "3/0 AWG") }];
    expect(sized("2023", circuits).requiredArea).toBe(2 * areaOf("3/0 AWG"));
    const code = { year: "2023", readings: { "load-side-jumper-limit": "no-limit" } } as const;
    expect(sized("2023", circuits, { code }).requiredArea).toBe(800000);
  });

  it("does not fall below 14 AWG in 2008", () => {
    const circuits = [{ device: { amperes: 15 }, conductors: parallel(1, "16 AWG") }];
    expect(sized("2008", circuits)).toMatchObject({
      requiredArea: 4110,
      governs: "floor",
      evidence: "carried",
    });
    expect(sized("2011", circuits)).toMatchObject({ requiredArea: 2580, governs: "cap" });
  });

  it("is refused with everything that is wrong", () => {
    const input = {
      code: { year: "2023" },
      circuits: [{ device: { amperes: 7000 } }],
      conductor: {},
      run: {},
    };
    const issues = (() => {
      try {
        size(equipmentBondingJumper, input as unknown as Input<typeof equipmentBondingJumper>);
      } catch (error) {
        if (error instanceof InputError) return error.issues.map(({ code, path }) => `${code} ${path}`);
      }
      return [];
    })();
    expect(issues).toEqual([
      "unknown-key run",
      "missing conductor.material",
      "out-of-range circuits[0].device.amperes",
    ]);
  });
});
