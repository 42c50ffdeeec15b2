import { chosenReading, otherReadings, weakestEvidence } from "../edition/index.js";
import { commonConductorOfOneSystem } from "../edition/tables/sections.generated.js";
import type { Electrode } from "../rules/electrode.js";
import type { ReadingUsed } from "../rules/result.js";
import { type DerivedInCode, wholeServing } from "./derived-system.js";
import type { InstallationInCode } from "./schedule.js";
import { conductorServing } from "./schedule-electrodes.js";
import type { ServedResult } from "./serving.js";

const reading = "common-conductor-of-one-derived-system";

/**
 * The common electrode conductor that several jumpers of one derived system tap. No text sizes it: by default it is sized as the one electrode
 * conductor of that system, by all its conductors; the other reading gives it the fixed size of several systems.
 *
 * @param at - the system in its code
 * @param served - the electrodes that the conductor serves
 * @param ofSeveral - the size of the common conductor of several systems, under a code
 */
export function commonOfOneSystem(
  at: DerivedInCode,
  served: readonly Electrode[],
  ofSeveral: (at: InstallationInCode) => ServedResult,
): ServedResult {
  const { code } = at;
  const size = (own: InstallationInCode): ServedResult =>
    chosenReading(own.code, reading) === "as-of-several-systems"
      ? ofSeveral(own)
      : conductorServing({ ...own, system: "separately-derived" }, served, { servings: [wholeServing(at)] });
  const { by, result } = size(at);
  const otherwise = otherReadings(code, reading).map((other) => ({
    alternative: other.alternative,
    requiredArea: size({ ...at, code: other.code }).result.requiredArea,
  }));
  const isOpen = otherwise.some((other) => other.requiredArea !== result.requiredArea);
  const used: readonly ReadingUsed[] = isOpen
    ? [{ id: reading, chosen: chosenReading(code, reading), otherwise }]
    : [];
  const own = commonConductorOfOneSystem[code.year];
  const citation = chosenReading(code, reading) === "by-its-conductors" ? own : result.citation;
  return {
    by,
    result: {
      ...result,
      citation,
      evidence: weakestEvidence([result.evidence, citation.evidence]),
      readings: [...result.readings, ...used],
      cautions: [...result.cautions, { code: "common-conductor-inferred", section: own.section }],
    },
  };
}
