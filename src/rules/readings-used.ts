import { type Code, chosenReading, otherReadings, type PolicySet, readingsFor } from "../edition/index.js";
import type { ReadingUsed } from "./result.js";

/** The open readings of a set of policies that would change a required area, with what the alternatives require. */
export function readingsUsed(
  code: Code,
  policies: Pick<PolicySet, "id">,
  requiredArea: number,
  areaUnder: (code: Code) => number,
): readonly ReadingUsed[] {
  return readingsFor(code, policies).flatMap((id): ReadingUsed[] => {
    const otherwise = otherReadings(code, id).map((other) => ({
      alternative: other.alternative,
      requiredArea: areaUnder(other.code),
    }));
    const matters = otherwise.some((other) => other.requiredArea !== requiredArea);
    return matters ? [{ id, chosen: chosenReading(code, id), otherwise }] : [];
  });
}
