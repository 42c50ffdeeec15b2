import type { Code, Role, SizingResult } from "../../src/index.js";
import * as bondmil from "../../src/index.js";
import type { CheckInput } from "./model.js";

/** The part of a result that a check speaks of. */
export type CheckedResult = Pick<SizingResult, "outcome" | "requiredArea" | "steps">;

/** What is put to the test: for each role, a function of the code and a check's input. */
export type Library = Readonly<Record<Role, (code: Code, input: CheckInput) => CheckedResult>>;

/** This library. A role's input is what its function takes, less the code. */
export const library: Library = {
  "main-bonding-jumper": asked(bondmil.sizeMainBondingJumper),
  "system-bonding-jumper": asked(bondmil.sizeSystemBondingJumper),
  "supply-side-bonding-jumper": asked(bondmil.sizeSupplySideBondingJumper),
  "grounded-conductor": asked(bondmil.sizeGroundedConductor),
  "impedance-grounding-conductor": asked(bondmil.sizeImpedanceGroundingConductor),
  "impedance-bonding-jumper": asked(bondmil.sizeImpedanceBondingJumper),
  "equipment-grounding-conductor": asked(bondmil.sizeEquipmentGroundingConductor),
  "equipment-bonding-jumper": asked(bondmil.sizeEquipmentBondingJumper),
  "water-piping-bonding-jumper": asked(bondmil.sizeWaterPipingBondingJumper),
  "other-piping-bonding-jumper": asked(bondmil.sizeOtherPipingBondingJumper),
  "structural-metal-bonding-jumper": asked(bondmil.sizeStructuralMetalBondingJumper),
  "grounding-electrode-conductor": (code, input) =>
    input["part"] === "common" && input["of"] === "separately-derived"
      ? asked(bondmil.sizeCommonConductorOfDerivedSystems)(code, without(input, ["part", "of"]))
      : asked(bondmil.sizeGroundingElectrodeConductor)(code, input),
  "electrode-bonding-jumper": asked(bondmil.sizeElectrodeBondingJumper),
  "electrode-raceway-bonding-jumper": (code, input) =>
    atOneEnd(asked(bondmil.sizeElectrodeRacewayBondingJumper)(code, input)),
  "intersystem-bonding-conductor": asked(bondmil.sizeIntersystemBondingConductor),
};

/** Adds the code to a check's input. The cast rests on the schema, which fixes the shape of each role's input. */
function asked<Input>(size: (input: Input) => CheckedResult): Library[Role] {
  return (code, input) => size({ ...input, code } as Input);
}

/** A raceway is bonded at both ends; a check speaks of the jumper at one of them. */
function atOneEnd(result: CheckedResult): CheckedResult {
  const { outcome } = result;
  return outcome.kind === "conductor" && outcome.quantity === 2
    ? { ...result, outcome: { ...outcome, quantity: 1 } }
    : result;
}

function without(input: CheckInput, keys: readonly string[]): CheckInput {
  return Object.fromEntries(Object.entries(input).filter(([key]) => !keys.includes(key)));
}
