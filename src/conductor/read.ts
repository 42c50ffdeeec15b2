import { type Reader, readOneOf } from "../input/reader.js";
import { type Material, materials } from "./material.js";
import { refuseSize } from "./refuse-size.js";
import { type ConductorSize, isConductorSize } from "./size.js";

/** Checks for a canonical size in an input; free text is for {@link parseSize}, so that nothing is guessed here. */
export function readSize(at: Reader): ConductorSize | undefined {
  return isConductorSize(at.value) ? at.value : refuseSize(at);
}

/** Checks a material in an input. */
export function readMaterial(at: Reader): Material | undefined {
  return readOneOf(at, materials);
}
