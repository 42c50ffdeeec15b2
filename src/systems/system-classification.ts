import { type Citation, type Code, type Evidence, weakestEvidence } from "../edition/index.js";
import { notSeparatelyDerived, separatelyDerivedDefinition } from "../edition/tables/sections.generated.js";
import type { Marks } from "../input/given-result.js";
import { type Members, readShape, without } from "../input/read-shape.js";
import { member, type Reader, readAll, refuse } from "../input/reader.js";
import { type Grounding, type SourceInput, sourceInputShape } from "./shape.generated.js";
import { type Follows, rolesThatFollow } from "./system-roles.js";

export type { SourceInput };

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

/** Which system a source makes; the same in every edition. */
export function kindOfSource(input: Omit<SourceInput, "code">): SourceClassification["kind"] {
  return kinds[reasonOf(input)];
}

/** The note speaks of grounded conductors; windings and systems without one rest on the definition. */
const restsOnNote: readonly ClassificationReason[] = [
  "grounded-conductor-switched",
  "grounded-conductor-not-connected",
  "grounded-conductor-solidly-connected",
];

function reasonOf(input: Omit<SourceInput, "code">): ClassificationReason {
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
  return readShape<SourceInput>(at, without(sourceInputShape, missingIn(at)), refine);
}

/** Members that a source of this kind, of a system grounded so, does not have. */
function missingIn(at: Reader): readonly string[] {
  const grounding = member(at, "grounding").value;
  const kind = member(member(at, "source"), "kind").value;
  if (grounding === "impedance" || grounding === "ungrounded") return tellsOfGroundedConductor;
  return kind === "transformer" ? ["transferSwitch"] : [];
}

const tellsOfGroundedConductor = ["transferSwitch", "groundedConductorSolidlyConnected"];

function refine(at: Reader, { source, grounding }: Members<SourceInput>): void {
  const isOpen = source !== undefined && source.kind !== "transformer";
  const carries = grounding === undefined || carriesGroundedConductor(grounding);
  if (!isOpen || !carries || tellsOfGroundedConductor.some((key) => member(at, key).value !== undefined))
    return;
  refuse(
    member(at, "transferSwitch"),
    "missing",
    "transferSwitch or groundedConductorSolidlyConnected",
    "say whether the grounded conductor is switched or solidly connected",
  );
}

/** By what a classified source is known. */
export const classificationMarks: Marks<SourceClassification> = {
  edition: "text",
  kind: "text",
  why: "text",
  citation: "object",
  follows: "object",
};
