import { type Members, readShape } from "../../input/read-shape.js";
import type { Reader } from "../../input/reader.js";
import { refuseLargeControlTransformer } from "../../rules/small-supplies.js";
import { type SystemBondingJumperInput, systemBondingJumperInputShape } from "./shape.generated.js";

export type { SystemBondingJumperInput };

/** Checks the input of a system bonding jumper. */
export function readInput(at: Reader): SystemBondingJumperInput | undefined {
  return readShape<SystemBondingJumperInput>(at, systemBondingJumperInputShape, refine);
}

function refine(at: Reader, { code, supply, controlTransformer }: Members<SystemBondingJumperInput>): void {
  if (controlTransformer === true && code !== undefined && supply !== undefined) {
    refuseLargeControlTransformer(at, supply, code.year);
  }
}
