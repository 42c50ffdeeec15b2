import type { DesignationAnswer, DesignationBonding, DesignationNote } from "../arrangement/designation.js";
import { designationMarks } from "../arrangement/designation.js";
import type { ClassificationReason, SourceClassification } from "../arrangement/system-classification.js";
import { classificationMarks } from "../arrangement/system-classification.js";
import type { FollowsNote, RoleFollows } from "../arrangement/system-roles.js";
import { roleFacts, roles } from "../edition/index.js";
import { useResult } from "../input/given-result.js";

const reasonWords: Readonly<Record<ClassificationReason, string>> = {
  "separate-windings": "its windings are separate from those of the supply",
  "common-windings": "its windings are in common with the supply",
  "grounded-conductor-switched": "the transfer switch switches the grounded conductor",
  "grounded-conductor-not-connected": "its grounded conductor is not connected to that of another system",
  "grounded-conductor-solidly-connected":
    "its grounded conductor stays solidly connected to that of another system",
  "no-grounded-conductor": "no grounded conductor runs from it to another system",
};

const followsWords: Readonly<Record<FollowsNote, string>> = {
  "at-one-point": "at one point from the source to the first disconnect",
  "from-source-to-first-disconnect": "from the source to the first disconnect",
  "source-and-disconnect-in-one-enclosure": "the first disconnect is in the enclosure of the source",
  "at-the-system-bonding-jumper": "connected where the system bonding jumper is",
  "from-metal-enclosures": "from the metal enclosures, at any point from the source to the first disconnect",
  "at-the-impedance": "from the grounded side of the impedance or the first disconnect",
  "system-bonding-jumper-instead": "the system bonding jumper takes its place",
  "jumper-of-other-system-serves": "the bonding jumper of the system that it is tied to serves",
  "electrode-conductor-of-other-system-serves":
    "the electrode conductor of the system that it is tied to serves",
  "generator-to-disconnect": "from the generator to the disconnect",
  "on-load-side-of-generator-device": "on the load side of the generator's overcurrent device",
  "no-conductors-ahead-of-the-device": "no conductors run ahead of the overcurrent device",
  "ahead-of-the-device": "along the conductors ahead of the overcurrent device",
  "from-the-device": "along the conductors from the overcurrent device, which are a feeder",
  "ungrounded-system": "an ungrounded system has no conductor that it could bond",
  "not-through-an-impedance": "the system is not grounded through an impedance",
  "through-the-impedance": "the system is grounded through its impedance",
  "own-rule": "by its own rule",
};

const designationWords: Readonly<Record<DesignationNote, string>> = {
  "within-its-enclosure": "within its enclosure",
  "jumper-is-in-the-service-disconnect": "the service disconnect has it",
  "not-named-in-this-edition":
    "this edition does not name such a disconnect: the first one is the service disconnect",
  "as-a-service": "as at a service disconnect",
  "no-rule-in-this-edition":
    "this edition has no rule and practice differs; ask the authority having jurisdiction",
  "ungrounded-system": "the system is ungrounded",
  "through-the-impedance": "the system is grounded through its impedance",
  "anywhere-on-supply-side":
    "at any accessible point from the drop's or lateral's load end to the service disconnect",
  "to-a-metal-enclosure-on-supply-side": "to a metal enclosure of the service conductors",
  "section-names-it": "its section sends it to the rule on electrode conductors",
  "letters-left-behind": "its section names the rule by a letter that was left behind; a reading",
};

const standingWords: Readonly<Record<DesignationAnswer["standing"] | RoleFollows["standing"], string>> = {
  required: "required",
  permitted: "permitted",
  "not-required": "not required",
  disputed: "disputed",
  "by-its-own-rule": "by its own rule",
};

const bondWords: Readonly<Record<DesignationBonding["box"]["bondedBy"][number], string>> = {
  "main-bonding-jumper": "its main bonding jumper",
  "grounded-conductor": "the grounded conductor",
  "supply-side-bonding-jumper": "a supply-side bonding jumper",
};

const beyondWords: Readonly<Record<DesignationBonding["beyond"], string>> = {
  feeder: "a feeder, with an equipment grounding conductor",
  "service-conductors": "still service conductors",
  "conductors-of-the-source": "those of the source",
};

/**
 * Says in lines whether a source is separately derived, why, and which conductors it requires or does not require; roles that
 * follow their own rule are left out.
 *
 * @param classification - a classified source
 * @returns lines of text, none of them wrapped
 * @throws {@link InputError} for anything but what classifySource gives
 *
 * @example
 * ```ts
 * import { classifySource, explainSource } from "bondmil";
 * const transformer = classifySource({
 *   code: { year: "2023" },
 *   source: { kind: "transformer", windings: "separate", overcurrentDevice: "not-integral" },
 *   grounding: "ungrounded",
 * });
 * explainSource(transformer).split("\n")[0]; // => "Separately derived: its windings are separate from those of the supply [Article 100]."
 * ```
 */
export function explainSource(classification: SourceClassification): string {
  return useResult(classification, "classifySource", classificationMarks, sourceLines);
}

function sourceLines({ edition, kind, why, citation, follows }: SourceClassification): string {
  const head = kind === "separately-derived" ? "Separately derived" : "Not separately derived";
  const lines = roles.flatMap((role) => {
    const { standing, note, citation: at } = follows[role];
    if (standing === "by-its-own-rule") return [];
    const name = capital(roleFacts[role].name[edition]);
    return [`${name}: ${standingWords[standing]}, ${followsWords[note]} [${at.section}].`];
  });
  return [`${head}: ${reasonWords[why]} [${citation.section}].`, ...lines].join("\n");
}

/**
 * Says in lines how a designated disconnect on the supply side is bonded and grounded.
 *
 * @param bonding - a designated disconnect
 * @returns lines of text, none of them wrapped
 * @throws {@link InputError} for anything but what bondingAtDesignation gives
 *
 * @example
 * ```ts
 * import { bondingAtDesignation, explainDesignation } from "bondmil";
 * const meter = bondingAtDesignation({
 *   code: { year: "2023" },
 *   designation: "meter-disconnect",
 *   grounding: "solidly-grounded",
 * });
 * explainDesignation(meter).split("\n")[1]; // => "Enclosure: bonded by the grounded conductor or a supply-side bonding jumper [250.142(A)]."
 * ```
 */
export function explainDesignation(bonding: DesignationBonding): string {
  return useResult(bonding, "bondingAtDesignation", designationMarks, designationLines);
}

function designationLines(bonding: DesignationBonding): string {
  const { mainBondingJumper, box, electrodeConductor, beyond } = bonding;
  const bonds = box.bondedBy.map((one) => bondWords[one]).join(" or ");
  return [
    `Main bonding jumper: ${answerOf(mainBondingJumper)}.`,
    `Enclosure: bonded by ${bonds} [${box.citation.section}].`,
    `Grounding electrode conductor: ${answerOf(electrodeConductor)}.`,
    `Conductors beyond: ${beyondWords[beyond]}.`,
  ].join("\n");
}

function answerOf({ standing, note, citation }: DesignationAnswer): string {
  return `${standingWords[standing]}, ${designationWords[note]} [${citation.section}]`;
}

function capital(text: string): string {
  return `${text.slice(0, 1).toUpperCase()}${text.slice(1)}`;
}
