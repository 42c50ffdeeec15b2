import { type Reader, refuseType } from "../input/reader.js";

/** Lets an installation through that is read for itself afterwards. */
export function readGiven(at: Reader): unknown {
  return at.value ?? refuseType(at, "an installation", "give an installation");
}
