import { type Citation, type Code, type Evidence, readCode, weakestEvidence } from "../edition/index.js";
import { notSeparatelyDerived, separatelyDerivedDefinition } from "../edition/tables/sections.generated.js";
import type { Marks } from "../input/given-result.js";
import { readShape } from "../input/read-shape.js";
import {
  member,
  optional,
  type Reader,
  readAll,
  readFlag,
  readObject,
  readOneOf,
  refuse,
} from "../input/reader.js";
import { type Grounding, groundingShape } from "./shape.generated.js";
import { type Follows, rolesThatFollow } from "./system-roles.js";

/** A transformer with windings of its own, or an autotransformer, whose windings are in common. */
export interface TransformerSource {
  /** Tells the members of the union apart. */
  readonly kind: "transformer";
  /** How its windings are connected to those of its supply. */
  readonly windings: "separate" | "common";
  /** Whether its overcurrent device is in the enclosure of the source. */
  readonly overcurrentDevice: "integral" | "not-integral";
}

/** A permanently installed generator, or another alternate source such as an inverter or a fuel cell. */
export interface AlternateSource {
  /** Tells the members of the union apart. */
  readonly kind: "generator" | "other";
  /** Whether its overcurrent device is in the enclosure of the source. */
  readonly overcurrentDevice: "integral" | "not-integral";
}

/** A source, and how its grounded conductor meets that of another system. */
export interface SourceInput {
  /** The code that it is held under: an edition, its amendments and readings. */
  readonly code: Code;
  /** The source and how it is connected. */
  readonly source: TransformerSource | AlternateSource;
  /** How the system of the source is grounded, or would be if it stood alone; `grounded-phase` is the corner of a delta. */
  readonly grounding: Grounding;
  /** Of a generator or another alternate source that has a grounded conductor. */
  readonly transferSwitch?: {
    /** Whether the transfer switch opens the grounded conductor. */
    readonly switchesGroundedConductor: boolean;
  };
  /**
   * Whether the grounded conductor is solidly connected to that of a service or of another system. Without it the transfer
   * switch tells; a transformer's is not by default. Decides where both are given.
   */
  readonly groundedConductorSolidlyConnected?: boolean;
}

/** Stable code of why a source is separately derived or not; its words are rendered from it. */
export type ClassificationReason =
  | "separate-windings"
  | "common-windings"
  | "grounded-conductor-switched"
  | "grounded-conductor-not-connected"
  | "grounded-conductor-solidly-connected"
  | "no-grounded-conductor";

/** Which system a source makes, and what follows for every role. Plain JSON. */
export interface SourceClassification {
  /** Edition of NFPA 70, by its year. */
  readonly edition: Code["year"];
  /** Separately derived or not. */
  readonly kind: "separately-derived" | "not-separately-derived";
  /** Stable code of the reason; its words are rendered from it. */
  readonly why: ClassificationReason;
  /** Where the edition says so. */
  readonly citation: Citation;
  /** What follows for each role. */
  readonly follows: Follows;
  /** Weakest evidence that the classification, and what it requires or does not require, rests on. */
  readonly evidence: Evidence;
}

/**
 * Tells whether a source makes a separately derived system, and which conductors then are required (250.30, 250.35). A source
 * whose grounded conductor is solidly connected to that of a service makes none: a three-pole transfer switch with the neutral
 * carried through. It has no system bonding jumper and no electrode conductor of its own.
 *
 * @param input - the code, the source with the place of its overcurrent device, its grounding, and how its grounded conductor meets another
 * @returns the kind of system with its reason and section, and for every role whether it is required
 * @throws {@link InputError} listing everything that is wrong in the input
 *
 * @example
 * ```ts
 * import { classifySource } from "bondmil";
 * const generator = classifySource({
 *   code: { year: "2017" },
 *   source: { kind: "generator", overcurrentDevice: "not-integral" },
 *   grounding: "solidly-grounded",
 *   transferSwitch: { switchesGroundedConductor: false },
 * });
 * generator.kind; // => "not-separately-derived"
 * generator.follows["system-bonding-jumper"].status; // => "not-required"
 * generator.follows["supply-side-bonding-jumper"]; // => { status: "required", note: "generator-to-disconnect", citation: { section: "250.35(B)", evidence: "single" } }
 * ```
 */
export function classifySource(input: SourceInput): SourceClassification {
  const read = readAll(input, readSource);
  const { code, source, grounding } = read;
  const why = reasonOf(read);
  const kind = kinds[why];
  const citation = (restsOnNote.includes(why) ? notSeparatelyDerived : separatelyDerivedDefinition)[
    code.year
  ];
  const follows = rolesThatFollow({ code, kind, source, grounding });
  const decided = Object.values(follows).filter(({ status }) => status !== "by-its-own-rule");
  const evidence = weakestEvidence(
    [citation, ...decided.map((one) => one.citation)].map((one) => one.evidence),
  );
  return { edition: code.year, kind, why, citation, follows, evidence };
}

const kinds: Readonly<Record<ClassificationReason, SourceClassification["kind"]>> = {
  "separate-windings": "separately-derived",
  "common-windings": "not-separately-derived",
  "grounded-conductor-switched": "separately-derived",
  "grounded-conductor-not-connected": "separately-derived",
  "grounded-conductor-solidly-connected": "not-separately-derived",
  "no-grounded-conductor": "separately-derived",
};

/** The note speaks of grounded conductors; windings and systems without one rest on the definition. */
const restsOnNote: readonly ClassificationReason[] = [
  "grounded-conductor-switched",
  "grounded-conductor-not-connected",
  "grounded-conductor-solidly-connected",
];

function reasonOf(input: SourceInput): ClassificationReason {
  const { source, grounding, transferSwitch, groundedConductorSolidlyConnected: connected } = input;
  if (source.kind === "transformer" && source.windings === "common") return "common-windings";
  if (connected === true) return "grounded-conductor-solidly-connected";
  if (source.kind === "transformer") return "separate-windings";
  if (!carriesGroundedConductor(grounding)) return "no-grounded-conductor";
  if (connected === false) return "grounded-conductor-not-connected";
  return transferSwitch?.switchesGroundedConductor === true
    ? "grounded-conductor-switched"
    : "grounded-conductor-solidly-connected";
}

function carriesGroundedConductor(grounding: Grounding): boolean {
  return grounding === "solidly-grounded" || grounding === "grounded-phase";
}

function readSource(at: Reader): SourceInput | undefined {
  const grounding = readShape<Grounding>(member(at, "grounding"), groundingShape);
  const source = readSourceKind(member(at, "source"));
  const carries = grounding === undefined || carriesGroundedConductor(grounding);
  const known = [
    "code",
    "source",
    "grounding",
    ...(carries ? ["groundedConductorSolidlyConnected"] : []),
    ...(carries && source?.kind !== "transformer" ? ["transferSwitch"] : []),
  ];
  if (!readObject(at, known)) return undefined;
  const code = readCode(member(at, "code"));
  const transferSwitch = optional(member(at, "transferSwitch"), readTransferSwitch);
  const connected = optional(member(at, "groundedConductorSolidlyConnected"), (one) =>
    readFlag(one, "whether the grounded conductor is solidly connected to that of another system"),
  );
  const isAlternate = source !== undefined && source.kind !== "transformer";
  const isTold = [member(at, "transferSwitch"), member(at, "groundedConductorSolidlyConnected")].some(
    ({ value }) => value !== undefined,
  );
  if (isAlternate && carries && !isTold) {
    refuse(
      member(at, "transferSwitch"),
      "missing",
      "transferSwitch or groundedConductorSolidlyConnected",
      "say whether the grounded conductor is switched or solidly connected",
    );
  }
  return (
    code &&
    source &&
    grounding && {
      code,
      source,
      grounding,
      ...(transferSwitch && { transferSwitch }),
      ...(connected === undefined ? {} : { groundedConductorSolidlyConnected: connected }),
    }
  );
}

function readSourceKind(at: Reader): SourceInput["source"] | undefined {
  const kind = readOneOf(member(at, "kind"), ["transformer", "generator", "other"]);
  const keys = ["kind", "overcurrentDevice", ...(kind === "transformer" ? ["windings"] : [])];
  if (kind === undefined || !readObject(at, keys)) return undefined;
  const overcurrentDevice = readOneOf(member(at, "overcurrentDevice"), ["integral", "not-integral"]);
  if (kind !== "transformer") return overcurrentDevice && { kind, overcurrentDevice };
  const windings = readOneOf(member(at, "windings"), ["separate", "common"]);
  return overcurrentDevice && windings && { kind, overcurrentDevice, windings };
}

function readTransferSwitch(at: Reader): SourceInput["transferSwitch"] | undefined {
  if (!readObject(at, ["switchesGroundedConductor"])) return undefined;
  const switchesGroundedConductor = readFlag(
    member(at, "switchesGroundedConductor"),
    "whether it switches the grounded conductor",
  );
  return switchesGroundedConductor === undefined ? undefined : { switchesGroundedConductor };
}

/** By what a classified source is known. */
export const classificationMarks: Marks<SourceClassification> = {
  edition: "text",
  kind: "text",
  why: "text",
  citation: "object",
  follows: "object",
};
