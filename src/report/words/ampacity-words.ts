import type {
  AmpacityCaution,
  ConductorAmpacity,
  CountedCircuit,
  DeviceAnswer,
  DeviceCaution,
  RequiredByLoad,
} from "../../ampacity/index.js";

/** What each caution on an ampacity says. */
export const ampacityCautionWords: Readonly<Record<AmpacityCaution, string>> = {
  "cooler-than-the-table":
    "The place is cooler than the table of this edition goes; the factor of its coolest band is taken.",
  "equation-from-memory":
    "No source was found for the sentence that permits the equation; its factors agree with those of the table at the upper end of every band.",
  "terminations-unmarked":
    "The terminations are taken at 60 C, for nothing was said of a mark; equipment listed and marked for 75 C permits more.",
};

/** What each caution on a device says. */
export const deviceCautionWords: Readonly<Record<DeviceCaution, string>> = {
  "rating-off-the-list":
    "The rating is none of the standard ones. Other ratings are permitted; the standard ones beside it are named.",
  "load-within-ampacity":
    "The device is rated above the ampacity; the load still has to stay within the ampacity.",
};

/** What decides an ampacity. */
export const ampacityLimitWords: Readonly<Record<ConductorAmpacity["limitedBy"], string>> = {
  insulation: "the insulation in its place",
  terminations: "the terminations",
  cable: "the kind of cable",
};

/** What decides the largest device. */
export const deviceLimitWords: Readonly<Record<DeviceAnswer["limitedBy"], string>> = {
  ampacity: "the ampacity",
  "next-standard-rating": "the next standard rating above the ampacity",
  "small-conductor": "the limit of small conductors",
};

/** Why a neutral counts or not. */
export const neutralWords: Readonly<Record<NonNullable<CountedCircuit["because"]>, string>> = {
  "its-own-current": "the neutral carries the current of the circuit and counts",
  "unbalance-only": "the neutral carries the unbalance alone and does not count",
  "current-of-third-phase": "the neutral carries about the current of a phase and counts",
  harmonics: "the neutral carries harmonics and counts",
};

/** Kinds of circuits in a raceway. */
export const circuitWords: Readonly<Record<CountedCircuit["kind"], string>> = {
  "two-wire": "two-wire circuit",
  "three-wire-single-phase": "single-phase three-wire circuit",
  "two-phases-and-neutral-of-wye": "circuit of two phases and the neutral of a wye",
  "three-wire-three-phase": "three-phase three-wire circuit",
  "four-wire-wye": "four-wire circuit of a wye",
};

/** What conductors are part of. */
export const loadOfWords: Readonly<Record<RequiredByLoad["of"], string>> = {
  service: "service",
  feeder: "feeder",
  "branch-circuit": "branch circuit",
};
