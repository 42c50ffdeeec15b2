import { conductorWords } from "../../installation/conductor-words.js";
import type { Violation, ViolationCode, ViolationFacts } from "../../installation/violation.js";
import { remedySentence } from "./remedy-words.js";
import { unmetWords } from "./unmet-words.js";

/** What is wrong, with what is there. */
export const violationWords: Readonly<Record<ViolationCode, (found: ViolationFacts) => string>> = {
  "more-than-six-disconnects": ({ count, most }) =>
    `${count === undefined ? "More than six" : count} service disconnects; more than ${most ?? "six"} for one service are not permitted.`,
  "disconnects-share-a-compartment": ({ count }) =>
    `${count === undefined ? "Several" : count} service disconnects in one undivided enclosure are not permitted.`,
  "jumper-not-permitted-here": ({ parallelPaths = [], unmet = [] }) =>
    [
      "The system bonding jumper is not permitted at this place.",
      ...(unmet.includes("source-may-not")
        ? ["Jumpers at both ends are permitted for other sources only."]
        : []),
      ...(unmet.includes("several-disconnects")
        ? ["Jumpers at both ends are permitted at the source and one first disconnect, and here are several."]
        : []),
      ...(parallelPaths.length > 0
        ? [
            `The metal raceway of ${parallelPaths.join(", ")} joins both ends and makes a parallel path for the current of the grounded conductor.`,
          ]
        : []),
    ].join(" "),
  "grounded-conductor-bonded-on-load-side": ({ unmet = [] }) =>
    `The grounded conductor is connected to ground on the load side.${unmet.length > 0 ? ` The exception does not hold: ${unmetWords(unmet)}.` : ""}`,
  "electrode-conductor-not-at-jumper": () =>
    "The grounding electrode conductor of a separately derived system is connected where its system bonding jumper is, that of an outdoor source at the source; this one is not.",
  "electrode-conductor-missing": ({ count }) =>
    count === 0
      ? "A grounding electrode conductor is required, and no conductor to an electrode is drawn."
      : "Each of several enclosures needs its grounding electrode connection, and this one has none.",
  "parallel-below-1-0": (found) =>
    `Conductors${conductorsIn(found, " of ")} are in parallel; smaller than 1/0 AWG they may be so in few cases only.`,
  "grounded-conductors-below-1-0": (found) =>
    `Grounded conductors${conductorsIn(found, " of ")} are in parallel; they are 1/0 AWG or larger, except existing neutrals of 2 and 1 AWG under engineering supervision.`,
  "unlike-conductors-in-parallel": (found) =>
    `Conductors of one phase in parallel are not alike${conductorsIn(found, ": ")}.`,
  "bonded-by-locknuts": () => "Ordinary locknuts alone do not bond metal on the supply side of a service.",
  "electrode-not-supplemented": ({ kind = "rod", ohms }) =>
    `A single ${kind}${ohms === undefined ? "" : ` of ${ohms} ohms`} without a supplemental electrode; a water pipe does not supplement it.`,
  "water-pipe-not-supplemented": () => "A metal water pipe is no electrode without a supplement.",
  "electrode-not-connected": ({ kind = "" }) =>
    `This electrode${kind === "" ? "" : ` (${kind.replaceAll("-", " ")})`} is present, and no conductor to it is drawn.`,
  "electrode-conductor-unprotected": ({ kind }) =>
    kind === undefined || kind === "none"
      ? "The conductor to this electrode is not protected."
      : "The raceway of the conductor to this electrode does not protect it: PVC has to be Schedule 80.",
  "aluminum-not-permitted-here": ({ unmet = [] }) =>
    `Aluminum is not permitted so for the conductor to this electrode${unmet.length > 0 ? `: ${unmetWords(unmet)}` : ""}.`,
  "material-forbidden": () => "An amendment forbids this material for this conductor.",
  "factory-jumper-to-be-removed": () =>
    "The jumper that the factory fitted between grounded conductor and frame is a second connection of the grounded conductor to metal, in parallel with the one that the system has.",
  "grounded-conductor-rebonded": () =>
    "The grounded conductor may stay the fault path of an existing building only where no equipment grounding conductor runs with the supply, no continuous metal path is bonded at both buildings, and no ground-fault protection of equipment stands on the supply side.",
  "jumper-outside-too-long": () =>
    "A bonding jumper outside its raceway or enclosure is longer than 6 ft; longer ones are for outdoor poles and electrodes.",
  "designation-not-in-edition": () =>
    "This edition names no emergency disconnect ahead of the service disconnect: marked so it would be the service disconnect itself, with the main bonding jumper.",
  "electrode-conductor-not-at-impedance": () =>
    "The electrode conductor of a system that is grounded through an impedance starts between the grounded side of the impedance and the first disconnect, where it is said to be connected.",
};

function conductorsIn({ conductors = [] }: ViolationFacts, before: string): string {
  const all = conductors.map(({ size, material }) => (material === undefined ? size : `${size} ${material}`));
  return all.length === 0 ? "" : `${before}${all.join(", ")}`;
}

/** A violation in sentences: where, what is wrong, by which section, and what would be right. */
export function violationSentence(violation: Violation): string {
  const { code, section, at, conductors, found = {}, remedies } = violation;
  const isOfConductors = code === "material-forbidden";
  const where = (isOfConductors ? conductors?.map(conductorWords) : undefined) ?? at;
  return `${where.join(", ")}: ${violationWords[code](found)} [${section}] ${remedySentence(remedies)}`;
}
