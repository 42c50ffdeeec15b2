// Generated from shape.ts by "npm run generate"; do not edit.
import type { Location, Temperature, TemperatureColumn } from "../ampacity/shape.generated.js";
import { locationShape, temperatureColumnShape, temperatureShape } from "../ampacity/shape.generated.js";
import type { ConductorColumn, ConductorSize } from "../conductor/index.js";
import { readSize } from "../conductor/read.js";
import { readCode } from "../edition/read-code.js";
import type { Code } from "../edition/shape.generated.js";
import type { Insulation, RacewayKind } from "../engineering/raceway-fill/shape.generated.js";
import { insulationShape, racewayKindShape } from "../engineering/raceway-fill/shape.generated.js";
import type { Shape } from "../input/shapes.js";
import type { Electrode } from "../rules/shape.generated.js";
import { electrodeShape } from "../rules/shape.generated.js";

/** The conductors that bond and ground. */
export interface CandidateBonding {
  /** Material of the conductors that bond and ground: copper or aluminum. */
  readonly material: ConductorColumn;
  /** Type of insulation of those that run in the raceway; bare and stranded by default, as the section on each lets them be. */
  readonly insulation?: Insulation;
  /** Whether a metal raceway serves in place of the wire that would run in it, where the code lets it; beside the wire by default. */
  readonly metalRaceway?: "serves" | "beside-wire";
}

export const candidateBondingShape: Shape = {
  is: "object",
  members: {
    material: { is: "words", of: ["copper", "aluminum"] },
    insulation: insulationShape,
    metalRaceway: { is: "words", of: ["serves", "beside-wire"] },
  },
  optional: ["insulation", "metalRaceway"],
};

/** The ungrounded conductors that are tried. */
export interface CandidateConductor {
  /** Type of insulation of all conductors but those that bond and ground. */
  readonly insulation: Insulation;
  /** Materials to be tried, in the order in which they are listed. */
  readonly materials: readonly ConductorColumn[];
  /** Smallest size to be tried. */
  readonly smallest?: ConductorSize;
  /** Largest size to be tried. */
  readonly largest?: ConductorSize;
}

export const candidateConductorShape: Shape = {
  is: "object",
  members: {
    insulation: insulationShape,
    materials: { is: "list", of: { is: "words", of: ["copper", "aluminum"] }, least: 1, most: 2 },
    smallest: { is: "checked", read: readSize },
    largest: { is: "checked", read: readSize },
  },
  optional: ["smallest", "largest"],
};

/** How far the search goes. */
export interface CandidateLimits {
  /** Most sets in parallel. */
  readonly mostSets: number;
  /** Most sets in one raceway; 1 by default. */
  readonly mostSetsInRaceway?: number;
}

export const candidateLimitsShape: Shape = {
  is: "object",
  members: {
    mostSets: { is: "number", unit: "sets", whole: true },
    mostSetsInRaceway: { is: "number", unit: "sets", whole: true },
  },
  optional: ["mostSetsInRaceway"],
};

/** The load that is supplied. */
export interface CandidateLoad {
  /** Continuous load in amperes, which counts at 125 percent. */
  readonly continuous: number;
  /** All other load in amperes. */
  readonly other: number;
  /** Whether the assembly with its overcurrent devices is listed to run at 100 percent of its rating, so that continuous load counts as it is; not by default. */
  readonly listedForAll?: boolean;
}

export const candidateLoadShape: Shape = {
  is: "object",
  members: {
    continuous: { is: "number", unit: "amperes", orZero: true },
    other: { is: "number", unit: "amperes", orZero: true },
    listedForAll: { is: "flag", says: "whether the assembly with its devices is listed for 100 percent" },
  },
  optional: ["listedForAll"],
};

/** Where the conductors lie. The current-carrying ones in a raceway are counted from its sets. */
export interface CandidatePlace {
  /** Location; the inside of a raceway in a wet place, or in the ground, is wet. */
  readonly location: Location;
  /** Ambient temperature; 30 C, that of the ampacity table, by default. */
  readonly ambient?: Temperature;
  /** Whether the ambient temperature is corrected for by the table, as by default, or by the equation. */
  readonly method?: "table" | "equation";
  /** Inches from the roof to the underside, in direct sunlight; left out where there is no roof below. */
  readonly inchesAboveRoof?: number;
  /** Length of the raceways in inches; longer than 24 in. by default. Shorter ones may be filled as nipples, and their conductors are not adjusted for their number. */
  readonly racewayInches?: number;
}

export const candidatePlaceShape: Shape = {
  is: "object",
  members: {
    location: locationShape,
    ambient: temperatureShape,
    method: { is: "words", of: ["table", "equation"] },
    inchesAboveRoof: { is: "number", unit: "inches", orZero: true },
    racewayInches: { is: "number", unit: "inches" },
  },
  optional: ["ambient", "method", "inchesAboveRoof", "racewayInches"],
};

/** A grounded conductor that runs with the ungrounded ones. */
export interface GroundedInSets {
  /** Whether it counts among the current-carrying conductors, as where most of the load is nonlinear. */
  readonly currentCarrying: boolean;
  /** Its load in amperes, by which and by the table of the fault path it is then sized; zero if it carries none. Without it it is as large as the ungrounded conductors. */
  readonly loadAmperes?: number;
}

export const groundedInSetsShape: Shape = {
  is: "object",
  members: {
    currentCarrying: { is: "flag", says: "whether it counts as current-carrying" },
    loadAmperes: { is: "number", unit: "amperes", orZero: true },
  },
  optional: ["loadAmperes"],
};

/** What is supplied: the kind of system, and the conductors of a set. */
export interface CandidateSystem {
  /** A service or a separately derived system has a jumper, jumpers on the supply side and an electrode conductor; a feeder has equipment grounding conductors. */
  readonly kind: "service" | "separately-derived" | "feeder";
  /** Ungrounded conductors of a set, 2 or 3. */
  readonly ungrounded: 2 | 3;
  /** A grounded conductor that runs with the ungrounded ones. */
  readonly grounded?: GroundedInSets;
  /** Where the system bonding jumper of a separately derived system is; at the enclosure by default. */
  readonly jumperAt?: "source" | "enclosure";
  /** The electrodes that the electrode conductor serves; without them none limits its size. */
  readonly electrodes?: readonly Electrode[];
}

export const candidateSystemShape: Shape = {
  is: "object",
  members: {
    kind: { is: "words", of: ["service", "separately-derived", "feeder"] },
    ungrounded: { is: "numbers", unit: "Ungrounded conductors of a set, 2 or 3.", of: [2, 3] },
    grounded: groundedInSetsShape,
    jumperAt: { is: "words", of: ["source", "enclosure"] },
    electrodes: { is: "list", of: electrodeShape, least: 1, most: 2000 },
  },
  optional: ["grounded", "jumperAt", "electrodes"],
};

/** A load for which conductors are to be found. */
export interface SupplyCandidatesQuestion {
  /** The code that a result is to follow: an edition of NFPA 70 and, where the text is open, the readings that were chosen. Plain JSON. There is no default edition; a jurisdiction enforces the one that it adopted. */
  readonly code: Code;
  /** What is supplied: the kind of system, and the conductors of a set. */
  readonly system: CandidateSystem;
  /** The load that is supplied. */
  readonly load: CandidateLoad;
  /** Rating of the overcurrent device; the smallest standard rating that the load allows by default. */
  readonly device?: number;
  /** Where the conductors have their protection; at their supply by default. Taps and secondary conductors have it at their end, and never above their ampacity. */
  readonly protection?: "at-supply" | "at-end";
  /** Of a tap, the rating of the device ahead of the feeder, by which its equipment grounding conductors go. */
  readonly feederDevice?: number;
  /** Ampacity that all sets together must have besides, as a rule of taps or secondary conductors asks it. */
  readonly leastAmpacity?: number;
  /** The ungrounded conductors that are tried. */
  readonly conductor: CandidateConductor;
  /** Where the conductors lie. The current-carrying ones in a raceway are counted from its sets. */
  readonly place: CandidatePlace;
  /** Temperature in degrees Celsius for which the equipment at both ends is listed and marked, the lower of the two; by default 60 C for a device through 100 A and 75 C above, as 110.14(C)(1) has it. */
  readonly terminations?: TemperatureColumn;
  /** How far the search goes. */
  readonly limits: CandidateLimits;
  /** Kinds of raceway to be tried; without them none is chosen and none is filled. */
  readonly raceways?: readonly RacewayKind[];
  /** The conductors that bond and ground. */
  readonly bonding: CandidateBonding;
}

export const supplyCandidatesQuestionShape: Shape = {
  is: "object",
  members: {
    code: { is: "checked", read: readCode },
    system: candidateSystemShape,
    load: candidateLoadShape,
    device: { is: "number", unit: "amperes" },
    protection: { is: "words", of: ["at-supply", "at-end"] },
    feederDevice: { is: "number", unit: "amperes" },
    leastAmpacity: { is: "number", unit: "amperes" },
    conductor: candidateConductorShape,
    place: candidatePlaceShape,
    terminations: temperatureColumnShape,
    limits: candidateLimitsShape,
    raceways: { is: "list", of: racewayKindShape, least: 1, most: 5 },
    bonding: candidateBondingShape,
  },
  optional: ["device", "protection", "feederDevice", "leastAmpacity", "terminations", "raceways"],
};
