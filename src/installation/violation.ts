import type { ConductorSize, Material } from "../conductor/index.js";
import type { CitedEvidence } from "../edition/citation.js";
import type { ConductorIdentity } from "./conductor-identity.js";

/**
 * Stable codes of what the code forbids in an installation, or misses in it. Unlike a caution, which is advice, a violation has to be mended.
 *
 * @example
 * ```ts
 * import { violationCodes } from "bondmil";
 * violationCodes.includes("jumper-not-permitted-here"); // => true
 * ```
 */
export const violationCodes = [
  "more-than-six-disconnects",
  "disconnects-share-a-compartment",
  "jumper-not-permitted-here",
  "grounded-conductor-bonded-on-load-side",
  "electrode-conductor-not-at-jumper",
  "electrode-conductor-missing",
  "parallel-below-1-0",
  "grounded-conductors-below-1-0",
  "unlike-conductors-in-parallel",
  "bonded-by-locknuts",
  "electrode-not-supplemented",
  "water-pipe-not-supplemented",
  "electrode-not-connected",
  "electrode-conductor-unprotected",
  "aluminum-not-permitted-here",
  "material-forbidden",
  "factory-jumper-to-be-removed",
  "grounded-conductor-rebonded",
  "jumper-outside-too-long",
  "electrode-conductor-not-at-impedance",
  "designation-not-in-edition",
] as const;

/** One of {@link violationCodes}. */
export type ViolationCode = (typeof violationCodes)[number];

/** Stable codes of what would be right; each alone mends the violation. */
export type RemedyCode =
  | "six-disconnects-at-most"
  | "compartment-for-each"
  | "enclosure-for-each"
  | "jumper-at-source-only"
  | "jumper-at-disconnects-only"
  | "nonmetallic-raceways"
  | "remove-connection"
  | "run-equipment-grounding-conductor"
  | "run-inside-or-shorten"
  | "start-where-named"
  | "designate-otherwise"
  | "meet-exception"
  | "start-electrode-conductor-here"
  | "connect-each-enclosure"
  | "connect-ahead-of-all"
  | "larger-parallel-conductors"
  | "one-conductor-per-phase"
  | "alike-conductors"
  | "jumper-or-fittings"
  | "further-rod"
  | "electrode-of-another-kind"
  | "record-of-25-ohms"
  | "connect-electrode"
  | "connect-to-electrode"
  | "protect-conductor"
  | "schedule-80"
  | "larger-electrode-conductor"
  | "copper-conductor"
  | "insulated-conductor"
  | "keep-clear"
  | "end-higher"
  | "end-in-listed-enclosure"
  | "permitted-material";

/** What would be right. */
export interface Remedy {
  /** What to do. */
  readonly code: RemedyCode;
  /** Ids of the places, runs or electrodes that it is about, where they are others than those of the violation. */
  readonly at?: readonly string[];
}

/** Stable codes of the conditions of an exception that are not met, and of what an aluminum conductor may not have. */
export type UnmetCondition =
  | "branch-circuit-not-existing"
  | "conductor-not-insulated"
  | "conductor-too-small"
  | "not-beside-service-disconnect"
  | "ground-fault-protection"
  | "source-may-not"
  | "several-disconnects"
  | "against-masonry"
  | "against-concrete"
  | "against-earth"
  | "corrosive-surroundings"
  | "end-near-earth";

/** What is there, as far as the violation hangs on it. */
export interface ViolationFacts {
  /** How many there are. */
  readonly count?: number;
  /** How many there may be at most. */
  readonly most?: number;
  /** Runs whose metal raceway is a parallel path for the current of the grounded conductor. */
  readonly parallelPaths?: readonly string[];
  /** Conductors as they are, each kind once. */
  readonly conductors?: readonly {
    /** Trade size. */
    readonly size: ConductorSize;
    /** Material, where it is known. */
    readonly material?: Material;
  }[];
  /** Kind of electrode, or the protection of a conductor. */
  readonly kind?: string;
  /** Resistance to ground on record, in ohms. */
  readonly ohms?: number;
  /** Conditions that are not met, or what the section excludes. */
  readonly unmet?: readonly UnmetCondition[];
}

/** Something that the edition, or an amendment, forbids in what is drawn or misses in it. */
export interface Violation {
  /** What it is; its words are rendered from the code and from what is there. */
  readonly code: ViolationCode;
  /** The section or ordinance that says so. */
  readonly section: string;
  /** How surely the section is known to say so. */
  readonly evidence: CitedEvidence;
  /** Where: ids of the installation, or of conductors of the schedule. */
  readonly at: readonly string[];
  /** Given where it is about conductors of the schedule. */
  readonly conductors?: readonly ConductorIdentity[];
  /** What is there; absent where the code says it all. */
  readonly found?: ViolationFacts;
  /** What would be right; any one of them. */
  readonly remedies: readonly Remedy[];
}
