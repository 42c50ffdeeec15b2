import type { CandidateCautionCode } from "../../candidates/candidate.js";

/** What each caution on the candidates for a supply says. */
export const candidateCautionWords: Readonly<Record<CandidateCautionCode, string>> = {
  "next-rating-needs-no-receptacles":
    "Where the device is the next standard rating above the ampacity, the conductors are no part of a branch circuit with several receptacles for portable loads",
  "never-next-rating":
    "Taps and secondary conductors are not protected by the next standard rating above their ampacity",
  "more-load-at-100-amperes":
    "Through 100 A unmarked terminations are used at 60 C and above at 75 C, so that a device just above 100 A may have smaller conductors than one of 100 A",
  "no-electrodes-given":
    "No electrodes are named, so that none limits the size of the grounding electrode conductor",
  "sizes-without-area":
    "The tables have no area for some sizes of this insulation, so that these are left out",
  "load-not-given": "No load is named: the device alone decides",
  "rating-not-standard": "The rating of the device is none of the standard ratings",
  "alike-in-parallel":
    "Conductors in parallel have one length, material, size, insulation and way of termination, and alike raceways",
  "raceway-serves":
    "A metal raceway takes the place of the wire in it: its kind, its fittings and its couplings must be permitted for that",
  "mass-without-fittings":
    "Weights are of bare metal along the run, without jumpers at its ends, the electrode conductor and waste",
};
