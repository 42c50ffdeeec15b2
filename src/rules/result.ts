import type { Material, StandardSize } from "../conductor/index.js";
import type { Citation, EditionYear, Evidence, Purpose, Readings, Role } from "../edition/index.js";
import type { Marks } from "../input/given-result.js";
import type { Governing, Step } from "../sizing/index.js";
import type { Caution } from "./caution.js";

/** Form of a conductor: a wire of a standard size, or a bus that only has to have the area. */
export type ConductorForm = "wire" | "bus";

/** What comes out of a sizing. */
export type Outcome = ConductorOutcome | AreaOnlyOutcome | NotRequiredOutcome;

/** A conductor of a standard size. */
export interface ConductorOutcome {
  readonly kind: "conductor";
  readonly size: StandardSize;
  readonly quantity: number;
}

/** An area with no standard size: a bus, or more than the largest standard conductor. */
export interface AreaOnlyOutcome {
  readonly kind: "area-only";
  readonly requiredArea: number;
  readonly why: "bus" | "above-largest-standard-size";
}

/** No conductor is required. */
export interface NotRequiredOutcome {
  readonly kind: "not-required";
  readonly why: NotRequiredReason;
  readonly citation: Citation;
}

/** Stable code of why no conductor is required; its words are rendered from it. */
export type NotRequiredReason =
  | "metal-raceway-serves"
  | "grounded-conductor-serves"
  | "bonding-fittings-serve"
  | "jumper-at-source"
  | "jumpers-at-both-ends"
  | "nonferrous-raceway"
  | "termination-on-enclosure"
  | "communications-unlikely"
  | "control-transformer"
  | "building-on-one-branch-circuit"
  | "part-is-the-electrode"
  | "ungrounded-system"
  | "impedance-grounded"
  | "not-service-equipment"
  | "supply-side-source-before-its-rule";

/** A reading that has a say in a result. */
export interface ReadingUsed {
  readonly id: keyof Readings;
  readonly chosen: string;
  /** What the other alternatives would require, in circular mils. */
  readonly otherwise: readonly OtherReading[];
}

/** What another alternative of a reading would require. */
export interface OtherReading {
  readonly alternative: string;
  readonly requiredArea: number;
}

/** A sized conductor with everything that decided it. Plain JSON, sharing nothing with the input. */
export interface SizingResult {
  readonly role: Role;
  readonly purpose: Purpose;
  readonly edition: EditionYear;
  /** The conductor's name in this edition. */
  readonly name: string;
  readonly material: Material;
  readonly form: ConductorForm;
  readonly outcome: Outcome;
  /** Smallest permitted area in circular mils, before the step to a standard size; 0 where none is required. */
  readonly requiredArea: number;
  /** The step that decided the required area; `null` where none is required. */
  readonly governs: Governing | null;
  readonly steps: readonly Step[];
  /** The rule that sends this conductor to its table. */
  readonly citation: Citation;
  /** Open readings that would change this result. */
  readonly readings: readonly ReadingUsed[];
  /** Weakest evidence that the result rests on. */
  readonly evidence: Evidence;
  readonly cautions: readonly Caution[];
}

/** By what a sizing result is known. */
export const sizingResultMarks: Marks<SizingResult> = {
  role: "text",
  edition: "text",
  name: "text",
  material: "text",
  outcome: "object",
  requiredArea: "number",
  steps: "list",
  citation: "object",
  readings: "list",
  evidence: "text",
  cautions: "list",
};
