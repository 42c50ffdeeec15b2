import type { Role } from "../edition/index.js";
import type {
  Alternative,
  ConductorEnd,
  ConductorIdentity,
  Landing,
  UnnamedEnd,
} from "./conductor-identity.js";

export const jumperAtSource = "one jumper at the source";
export const jumperInEachEnclosure = "a jumper in each enclosure";

/** How an arrangement is called inside of a sentence. */
export const alternativeNames: Readonly<Record<Alternative, string>> = {
  "jumper-at-source": jumperAtSource,
  "jumper-in-each-enclosure": jumperInEachEnclosure,
};

/** A role in the words of the trade. */
export function roleName(role: Role): string {
  return role.replaceAll("-", " ").replace("supply side", "supply-side");
}

/** A conductor in words: what it is, what it belongs to, where it starts if that tells it apart, and its arrangement. */
export function conductorWords({ role, part, subject, place, alternative }: ConductorIdentity): string {
  const from = place === undefined ? "" : ` from ${place}`;
  const arranged = alternative === undefined ? "" : ` (${alternativeNames[alternative]})`;
  return `${part === "tap" ? "grounding electrode tap" : roleName(role)} ${subject}${from}${arranged}`;
}

/** Where a conductor starts or ends, in words; what the installation names goes by its id. */
export function endWords(end: ConductorEnd): string {
  switch (end.kind) {
    case "place":
      return on(end.on, end.id);
    case "assembly":
      return on(end.on, `assembly of ${end.of}`);
    case "neutral-point":
      return `neutral point of ${end.of}`;
    case "electrode-connection":
      return `electrode connection of ${end.of}`;
    case "impedance":
      return `impedance of ${end.of}`;
    case "raceway-fitting":
      return `raceway fitting of ${end.of}`;
    case "pipe-side":
      return `${end.of} on ${end.side === "one" ? "one" : "the other"} side of ${end.fitting}`;
    case "raceway":
      return `raceway of ${conductorWords(end.around)}`;
    default:
      return unnamedEnds[end.kind];
  }
}

function on(landing: Landing | undefined, place: string): string {
  return landing === undefined ? place : `${landings[landing]} ${place}`;
}

const landings: Readonly<Record<Landing, string>> = {
  "neutral-bar": "neutral bar of",
  "grounded-phase-bar": "grounded conductor bar of",
  "grounding-bar": "equipment grounding bar of",
  "neutral-bus": "neutral bus of the",
  "grounded-phase-bus": "grounded conductor bus of the",
  "grounding-bus": "equipment grounding bus of the",
  "neutral-terminal": "neutral terminal of",
  "grounded-phase-terminal": "grounded conductor terminal of",
  "grounded-conductor": "grounded conductor in",
  enclosure: "enclosure of",
};

const unnamedEnds: Readonly<Record<UnnamedEnd, string>> = {
  "grounded-conductor": "grounded conductor",
  "grounding-electrode-conductor": "grounding electrode conductor",
  "equipment-grounding-conductors": "equipment grounding conductors",
  electrodes: "electrodes",
  source: "source",
  "first-disconnect": "first disconnect",
  "panel-of-occupancy": "panel of the occupancy",
  "conductor-inside": "conductor inside",
};
