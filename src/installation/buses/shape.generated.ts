// Generated from shape.ts by "npm run generate"; do not edit.
import type { Material } from "../../conductor/index.js";
import { readMaterial } from "../../conductor/read.js";
import type { Shape } from "../../input/shapes.js";
import { readId } from "../read-id.js";

/** The bus of a switchboard, on which several sections stand. Runs end at it; the sets that feed it count once, and it has one main bonding jumper. */
export interface SwitchboardBus {
  /** Name on the drawing. Every id is unique in the document. */
  readonly id: string;
  /** Form of its main bonding jumper: a wire by default; a bus gets an area instead of a size. */
  readonly jumperForm?: "wire" | "bus";
  /** Materials of its own conductors. The nearest wins: what is left out is of the material of what it belongs to, and last of the installation's. */
  readonly materials?: {
    /** Material of its bonding jumpers. */
    readonly bondingJumpers?: Material;
    /** Material of its grounding electrode conductors. */
    readonly electrodeConductors?: Material;
  };
}

export const switchboardBusShape: Shape = {
  is: "object",
  members: {
    id: { is: "checked", read: readId },
    jumperForm: { is: "words", of: ["wire", "bus"] },
    materials: {
      is: "object",
      members: {
        bondingJumpers: { is: "checked", read: readMaterial },
        electrodeConductors: { is: "checked", read: readMaterial },
      },
      optional: ["bondingJumpers", "electrodeConductors"],
    },
  },
  optional: ["jumperForm", "materials"],
};
