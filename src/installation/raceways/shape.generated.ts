// Generated from shape.ts by "npm run generate"; do not edit.
import type { Material } from "../../conductor/index.js";
import { readMaterial } from "../../conductor/read.js";
import type { Shape } from "../../input/shapes.js";
import { readId } from "../read-id.js";

/** How the sets run. What they run in is never assumed: a run has this member, or `in`. */
export interface Raceways {
  /** Raceways or cables that the sets are divided over evenly. */
  readonly count: number;
  /** What it is made of. Nonmetallic stands for conductors in no raceway too, such as a drop; unknown gives both outcomes. */
  readonly kind: "nonflexible-metal" | "flexible-metal" | "nonmetallic" | "unknown";
}

export const racewaysShape: Shape = {
  is: "object",
  members: {
    count: { is: "number", unit: "raceways or cables", whole: true },
    kind: { is: "words", of: ["nonflexible-metal", "flexible-metal", "nonmetallic", "unknown"] },
  },
};

/** A raceway, nipple or wireway that several runs share; one jumper bonds it, by all conductors in it. */
export interface SharedRaceway {
  /** Name on the drawing. Every id is unique in the document. */
  readonly id: string;
  /** What it is made of. Nonmetallic stands for conductors in no raceway too, such as a drop; unknown gives both outcomes. */
  readonly kind: "nonflexible-metal" | "flexible-metal" | "nonmetallic" | "unknown";
  /** What bonds it if it is metal; only that of a service is bonded by fittings. A jumper by default. */
  readonly bondedBy?: "jumper" | "fittings";
  /** Materials of its own conductors. The nearest wins: what is left out is of the material of what it belongs to, and last of the installation's. */
  readonly materials?: {
    /** Material of its bonding jumpers. */
    readonly bondingJumpers?: Material;
  };
}

export const sharedRacewayShape: Shape = {
  is: "object",
  members: {
    id: { is: "checked", read: readId },
    kind: { is: "words", of: ["nonflexible-metal", "flexible-metal", "nonmetallic", "unknown"] },
    bondedBy: { is: "words", of: ["jumper", "fittings"] },
    materials: {
      is: "object",
      members: { bondingJumpers: { is: "checked", read: readMaterial } },
      optional: ["bondingJumpers"],
    },
  },
  optional: ["bondedBy", "materials"],
};
