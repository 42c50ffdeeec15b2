import { type Members, readShape } from "../../input/read-shape.js";
import type { Reader } from "../../input/reader.js";
import { refuseSmallRings } from "../../rules/electrode.js";
import { type ElectrodeBondingJumperInput, electrodeBondingJumperInputShape } from "./shape.generated.js";

export type { ElectrodeBondingJumperInput };

/** Checks the input of a jumper between electrodes. */
export function readInput(at: Reader): ElectrodeBondingJumperInput | undefined {
  return readShape<ElectrodeBondingJumperInput>(at, electrodeBondingJumperInputShape, refine);
}

function refine(at: Reader, { code, electrodes }: Members<ElectrodeBondingJumperInput>): void {
  if (code !== undefined && electrodes !== undefined) refuseSmallRings(at, electrodes, code);
}
