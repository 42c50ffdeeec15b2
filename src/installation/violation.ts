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
  "jumper-not-permitted-here",
  "electrode-conductor-not-at-jumper",
  "electrode-conductor-missing",
  "material-forbidden",
] as const;

/** One of {@link violationCodes}. */
export type ViolationCode = (typeof violationCodes)[number];

/** Something that the edition, or an amendment, forbids in what is drawn or misses in it. */
export interface Violation {
  /** The code that it is held under: an edition, its amendments and readings. */
  readonly code: ViolationCode;
  /** The section or ordinance that says so. */
  readonly section: string;
  /** Where: ids of the installation, or of conductors of the schedule. */
  readonly at: readonly string[];
  /** Given where it is about conductors: those of `at`. */
  readonly conductors?: readonly ConductorIdentity[];
}
