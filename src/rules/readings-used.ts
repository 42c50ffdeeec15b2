import { type Code, chosenReading, otherReadings, type PolicySet, readingsFor } from "../edition/index.js";
import type { ReadingUsed } from "./result.js";

/** The open readings of a set of policies that would change a required area, with what the alternatives require. */
export function readingsUsed(
  code: Code,
  policies: Pick<PolicySet, "id">,
  requiredArea: number,
  areaUnder: (code: Code) => number,
): readonly ReadingUsed[] {
  const used: ReadingUsed[] = [];
  for (const id of readingsFor(code, policies)) {
    const otherwise = otherReadings(code, id).map((other) => {
      return { alternative: other.alternative, requiredArea: areaUnder(other.code) };
    });
    if (otherwise.every((one) => one.requiredArea === requiredArea)) continue;
    used.push({ id, chosen: chosenReading(code, id), otherwise });
  }
  return used;
}
