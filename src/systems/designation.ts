import type { Citation, Code, Evidence, Readings } from "../edition/index.js";
import type { Marks } from "../input/given-result.js";
import { readShape } from "../input/read-shape.js";
import type { Reader } from "../input/reader.js";
import { type Designation, type DesignationInput, designationInputShape } from "./shape.generated.js";

export type { Designation, DesignationInput };

/**
 * Whether something must be there, may be there, or need not; `disputed` where the edition has no rule and practice differs.
 */
export type DesignationStatus = "required" | "permitted" | "not-required" | "disputed";

/** Stable code of what there is to say about a designated disconnect; its words are rendered from it. */
export type DesignationNote =
  | "within-its-enclosure"
  | "jumper-is-in-the-service-disconnect"
  | "not-named-in-this-edition"
  | "as-a-service"
  | "no-rule-in-this-edition"
  | "ungrounded-system"
  | "through-the-impedance"
  | "anywhere-on-supply-side"
  | "to-a-metal-enclosure-on-supply-side"
  | "section-names-it"
  | "letters-left-behind";

/** One answer with its place in the edition. */
export interface DesignationAnswer {
  /** How it stands, by a closed set of words. */
  readonly status: DesignationStatus;
  /** Stable code of a remark; its words are rendered from it. */
  readonly note: DesignationNote;
  /** Where the edition says so. */
  readonly citation: Citation;
}

/** How a designated disconnect is bonded and grounded. Plain JSON. */
export interface DesignationBonding {
  /** Edition of NFPA 70, by its year. */
  readonly edition: Code["year"];
  /** How the disconnect is marked. */
  readonly designation: Designation;
  /** What the designation rests on. */
  readonly citation: Citation;
  /** Whether the edition has this designation; if not, the disconnect counts as the service disconnect that it then is. */
  readonly namedInEdition: boolean;
  /** Whether it has a main bonding jumper. */
  readonly mainBondingJumper: DesignationAnswer;
  /** What bonds the enclosure: any one of these. */
  readonly box: {
    /** What may bond its metal. */
    readonly bondedBy: readonly (
      | "main-bonding-jumper"
      | "grounded-conductor"
      | "supply-side-bonding-jumper"
    )[];
    /** Where the edition says so. */
    readonly citation: Citation;
  };
  /** Whether this place must have a grounding electrode conductor; `permitted` where the one of the service may land here. */
  readonly electrodeConductor: DesignationAnswer;
  /** What the conductors on its load side are: a feeder requires an equipment grounding conductor, service conductors do not. */
  readonly beyond: "feeder" | "service-conductors" | "conductors-of-the-source";
  /** Open readings that decide here, what was chosen, and the amendment that enforces it, if one does. */
  readonly readings: readonly {
    /** Stable id. */
    readonly id: keyof Readings;
    /** The alternative that is in force. */
    readonly chosen: string;
    /** The amendment that enforces the reading, if one does. */
    readonly enforcedBy?: string;
  }[];
  /** Weakest evidence that the answer rests on. */
  readonly evidence: Evidence;
}

/** Checks a designated disconnect in an input. */
export function readDesignation(at: Reader): DesignationInput | undefined {
  return readShape<DesignationInput>(at, designationInputShape);
}

/** By what the bonding of a designated disconnect is known. */
export const designationMarks: Marks<DesignationBonding> = {
  mainBondingJumper: "object",
  box: "object",
  electrodeConductor: "object",
  beyond: "text",
};
