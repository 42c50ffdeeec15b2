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
  /** Tells the members of the union apart. */
  readonly kind: "conductor";
  /** Trade size of the conductor. */
  readonly size: StandardSize;
  /**
   * How many such conductors are required at one place: 2 of the jumpers at both ends of a ferrous raceway, else 1. How many an installation
   * needs in all, one in each raceway counted, is the `quantity` of the line of its schedule.
   */
  readonly quantity: number;
}

/** An area with no standard size: a bus, or more than the largest standard conductor. */
export interface AreaOnlyOutcome {
  /** Tells the members of the union apart. */
  readonly kind: "area-only";
  /** Circular mils required. */
  readonly requiredArea: number;
  /** A bus, or more than the largest standard size. */
  readonly why: "bus" | "above-largest-standard-size";
}

/** No conductor is required. */
export interface NotRequiredOutcome {
  /** Tells the members of the union apart. */
  readonly kind: "not-required";
  /** Stable code of why none is required. */
  readonly why: NotRequiredReason;
  /** Where the edition says so. */
  readonly citation: Citation;
}

/** Stable code of why no conductor is required; its words are rendered from it. */
export type NotRequiredReason =
  | "metal-raceway-serves"
  | "grounded-conductor-serves"
  | "bonding-fittings-serve"
  | "nonmetallic-raceway"
  | "bonded-with-its-wiring"
  | "bonded-by-its-raceway"
  | "jumper-at-source"
  | "jumpers-at-both-ends"
  | "nonferrous-raceway"
  | "termination-on-enclosure"
  | "communications-unlikely"
  | "control-transformer"
  | "building-on-one-branch-circuit"
  | "part-is-the-electrode"
  | "part-serves-as-electrode-conductor"
  | "bonded-by-another-part"
  | "ungrounded-system"
  | "impedance-grounded"
  | "not-service-equipment"
  | "supply-side-source-before-its-rule"
  | "jumper-of-other-system-serves"
  | "electrode-conductor-of-other-system-serves"
  | "no-conductors-ahead-of-the-device"
  | "source-and-disconnect-in-one-enclosure"
  | "grounded-conductor-is-fault-path"
  | "grounded-conductor-kept-apart"
  | "supply-side-jumper-instead"
  | "flexible-conduit-serves"
  | "no-grounded-conductor";

/** A reading that has a say in a result. */
export interface ReadingUsed {
  /** Stable id. */
  readonly id: keyof Readings;
  /** The alternative that is in force. */
  readonly chosen: string;
  /** What the other alternatives would require, in circular mils. */
  readonly otherwise: readonly OtherReading[];
}

/** What another alternative of a reading would require. */
export interface OtherReading {
  /** One of the alternatives of the reading. */
  readonly alternative: string;
  /** Circular mils required. */
  readonly requiredArea: number;
}

/** A sized conductor with everything that decided it. Plain JSON, sharing nothing with the input. */
export interface SizingResult<Id extends Role = Role, O extends Outcome = Outcome> {
  /** What the conductor is there for. */
  readonly role: Id;
  /** Which of the systems it belongs to: fault path, electrode system, or equalizing. */
  readonly purpose: Purpose;
  /** Edition of NFPA 70, by its year. */
  readonly edition: EditionYear;
  /** The conductor's name in this edition. */
  readonly name: string;
  /** Material of the conductor. */
  readonly material: Material;
  /** A wire, or a bus that only has to have the area. */
  readonly form: ConductorForm;
  /** A size, an area alone, or that none is required. */
  readonly outcome: O;
  /** Smallest permitted area in circular mils, before the step to a standard size; 0 where none is required. */
  readonly requiredArea: number;
  /** The step that decided the required area; `null` where none is required. */
  readonly governs: Governing | null;
  /** The steps that decided, in their order, each with its numbers and its citation. */
  readonly steps: readonly Step[];
  /** The rule that sends this conductor to its table. */
  readonly citation: Citation;
  /** Open readings that would change this result. */
  readonly readings: readonly ReadingUsed[];
  /** Weakest evidence that the result rests on. */
  readonly evidence: Evidence;
  /** What a careful engineer would add, as stable codes. */
  readonly cautions: readonly Caution[];
}

/** A result that always has a conductor. */
export type SizedResult<Id extends Role = Role> = SizingResult<Id, ConductorOutcome | AreaOnlyOutcome>;

/** A result that says why no conductor is required. */
export type NotRequiredResult<Id extends Role = Role> = SizingResult<Id, NotRequiredOutcome>;

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
