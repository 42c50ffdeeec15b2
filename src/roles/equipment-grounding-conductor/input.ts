import { type Members, readShape } from "../../input/read-shape.js";
import type { Reader } from "../../input/reader.js";
import { refuseLargeDevices } from "../../rules/protected-circuit.js";
import {
  type EquipmentGroundingConductorInput,
  equipmentGroundingConductorInputShape,
} from "./shape.generated.js";

export type { EquipmentGroundingConductorInput };

/** Checks the input of an equipment grounding conductor. */
export function readInput(at: Reader): EquipmentGroundingConductorInput | undefined {
  return readShape<EquipmentGroundingConductorInput>(at, equipmentGroundingConductorInputShape, refine);
}

function refine(at: Reader, { code, circuits }: Members<EquipmentGroundingConductorInput>): void {
  if (code !== undefined && circuits !== undefined) refuseLargeDevices(at, circuits, code);
}
