/**
 * Stable codes of what a careful engineer would add to a result.
 *
 * @example
 * ```ts
 * import { cautionCodes } from "bondmil";
 * cautionCodes.includes("mixed-supply-materials"); // => true
 * ```
 */
export const cautionCodes = [
  "assumed-conductors",
  "no-single-conductor-of-equal-ampacity",
  "mixed-supply-materials",
  "no-cap-across-materials",
  "cap-applied",
  "single-conductor-above-threshold",
  "conductors-required-for-load",
  "parallel-below-1-0",
  "material-not-named",
  "above-largest-standard-size",
  "listed-equipment",
  "assembly-size-inferred",
  "assembly-narrowed",
  "jumper-in-wireway",
  "conductors-below-rating",
  "outdoor-source",
  "amended",
  "amendment-without-effect",
  "amendment-superseded",
  "enforced-reading-overrules-chosen",
  "amendment-condition-unknown",
  "amendment-condition-not-met",
  "always-wire",
  "material-forbidden",
  "electrode-to-be-supplemented",
  "electrode-conductor-protection-unknown",
  "jumper-around-removable",
  "outdoor-transformer-electrode",
  "only-without-parallel-path",
  "electrode-limit-not-for-material",
  "common-conductor-of-services-only",
  "busbar-tie-inferred",
  "impaired-knockouts-need-jumpers",
  "load-not-counted",
  "no-load-stated",
  "no-device-sized-by-conductors",
  "equipment-grounding-conductor-may-serve",
  "limited-to-circuit-conductors",
  "no-baseline-given",
  "baseline-before-increase",
  "baseline-minimum-for-installation",
  "baseline-by-temperature-and-number",
  "no-increase-for-temperature-or-number",
  "smaller-than-baseline",
  "short-by-rounding",
  "qualified-person-may-size",
  "table-size-not-standard",
  "increased-circuit-decides",
  "motor-fuse-rating-given",
  "aluminum-grounding-restrictions",
  "full-size-in-each",
  "cable-conductors-may-be-combined",
  "tray-by-qualified-persons",
  "tray-identified-and-marked",
  "tray-bonded",
  "larger-than-shared-branch-circuit",
  "same-size-in-aluminum",
  "not-excused-in-this-edition",
  "factory-jumper-serves",
  "grounded-phase-devices",
  "impedance-conditions",
  "building-on-ungrounded-system",
  "connect-grounded-conductor-at-building",
  "feeder-increase-not-counted",
  "load-side-jumper-behind-device",
  "common-conductor-inferred",
  "electrode-conductor-of-sufficient-size",
  "piping-may-continue-electrode",
] as const;

/** One of {@link cautionCodes}. */
export type CautionCode = (typeof cautionCodes)[number];

/** Something to know beside a result; its words are rendered from the code. */
export interface Caution {
  /** The code that it is held under: an edition, its amendments and readings. */
  readonly code: CautionCode;
  /** The section that it rests on; `null` for a remark of the library's own. */
  readonly section: string | null;
}
