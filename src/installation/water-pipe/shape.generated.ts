// Generated from shape.ts by "npm run generate"; do not edit.

import type { Shape } from "../../input/shapes.js";
import { readId } from "../read-id.js";

/** A meter or fitting in a metal water pipe that is likely to be taken out; a bonding jumper bridges it (250.53(D)(1), 250.68(B)). */
export interface RemovableFitting {
  /** Name on the drawing. Every id is unique in the document. */
  readonly id: string;
  /** What it is: a water meter, a filter or the like, an insulated joint or another fitting. */
  readonly kind: "meter" | "filter" | "fitting";
}

export const removableFittingShape: Shape = {
  is: "object",
  members: { id: { is: "checked", read: readId }, kind: { is: "words", of: ["meter", "filter", "fitting"] } },
};
