import {
  equipmentGroundingConductor,
  InputError,
  size,
  type VoltageDropQuestion,
  voltageDrop,
} from "bondmil";
import { describe, expect, it } from "vitest";

// Published examples are in corpus/supply/voltage-drop.json.

const run: VoltageDropQuestion = {
  edition: "2023",
  current: "three-phase",
  volts: 480,
  amperes: 200,
  feet: 500,
  conductors: { size: "3/0 AWG", material: "copper" },
  impedance: { from: "table-9", conduit: "steel", powerFactor: 0.85 },
};

function issuesOf(question: VoltageDropQuestion): readonly string[] {
  try {
    voltageDrop(question);
  } catch (error) {
    if (error instanceof InputError) return error.issues.map(({ code, path }) => `${path}: ${code}`);
    throw error;
  }
  return [];
}

describe("voltage drop", () => {
  it("takes resistance and reactance of Table 9 at the power factor", () => {
    const { impedance, volts, percent } = voltageDrop(run);
    // 0.079 x 0.85 + 0.052 x 0.52678
    expect(impedance.effective).toBeCloseTo(0.0945427, 6);
    expect(volts).toBeCloseTo((Math.sqrt(3) * 200 * 0.0945427 * 500) / 1000, 4);
    expect(percent).toBeCloseTo((100 * volts) / 480, 10);
  });

  it("takes the resistance of Table 8 at the temperature of the conductor", () => {
    const impedance = { from: "table-8", celsius: 20 } as const;
    const { impedance: used, cautions } = voltageDrop({ ...run, impedance });
    expect(used.effective).toBeCloseTo(0.0766 * 0.82235, 8);
    expect(used.reactance).toBeNull();
    expect(cautions).toEqual(["reactance-left-out"]);
    const aluminum = voltageDrop({
      ...run,
      impedance,
      conductors: { size: "3/0 AWG", material: "aluminum" },
    });
    expect(aluminum.impedance.effective).toBeCloseTo(0.126 * 0.8185, 8);
    const direct = voltageDrop({ ...run, current: "direct", impedance });
    expect(direct.cautions).toEqual([]);
    expect(direct.volts).toBeCloseTo((2 * 200 * used.effective * 500) / 1000, 10);
  });

  it("halves in two sets", () => {
    const two = voltageDrop({ ...run, conductors: { ...run.conductors, sets: 2 } });
    expect(two.volts).toBeCloseTo(voltageDrop(run).volts / 2, 10);
  });

  it("finds the smallest size for each number of sets, with no less metal than before", () => {
    // Two sets of 2/0 AWG lose 2.05 percent: (0.1 x 0.85 + 0.054 x 0.52678) x 200 x 0.5 / 2 x 1.732 / 480.
    const { sufficient } = voltageDrop({ ...run, permittedPercent: 2, mostSets: 3 });
    expect(sufficient.map(({ sets, size: own }) => `${sets} x ${own}`)).toEqual([
      "1 x 500 kcmil",
      "2 x 3/0 AWG",
      "3 x 1/0 AWG",
    ]);
    for (const { percent, increased } of sufficient) {
      expect(percent).toBeLessThanOrEqual(2);
      expect(increased).toBe(true);
    }
  });

  it("takes the resistance of coated copper where it is coated, and there is no coated aluminum", () => {
    const effective = (material: "copper" | "aluminum", coated?: boolean) =>
      voltageDrop({
        ...run,
        impedance: { from: "table-8", ...(coated !== undefined && { coated }) },
        conductors: { size: "3/0 AWG", material },
      }).impedance.effective;
    expect([effective("copper", true), effective("copper", false), effective("copper")]).toEqual([
      ...[0.0797, 0.0766, 0.0766],
    ]);
    expect([effective("aluminum", true), effective("aluminum")]).toEqual([0.126, 0.126]);
  });

  it("cites each place that was read once", () => {
    const { citations, evidence } = voltageDrop({ ...run, permittedPercent: 2, mostSets: 3 });
    expect(new Set(citations.map(({ section }) => section))).toEqual(new Set(["Chapter 9 Table 9"]));
    expect(new Set(citations.map((one) => one.evidence)).size).toBe(citations.length);
    expect(citations.map((one) => one.evidence)).toContain(evidence);
  });

  it("leaves conductors that suffice as they are", () => {
    const { sufficient, cautions } = voltageDrop({ ...run, permittedPercent: 4 });
    expect(sufficient).toMatchObject([{ sets: 1, size: "3/0 AWG", increased: false }]);
    expect(cautions).toEqual(["drop-is-no-rule", "ampacity-not-asked"]);
  });

  it("hands the increase to the equipment grounding conductor, with its baseline", () => {
    const [first] = voltageDrop({ ...run, permittedPercent: 2 }).sufficient;
    if (first === undefined) throw new Error("none");
    const grounding = size(equipmentGroundingConductor, {
      code: { year: "2023" },
      circuits: [{ device: { amperes: 200 }, ...first.circuit }],
      conductor: { material: "copper" },
    });
    // 6 AWG for 200 A, 26,240 x 500,000 / 167,800 = 78,188.3
    expect(grounding.requiredArea).toBe(78189);
    expect(grounding.outcome).toMatchObject({ size: "1 AWG" });
  });

  it("refuses what no table or size answers", () => {
    expect(issuesOf({ ...run, permittedPercent: 0.1 })).toEqual(["permittedPercent: out-of-range"]);
    expect(issuesOf({ ...run, mostSets: 2 })).toEqual(["permittedPercent: missing"]);
    expect(issuesOf({ ...run, current: "direct" })).toEqual(["impedance.from: unknown-value"]);
    expect(issuesOf({ ...run, conductors: { size: "700 kcmil", material: "copper" } })).toEqual([
      "conductors.size: unknown-value",
    ]);
    expect(
      issuesOf({ ...run, conductors: { ...run.conductors, sets: 3 }, permittedPercent: 3, mostSets: 2 }),
    ).toEqual(["mostSets: out-of-range"]);
    expect(issuesOf({ ...run, permittedPercent: 3, mostSets: 1 })).toEqual([]);
    expect(issuesOf({ ...run, impedance: { from: "table-8", solid: true } })).toEqual([
      "conductors.size: unknown-value",
    ]);
  });

  it("keeps small conductors in parallel that are there, and adds no others", () => {
    const small = { size: "2 AWG", material: "copper", sets: 2 } as const;
    const { sufficient } = voltageDrop({ ...run, conductors: small, permittedPercent: 50, mostSets: 3 });
    expect(sufficient.map(({ sets, size: own }) => `${sets} x ${own}`)).toEqual(["2 x 2 AWG", "3 x 1/0 AWG"]);
  });

  it("names the least drop that can be had, and the sets that there are", () => {
    expect(() => voltageDrop({ ...run, permittedPercent: 0.1 })).toThrow(/the drop of 1 x 1000 kcmil/);
    const three = { ...run, conductors: { ...run.conductors, sets: 3 }, permittedPercent: 3, mostSets: 2 };
    expect(() => voltageDrop(three)).toThrow("at least the 3 sets of the conductors");
  });

  it("names the sizes that the table has", () => {
    try {
      voltageDrop({ ...run, conductors: { size: "1250 kcmil", material: "copper" } });
      expect.unreachable();
    } catch (error) {
      const [issue] = (error as InputError).issues;
      expect(issue?.expected).toBe("a size that Table 9 has for copper, from 14 AWG to 1000 kcmil");
      expect(issue?.alternatives).toContain("750 kcmil");
      expect(issue?.alternatives).not.toContain("700 kcmil");
    }
  });
});
