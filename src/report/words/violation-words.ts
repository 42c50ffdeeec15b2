import { conductorWords } from "../../installation/conductor-words.js";
import type { Violation, ViolationCode } from "../../installation/violation.js";

/** What is wrong, and what would be right. */
export const violationWords: Readonly<Record<ViolationCode, readonly [wrong: string, right: string]>> = {
  "more-than-six-disconnects": [
    "More than six disconnects for one service are not permitted.",
    "Put at most six disconnects on it; a further service needs its own permission.",
  ],
  "jumper-not-permitted-here": [
    "This edition does not permit the system bonding jumper at this place.",
    "Put the one jumper where the edition permits it: an outdoor source has it at the source; jumpers at both ends are for the listed exception only.",
  ],
  "electrode-conductor-not-at-jumper": [
    "The grounding electrode conductor of a separately derived system is connected where its system bonding jumper is, that of an outdoor source at the source.",
    "Start it where the jumper is.",
  ],
  "electrode-conductor-missing": [
    "Each of several enclosures needs its grounding electrode connection, and this one has none.",
    "Run a tap or an electrode conductor to it, or connect one at a place ahead of all enclosures where the edition permits that.",
  ],
  "material-forbidden": [
    "An amendment forbids this material for this conductor.",
    "Choose a material that it allows.",
  ],
};

/** A violation in a sentence: where, what is wrong, by which section, and what would be right. */
export function violationSentence({ code, section, at, conductors }: Violation): string {
  const [wrong, right] = violationWords[code];
  return `${(conductors?.map(conductorWords) ?? at).join(", ")}: ${wrong} [${section}] ${right}`;
}
