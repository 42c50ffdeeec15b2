// Generated from shape.ts by "npm run generate"; do not edit.

import type { Shape } from "../../input/shapes.js";
import { readId } from "../read-id.js";

/** A box at a service that holds no supply conductors, such as a meter at current transformers, or a box on the load side. */
export interface BoxWithoutSupply {
  /** Name on the drawing. Every id is unique in the document. */
  readonly id: string;
  /** What it is; a meter here is one that holds wiring of current transformers alone. */
  readonly kind: "meter" | "transformer-cabinet" | "gutter" | "wireway" | "pull-box";
  /** Id of the box or disconnect that its wiring comes from. */
  readonly beside: string;
  /** What bonds it: the conductor that runs with its wiring, or the metal raceway to it. */
  readonly bondedBy: "equipment-grounding-conductor" | "metal-raceway";
}

export const boxWithoutSupplyShape: Shape = {
  is: "object",
  members: {
    id: { is: "checked", read: readId },
    kind: { is: "words", of: ["meter", "transformer-cabinet", "gutter", "wireway", "pull-box"] },
    beside: { is: "text", says: "the box or disconnect that its wiring comes from" },
    bondedBy: { is: "words", of: ["equipment-grounding-conductor", "metal-raceway"] },
  },
};
