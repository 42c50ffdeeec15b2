import { readShape } from "../../input/read-shape.js";
import type { Reader } from "../../input/reader.js";
import { type MainBondingJumperInput, mainBondingJumperInputShape } from "./shape.generated.js";

export type { MainBondingJumperInput };

/** Checks the input of a main bonding jumper. */
export function readInput(at: Reader): MainBondingJumperInput | undefined {
  return readShape<MainBondingJumperInput>(at, mainBondingJumperInputShape);
}
