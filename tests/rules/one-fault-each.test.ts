import {
  equipmentGroundingConductor,
  groundedConductor,
  groundingElectrodeConductor,
  InputError,
  impedanceBondingJumper,
  mainBondingJumper,
  reserveOf,
  type Sizing,
  size,
} from "bondmil";
import { describe, expect, it } from "vitest";

const code = { year: "2020" } as const;
const material = { material: "copper" } as const;
const supply = { sets: [{ count: 1, size: "500 kcmil", material: "copper" }] } as const;

const asked =
  <Asked>(role: Sizing<Asked, unknown>) =>
  (input: never): unknown =>
    size<Asked, unknown>(role, input);

function faults(ask: (input: never) => unknown, input: unknown): readonly string[] {
  try {
    ask(input as never);
  } catch (error) {
    if (error instanceof InputError) return error.issues.map((one) => `${one.path}: ${one.code}`);
    throw error;
  }
  return [];
}

describe("one fault is one error: what hangs on a member that cannot be read is not blamed too", () => {
  it("the place of an impedance jumper", () => {
    const base = { code, electrodeConductorAt: "roof", conductor: material };
    const only = ["electrodeConductorAt: unknown-value"];
    expect(faults(asked(impedanceBondingJumper), { ...base, impedanceConductor: "6 AWG" })).toEqual(only);
    expect(faults(asked(impedanceBondingJumper), { ...base, supply })).toEqual(only);
  });

  it("the system of a grounded conductor", () => {
    const input = { code, system: "panel", supply, conductor: material, jumperAt: "source" };
    expect(faults(asked(groundedConductor), input)).toEqual(["system: unknown-value"]);
  });

  it("the system of a grounding electrode conductor", () => {
    const input = { code, system: "panel", supply, conductor: material, electrodes: [{ kind: "rod" }] };
    for (const flag of ["fromDrop", "controlTransformer", "onSingleBranchCircuit"])
      expect(faults(asked(groundingElectrodeConductor), { ...input, [flag]: true })).toEqual([
        "system: unknown-value",
      ]);
  });
});

describe("a member too many is refused", () => {
  it("at a way of running that is no tray", () => {
    const input = { code, circuits: [{ device: { amperes: 60 } }], conductor: material };
    const run = { kind: "parallel-raceways", conductor: "single" };
    expect(faults(asked(equipmentGroundingConductor), { ...input, run })).toEqual([
      "run.conductor: unknown-key",
    ]);
  });

  it("at an installed conductor, and a result without an area is no result", () => {
    const result = size(mainBondingJumper, { code, supply, conductor: material });
    const installed = { size: "2 AWG", material: "copper" };
    expect(faults(reserveOf, { installed: { ...installed, color: "green" }, result })).toEqual([
      "installed.color: unknown-key",
    ]);
    const { requiredArea: _, ...rest } = result;
    expect(faults(reserveOf, { installed, result: rest })).toEqual(["result.requiredArea: missing"]);
    expect(faults(reserveOf, { installed, result: { ...rest, requiredArea: "66360" } })).toEqual([
      "result.requiredArea: wrong-type",
    ]);
  });
});
