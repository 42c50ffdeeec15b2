import { type Members, readShape } from "../../input/read-shape.js";
import { member, type Reader } from "../../input/reader.js";
import { refuseLargeRating } from "../../rules/protected-circuit.js";
import { type OtherPipingBondingJumperInput, otherPipingBondingJumperInputShape } from "./shape.generated.js";

export type { OtherPipingBondingJumperInput };

/** Checks the input of a jumper to other piping. */
export function readInput(at: Reader): OtherPipingBondingJumperInput | undefined {
  return readShape<OtherPipingBondingJumperInput>(at, otherPipingBondingJumperInputShape, refine);
}

function refine(at: Reader, { code }: Members<OtherPipingBondingJumperInput>): void {
  if (code !== undefined) refuseLargeRating(member(at, "deviceAmperes"), code);
}
