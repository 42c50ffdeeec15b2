import { type Reader, refuse, refuseType } from "../input/reader.js";

/** Checks a name on the drawing: not empty, and with no space around it that nobody sees. */
export function readId(at: Reader): string | undefined {
  const { value } = at;
  if (typeof value !== "string") return refuseType(at, "a name", "give it as text");
  if (value !== "" && value.trim() === value) return value;
  return refuse(at, "unknown-value", "a name without spaces around it", "write it as on the drawing");
}
