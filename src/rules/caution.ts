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
  "more-than-six-disconnects",
  "jumper-in-wireway",
  "outdoor-source",
] as const;

/** One of {@link cautionCodes}. */
export type CautionCode = (typeof cautionCodes)[number];

/** Something to know beside a result; its words are rendered from the code. */
export interface Caution {
  readonly code: CautionCode;
  /** The section that it rests on; `null` for a remark of the library's own. */
  readonly section: string | null;
}
