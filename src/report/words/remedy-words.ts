import type { Remedy, RemedyCode } from "../../installation/violation.js";
import { capital } from "./names.js";

/** What to do, to begin a sentence or to follow "or". */
export const remedyWords: Readonly<Record<RemedyCode, string>> = {
  "six-disconnects-at-most": "put at most six disconnects on it; a further service needs its own permission",
  "compartment-for-each": "give each disconnect a section or compartment of its own",
  "enclosure-for-each": "give each disconnect an enclosure of its own",
  "jumper-at-source-only": "put the one jumper at the source",
  "jumper-at-disconnects-only": "put the jumpers at the disconnects alone",
  "nonmetallic-raceways": "run the conductors without a metal path between the ends",
  "remove-connection": "take the connection away and bond the metal to the equipment grounding conductor",
  "run-equipment-grounding-conductor":
    "run an equipment grounding conductor and keep the grounded conductor apart at the building",
  "run-inside-or-shorten": "run it inside, or shorten it; it follows the raceway",
  "designate-otherwise":
    "mark it as the service disconnect, or as a meter disconnect if it is one, or go by an edition that names it",
  "start-where-named": "start it at the place that is named for it, or name the place where it starts",
  "meet-exception": "meet every condition of the exception",
  "start-electrode-conductor-here": "start it where the jumper is",
  "connect-each-enclosure": "run a tap or an electrode conductor to it",
  "connect-ahead-of-all": "connect one at a place ahead of all enclosures, where the edition permits that",
  "larger-parallel-conductors": "use conductors of 1/0 AWG or larger",
  "one-conductor-per-phase": "run one larger conductor",
  "alike-conductors": "use one size and one material for each phase",
  "jumper-or-fittings":
    "add a bonding jumper, threaded hubs, tight threadless fittings or listed bonding devices",
  "further-rod": "add a second rod, pipe or plate, at least 6 ft away",
  "electrode-of-another-kind":
    "add another electrode, such as a concrete-encased one, a ring or in-ground structural metal",
  "record-of-25-ohms": "record that it measures 25 ohms or less",
  "connect-electrode": "connect it",
  "connect-to-electrode": "connect it to the electrodes that are present, or install one",
  "protect-conductor": "run it in a metal raceway, PVC or reinforced thermosetting conduit, or cable armor",
  "schedule-80": "use Schedule 80 PVC or another raceway that the section names",
  "larger-electrode-conductor": "use 6 AWG or larger, which runs open where it is not exposed to damage",
  "copper-conductor": "use copper",
  "insulated-conductor": "use a conductor with an extruded covering",
  "keep-clear": "keep it clear of them",
  "end-higher": "end it at least 18 in. above the earth",
  "end-in-listed-enclosure": "end it in an outdoor enclosure that is listed and identified for the place",
  "permitted-material": "choose a material that the amendment allows",
};

/** What would be right: any one of several. */
export function remedySentence(remedies: readonly Remedy[]): string {
  const all = remedies.map(({ code, at = [] }) => {
    const where = at.length === 0 ? "" : ` (${at.join(", ")})`;
    return `${remedyWords[code]}${where}`;
  });
  return `${capital(all.join("; or "))}.`;
}
