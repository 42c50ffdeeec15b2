import { type Members, readShape } from "../../input/read-shape.js";
import type { Reader } from "../../input/reader.js";
import { refuseLargeDevices } from "../../rules/protected-circuit.js";
import { type EquipmentBondingJumperInput, equipmentBondingJumperInputShape } from "./shape.generated.js";

export type { EquipmentBondingJumperInput };

/** Checks the input of an equipment bonding jumper. */
export function readInput(at: Reader): EquipmentBondingJumperInput | undefined {
  return readShape<EquipmentBondingJumperInput>(at, equipmentBondingJumperInputShape, refine);
}

function refine(at: Reader, { code, circuits }: Members<EquipmentBondingJumperInput>): void {
  if (code !== undefined && circuits !== undefined) refuseLargeDevices(at, circuits, code);
}
