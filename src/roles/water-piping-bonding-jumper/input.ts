import { type Members, readShape } from "../../input/read-shape.js";
import { member, type Reader } from "../../input/reader.js";
import { refuseLargeRating } from "../../rules/protected-circuit.js";
import { type WaterPipingBondingJumperInput, waterPipingBondingJumperInputShape } from "./shape.generated.js";

export type { WaterPipingBondingJumperInput };

/** Checks the input of a jumper to water piping. */
export function readInput(at: Reader): WaterPipingBondingJumperInput | undefined {
  return readShape<WaterPipingBondingJumperInput>(at, waterPipingBondingJumperInputShape, refine);
}

function refine(at: Reader, { code }: Members<WaterPipingBondingJumperInput>): void {
  if (code !== undefined) refuseLargeRating(member(at, "deviceAmperes"), code);
}
