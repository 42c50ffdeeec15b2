import { type Citation, roleIds } from "../../edition/index.js";
import { roles } from "../../roles/register.generated.js";
import type { DesignationAnswer, DesignationBonding, DesignationNote } from "../../systems/designation.js";
import type { ClassificationReason, SourceClassification } from "../../systems/system-classification.js";
import type { FollowsNote, RoleFollows } from "../../systems/system-roles.js";
import { capital } from "../words/names.js";
import { readingPhrase } from "../words/reading-words.js";
import { evidenceFact } from "./facts.js";
import type { Statement, Told } from "./told.js";

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

const statusWords: Readonly<Record<DesignationAnswer["status"] | RoleFollows["status"], string>> = {
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

/** Whether a source is separately derived, why, and which conductors it requires; roles with a rule of their own are left out. */
export function tellSource({ edition, kind, why, citation, follows, evidence }: SourceClassification): Told {
  const isDerived = kind === "separately-derived";
  const head = isDerived ? "separately derived" : "not separately derived";
  return {
    name: isDerived ? "Separately derived system" : "Source that is not separately derived",
    editions: [edition],
    facts: [evidenceFact(evidence)],
    statements: [
      statement("classification", head, reasonWords[why], citation),
      ...roleIds.flatMap((role) => {
        const { status, note, citation: at } = follows[role];
        if (status === "by-its-own-rule") return [];
        const words = `${statusWords[status]}, ${followsWords[note]}`;
        return [statement(role, roles[role].facts.name[edition], words, at)];
      }),
    ],
    beside: [],
    readings: [],
    cautions: [],
    row: {},
  };
}

/** How a designated disconnect on the supply side is bonded and grounded. */
export function tellDesignation(bonding: DesignationBonding): Told {
  const { edition, mainBondingJumper, box, electrodeConductor, beyond, readings, evidence } = bonding;
  const bonds = box.bondedBy.map((one) => bondWords[one]).join(" or ");
  return {
    name: capital(designationNames[bonding.designation]),
    editions: [edition],
    facts: [evidenceFact(evidence)],
    statements: [
      answer("main-bonding-jumper", "main bonding jumper", mainBondingJumper),
      statement("enclosure", "enclosure", `bonded by ${bonds}`, box.citation),
      answer("grounding-electrode-conductor", "grounding electrode conductor", electrodeConductor),
      statement("beyond", "conductors beyond", beyondWords[beyond], null),
    ],
    beside: [],
    readings: readings.map(({ id, chosen, enforcedBy }) => {
      const by = enforcedBy === undefined ? "" : `, by amendment (${enforcedBy})`;
      return `${readingPhrase(id, chosen)}${by}.`;
    }),
    cautions: [],
    row: { designation: bonding.designation },
  };
}

const designationNames: Readonly<Record<DesignationBonding["designation"], string>> = {
  "service-disconnect": "service disconnect",
  "emergency-disconnect-as-service-disconnect": "emergency disconnect that is the service disconnect",
  "emergency-disconnect-not-service-equipment": "emergency disconnect that is not service equipment",
  "meter-disconnect": "meter disconnect",
  "supply-side-source": "disconnect of a source on the supply side",
};

function answer(step: string, about: string, { status, note, citation }: DesignationAnswer): Statement {
  return statement(step, about, `${statusWords[status]}, ${designationWords[note]}`, citation);
}

function statement(step: string, about: string, words: string, citation: Citation | null): Statement {
  const [section, evidence] = [citation?.section ?? null, citation?.evidence ?? null];
  return { step, about, words, isWhole: false, area: null, section, evidence };
}
