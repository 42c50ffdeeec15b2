import type { Code, EditionYear, Role } from "../edition/index.js";
import type { Marks } from "../input/given-result.js";
import type { Caution } from "../rules/caution.js";
import type { SizingResult } from "../rules/result.js";
import type { Drawing } from "./document.js";
import type { Violation } from "./violation.js";

/** One conductor of a drawing, or the place where none is required and why. */
export interface ScheduledConductor {
  /** Stable name: the role and what it belongs to. */
  readonly id: string;
  readonly role: Role;
  /** Id of the service or of the derived system that it belongs to; absent of what follows them. */
  readonly system?: string;
  /** Where it starts, an id of the drawing or a part of it. */
  readonly from: string;
  /** Where it ends. */
  readonly to: string;
  /** How many alike: one in each raceway, one at each end. 0 where none is required. */
  readonly quantity: number;
  readonly result: SizingResult;
  /** Ids of the runs, of the circuit or of the generator by whose ungrounded conductors it is sized; none where they do not decide. */
  readonly by: readonly string[];
  /** Where several arrangements are compared, the one that it belongs to. */
  readonly alternative?: string;
  readonly lengthFeet?: number;
}

/** Something that the drawing holds and the library does not size, with where to look. */
export interface NotSized {
  readonly what: string;
  readonly see: string;
}

/** Metal of the conductors whose length is given. */
export interface MetalTotal {
  readonly size: string;
  readonly material: string;
  /** Feet of conductor. */
  readonly feet: number;
}

/** A schedule of conductors with its basis. Plain JSON. */
export interface Schedule {
  readonly format: 1;
  readonly title: string;
  /**
   * Short mark of the drawing. Only what is listed as installed is left out, so that a check of a building carries the mark under which its
   * drawing was approved.
   */
  readonly drawingFingerprint: string;
  readonly edition: EditionYear;
  readonly code: Code;
  /** What the edition or an amendment forbids in what is drawn, or misses in it. */
  readonly violations: readonly Violation[];
  readonly conductors: readonly ScheduledConductor[];
  /** Cautions about the drawing as a whole. */
  readonly cautions: readonly PlacedCaution[];
  readonly notSized: readonly NotSized[];
  /** Feet of conductor by size and material, of those whose length is given. */
  readonly totals: readonly MetalTotal[];
  /** Short mark of everything above, the drawing's own mark with it, for a title block: what is drawn or scheduled otherwise has another. */
  readonly fingerprint: string;
}

/** A caution with the place that it is about. */
export interface PlacedCaution extends Caution {
  readonly at: string;
}

/** What the parts of a schedule hand on while it is built. */
export interface ScheduledPart {
  readonly conductors: readonly ScheduledConductor[];
  readonly violations?: readonly Violation[];
  readonly cautions?: readonly PlacedCaution[];
  readonly notSized?: readonly NotSized[];
}

/** A drawing with its code as the rules take it. */
export interface DrawingInCode {
  readonly drawing: Drawing;
  readonly code: Code;
}

/** By what a schedule is known. */
export const scheduleMarks: Marks<Schedule> = {
  title: "text",
  edition: "text",
  violations: "list",
  conductors: "list",
  cautions: "list",
  notSized: "list",
  totals: "list",
  fingerprint: "text",
};
