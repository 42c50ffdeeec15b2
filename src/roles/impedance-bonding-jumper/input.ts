import { readShape } from "../../input/read-shape.js";
import type { Reader } from "../../input/reader.js";
import { type ImpedanceBondingJumperInput, impedanceBondingJumperInputShape } from "./shape.generated.js";

export type { ImpedanceBondingJumperInput };

/** Checks the input of a jumper to an impedance. */
export function readInput(at: Reader): ImpedanceBondingJumperInput | undefined {
  return readShape<ImpedanceBondingJumperInput>(at, impedanceBondingJumperInputShape);
}
