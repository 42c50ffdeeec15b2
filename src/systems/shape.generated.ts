// Generated from shape.ts by "npm run generate"; do not edit.

import { readCode } from "../edition/read-code.js";
import type { Code } from "../edition/shape.generated.js";
import type { Shape } from "../input/shapes.js";

/** What a disconnect on the supply side, or the service disconnect itself, is marked as: an outdoor emergency disconnect of a dwelling either is the service disconnect or lies ahead of it; `supply-side-source` is the disconnect of a source, solar power for example, that is connected ahead of the service disconnect in an enclosure of its own. */
export type Designation =
  | "service-disconnect"
  | "emergency-disconnect-as-service-disconnect"
  | "emergency-disconnect-not-service-equipment"
  | "meter-disconnect"
  | "supply-side-source";

export const designationShape: Shape = {
  is: "words",
  of: [
    "service-disconnect",
    "emergency-disconnect-as-service-disconnect",
    "emergency-disconnect-not-service-equipment",
    "meter-disconnect",
    "supply-side-source",
  ],
};

/** How the system is grounded; `grounded-phase` is a corner-grounded delta. */
export type Grounding = "solidly-grounded" | "grounded-phase" | "impedance" | "ungrounded";

export const groundingShape: Shape = {
  is: "words",
  of: ["solidly-grounded", "grounded-phase", "impedance", "ungrounded"],
};

/** A designated disconnect of a service. */
export interface DesignationInput {
  /** The code that a result is to follow: an edition of NFPA 70 and, where the text is open, the readings that were chosen. Plain JSON. There is no default edition; a jurisdiction enforces the one that it adopted. */
  readonly code: Code;
  /** How the disconnect is marked. */
  readonly designation: Designation;
  /** How the utility's system is grounded. */
  readonly grounding: Grounding;
}

export const designationInputShape: Shape = {
  is: "object",
  members: {
    code: { is: "checked", read: readCode },
    designation: designationShape,
    grounding: groundingShape,
  },
};
