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
    const others = otherReadings(code, id);
    const areas = others.map((other) => areaUnder(other.code));
    if (areas.every((area) => area === requiredArea)) continue;
    const otherwise = others.map(({ alternative }, i) => {
      return { alternative, requiredArea: areas[i] as number };
    });
    used.push({ id, chosen: chosenReading(code, id), otherwise });
  }
  return used;
}
