import type { TemperatureColumn } from "../ampacity/index.js";
import type { ConductorColumn, StandardSize } from "../conductor/index.js";
import type { EditionYear, Evidence, Readings, Role } from "../edition/index.js";
import type { RacewayKind, TradeSize } from "../engineering/raceway-fill/shape.generated.js";
import type { Marks } from "../input/given-result.js";
import type { Outcome } from "../rules/result.js";
import type { Supply } from "../supply/index.js";

/** A conductor that bonds or grounds, or a grounded one, as the ungrounded conductors require it. */
export interface CausedConductor {
  /** What it is there for; its steps are those of the role under this id. */
  readonly role: Role;
  /** How many of them: 1, or one in each raceway. */
  readonly count: number;
  /** A size, an area alone, or that none is required. */
  readonly outcome: Outcome;
  /** Smallest permitted area in circular mils, before the step to a standard size; 0 where none is required. */
  readonly requiredArea: number;
}

/** The raceways of a candidate, all alike. */
export interface CandidateRaceways {
  /** Kind of conduit or tubing. */
  readonly kind: RacewayKind;
  /** How many run side by side. */
  readonly count: number;
  /** The smallest trade size that takes what runs in one of them. */
  readonly tradeSize: TradeSize;
}

/** What all sets together carry. */
export interface CandidateAmpacity {
  /** Amperes of all sets together in their place, not rounded. */
  readonly amperes: number;
  /** Amperes of one conductor. */
  readonly each: number;
  /** Whether the insulation in its place or the temperature of the terminations limits it. */
  readonly limitedBy: "insulation" | "terminations";
  /** Temperature column of the terminations, in degrees Celsius. */
  readonly terminations: TemperatureColumn;
  /** Whether the device is the next standard rating above the ampacity (240.4(B)). */
  readonly nextRating: boolean;
}

/** The grounded conductors that run with the sets. */
export interface CandidateGrounded {
  /** Size of each. */
  readonly size: StandardSize;
  /** How many in all raceways together. */
  readonly count: number;
}

/** Pounds of bare metal per 1000 ft. */
export interface CandidateMass {
  /** Pounds of copper. */
  readonly copper: number;
  /** Pounds of aluminum. */
  readonly aluminum: number;
}

/** One lawful combination of sets, size, material and raceways, with what it causes. */
export interface SupplyCandidate {
  /** Material of the ungrounded conductors. */
  readonly material: ConductorColumn;
  /** Sets in parallel. */
  readonly sets: number;
  /** Size of each ungrounded conductor. */
  readonly size: StandardSize;
  /** Sets in each raceway. */
  readonly setsInRaceway: number;
  /** The same conductors as every role takes them. */
  readonly supply: Supply;
  /** The raceways; `null` where no kind was named. */
  readonly raceways: CandidateRaceways | null;
  /** What the sets carry, and what limits it. */
  readonly ampacity: CandidateAmpacity;
  /** Whether no smaller size would be lawful in as many sets of this material, as many of them in a raceway. */
  readonly smallestSize: boolean;
  /** Size of each grounded conductor that runs in it, and how many there are; `null` where none does. */
  readonly grounded: CandidateGrounded | null;
  /** The conductors that it causes. */
  readonly conductors: readonly CausedConductor[];
  /** Pounds of bare metal per 1000 ft of all conductors that run the whole length. */
  readonly mass: CandidateMass;
  /** Ends of the conductors that run the whole length. */
  readonly terminations: number;
  /** Whether no other candidate has no more of either metal, no more terminations and no more raceways, and less of one of them. */
  readonly unbeaten: boolean;
}

/**
 * Stable codes of what to know beside the candidates for a supply.
 *
 * @example
 * ```ts
 * import { candidateCautionCodes } from "bondmil";
 * candidateCautionCodes.includes("more-load-at-100-amperes"); // => true
 * ```
 */
export const candidateCautionCodes = [
  "next-rating-needs-no-receptacles",
  "never-next-rating",
  "more-load-at-100-amperes",
  "no-electrodes-given",
  "sizes-without-area",
  "load-not-given",
  "rating-not-standard",
  "alike-in-parallel",
  "raceway-serves",
  "mass-without-fittings",
] as const;

/** One of {@link candidateCautionCodes}. */
export type CandidateCautionCode = (typeof candidateCautionCodes)[number];

/** Something to know beside the candidates for a supply. */
export interface CandidateCaution {
  /** Stable code. */
  readonly code: CandidateCautionCode;
  /** The section that it rests on; `null` for a remark of the library's own. */
  readonly section: string | null;
}

/** Every lawful way to supply a load, within stated limits. Plain JSON, sharing nothing with the question. */
export interface SupplyCandidates {
  /** Tells the members of the union apart. */
  readonly kind: "supply-candidates";
  /** Edition of NFPA 70, by its year. */
  readonly edition: EditionYear;
  /** Amperes that the conductors must have before correction and adjustment: continuous load at 125 percent, and all other. */
  readonly requiredBefore: number;
  /** Amperes that they must have in their place: the load as it is. */
  readonly requiredInPlace: number;
  /** Rating of the device. */
  readonly device: number;
  /** Whether the device was given. */
  readonly deviceGiven: boolean;
  /** Standard ratings next to a device that has none: the one below, and the one above; empty for a standard one. */
  readonly neighbors: readonly number[];
  /** The candidates: by material as listed, sets, size, sets in a raceway, and kind of raceway as listed; at most 10,000. */
  readonly candidates: readonly SupplyCandidate[];
  /** How many there are, listed or not. */
  readonly total: number;
  /** How many are not listed. */
  readonly more: number;
  /** Open readings that would change one of the conductors that they cause. */
  readonly readings: readonly (keyof Readings)[];
  /** Weakest evidence that the answer rests on. */
  readonly evidence: Evidence;
  /** What to know beside it. */
  readonly cautions: readonly CandidateCaution[];
}

/** By what candidates are known. */
export const candidatesMarks: Marks<SupplyCandidates> = {
  edition: "text",
  device: "number",
  candidates: "list",
  total: "number",
  cautions: "list",
};
