import type { Citation, Code, EditionYear } from "../edition/index.js";
import type { Marks } from "../input/given-result.js";
import type { MainBondingJumperInput } from "../roles/main-bonding-jumper/input.js";
import type { Caution } from "../rules/caution.js";
import type { SizingResult } from "../rules/result.js";
import type { ConductorEnd, ConductorIdentity } from "./conductor-identity.js";
import type { Covering } from "./covering.js";
import type { Installation } from "./document.js";
import type { OpenQuestion } from "./open-question.js";
import type { Violation } from "./violation.js";

/** One conductor of an installation, or the place where none is required and why. */
export interface ScheduledConductor extends ConductorIdentity {
  /** Stable name, printed from what it is and belongs to. */
  readonly id: string;
  /** Id of the service or of the derived system that it belongs to; absent of what follows them. */
  readonly system?: string;
  /** Where it starts. */
  readonly from: ConductorEnd;
  /** Where it ends. */
  readonly to: ConductorEnd;
  /** How many alike in all: the quantity of the result's outcome once, or for each raceway. 0 where none is required. */
  readonly quantity: number;
  /** Section that says where it goes, beside the one that sizes it; absent where none but that one is known, and where none is required. */
  readonly placement?: Citation;
  /** Section that says which conductors size it where there are several enclosures or raceways, beside the role's own; else absent. */
  readonly sizing?: Citation;
  /** What may bond in place of a wire, and the section that permits it; absent where nothing may. */
  readonly insteadPermitted?: {
    /** Fittings that are permitted for it, or the grounded conductor that passes through the box. */
    readonly by: "bonding-fittings" | "grounded-conductor";
    /** Where the edition says so. */
    readonly citation: Citation;
  };
  /** The result, with its steps. */
  readonly result: SizingResult;
  /** Ids of the runs, of the circuit or of the generator by whose ungrounded conductors it is sized; none where they do not decide. */
  readonly by: readonly string[];
  /** What the installation does not tell and on which the line hangs, with every outcome; absent where nothing is open. */
  readonly open?: OpenQuestion;
  /** Length in feet, where the run has one. */
  readonly lengthFeet?: number;
  /** Whether it is to be insulated or may be bare; absent where none is required, and where no sentence is known. */
  readonly covering?: Covering;
}

/** Something that the installation holds and the library does not size, with where to look. */
export interface NotSized {
  /** What it is, in words. */
  readonly what: string;
  /** Where to look. */
  readonly see: string;
}

/** Metal of the conductors whose length is given. */
export interface MetalTotal {
  /** Trade size of the conductor. */
  readonly size: string;
  /** Material of the conductor. */
  readonly material: string;
  /** Feet of conductor. */
  readonly feet: number;
}

/** A schedule of conductors with its basis. Plain JSON. */
export interface Schedule {
  /** Version of the format of installations. */
  readonly format: 1;
  /** What made it, so that it can be made again. */
  readonly library: {
    /** Name of the library. */
    readonly name: "bondmil";
    /** Its version. */
    readonly version: string;
  };
  /** Title for people. */
  readonly title: string;
  /**
   * Short mark of the installation. Only what is listed as installed is left out, so that a check of a building carries the mark under which its
   * drawing was approved.
   */
  readonly installationFingerprint: string;
  /** Edition of NFPA 70, by its year. */
  readonly edition: EditionYear;
  /** The code in full. */
  readonly code: Code;
  /** What the edition or an amendment forbids in what is drawn, or misses in it. */
  readonly violations: readonly Violation[];
  /** Every conductor, in the order in which a fault meets them. */
  readonly conductors: readonly ScheduledConductor[];
  /** Cautions about the installation as a whole. */
  readonly cautions: readonly PlacedCaution[];
  /** What was not sized, and where to look. */
  readonly notSized: readonly NotSized[];
  /** Feet of conductor by size and material, of those whose length is given. */
  readonly totals: readonly MetalTotal[];
  /** Short mark of everything above, the installation's own mark with it, for a title block: what is drawn or scheduled otherwise has another. */
  readonly fingerprint: string;
}

/** A caution with the place that it is about. */
export interface PlacedCaution extends Caution {
  /** Id of the place. */
  readonly at: string;
}

/** What the parts of a schedule hand on while it is built. */
export interface ScheduledPart {
  readonly conductors: readonly ScheduledConductor[];
  readonly violations?: readonly Violation[];
  readonly cautions?: readonly PlacedCaution[];
  readonly notSized?: readonly NotSized[];
}

/** Form, material and ampacity column of the bonding jumpers to be sized. */
export type WantedJumper = Pick<MainBondingJumperInput, "conductor" | "temperature">;

/** An installation with its code as the rules take it. */
export interface InstallationInCode {
  readonly installation: Installation;
  readonly code: Code;
  /** The conductor that bonding jumpers are sized as, where a question says more than a document can. */
  readonly wanted?: WantedJumper;
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
