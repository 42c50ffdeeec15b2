import type { Citation } from "./citation.js";
import type { Limit } from "./policy.js";

/**
 * Which increase of the ungrounded conductors counts: `any`, whatever its reason; `from-minimum-ampacity`, what exceeds the
 * smallest size with sufficient ampacity for the installation; `not-for-temperature-or-number`, any but one that the
 * correction for temperature or the adjustment for the number of conductors requires.
 */
export type IncreaseRule = "any" | "from-minimum-ampacity" | "not-for-temperature-or-number";

/** How a role that goes by the overcurrent device is sized in one edition, as data. */
export interface RatingPolicy {
  /** Which increase of the ungrounded conductors counts. */
  readonly increase: IncreaseRule;
  /** What decides where several circuits share the conductor. */
  readonly shared: "each-circuit" | "largest-device";
  /** Whether a qualified person may size otherwise than by the increase. */
  readonly qualifiedPerson: boolean;
  /** Whether the result need not exceed the circuit conductors in parallel (`set`) or the largest of them (`conductor`). */
  readonly cap: "none" | "set" | "conductor";
  /** Size below which the result may not fall. */
  readonly floor: Limit | null;
  /** Where the edition says so. */
  readonly basis: RatingPolicyBasis;
}

/** The place in the edition for each part of a {@link RatingPolicy}. */
export interface RatingPolicyBasis {
  /** The rule that sends the role to its table. */
  readonly rule: Citation;
  /** The increase in proportion. */
  readonly increase: Citation;
  /** The sentence on several circuits. */
  readonly shared: Citation;
  /** The sentence that limits the size. */
  readonly cap: Citation;
}
