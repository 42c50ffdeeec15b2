// Generated from shape.ts by "npm run generate"; do not edit.
import type { Material } from "../../conductor/index.js";
import { readMaterial } from "../../conductor/read.js";
import type { Shape } from "../../input/shapes.js";
import { readId } from "../read-id.js";

/** Trade size of a conduit, in inches. */
export type TradeSize = "3/8" | "1/2" | "3/4" | "1" | "1-1/4" | "1-1/2" | "2" | "2-1/2" | "3" | "3-1/2" | "4";

export const tradeSizeShape: Shape = {
  is: "words",
  of: ["3/8", "1/2", "3/4", "1", "1-1/4", "1-1/2", "2", "2-1/2", "3", "3-1/2", "4"],
};

/** Flexible metal conduit, which within limits serves in place of a jumper. */
export interface FlexibleConduit {
  /** What the conduit is. */
  readonly kind: "flexible-metal-conduit" | "liquidtight-flexible-metal-conduit";
  /** Trade size of a conduit, in inches. */
  readonly tradeSize: TradeSize;
  /** Whether it must flex after it is installed, as for a machine that moves or vibrates. */
  readonly flexesInUse: boolean;
  /** Feet of flexible conduit in the whole path of the fault. */
  readonly lengthFeet: number;
}

export const flexibleConduitShape: Shape = {
  is: "object",
  members: {
    kind: { is: "words", of: ["flexible-metal-conduit", "liquidtight-flexible-metal-conduit"] },
    tradeSize: tradeSizeShape,
    flexesInUse: { is: "flag", says: "whether it must flex after it is installed" },
    lengthFeet: { is: "number", unit: "feet" },
  },
};

/** An equipment bonding jumper on the load side: around flexible conduit, between panelboards or enclosures. */
export interface LoadSideJumper {
  /** Name on the drawing. Every id is unique in the document. */
  readonly id: string;
  /** The circuits in what it bonds; the largest device decides. */
  readonly circuits: readonly string[];
  /** Where it starts: an id of the document, or a name of its own. */
  readonly from: string;
  /** Where it ends: an id of the document, or a name of its own. */
  readonly to: string;
  /** Flexible metal conduit, which within limits serves in place of a jumper. */
  readonly flexibleConduit?: FlexibleConduit;
  /** Whether it runs inside the raceway or enclosure, or outside along it. */
  readonly placed: "inside" | "outside";
  /** Its length in feet; it must be told of one outside. */
  readonly lengthFeet?: number;
  /** Whether it bonds isolated sections of raceway at an outdoor pole, where it may be longer; it does not by default. */
  readonly atOutdoorPole?: boolean;
  /** Materials of its own conductors. The nearest wins: what is left out is of the material of what it belongs to, and last of the installation's. */
  readonly materials?: {
    /** Material of its bonding jumpers. */
    readonly bondingJumpers?: Material;
  };
}

export const loadSideJumperShape: Shape = {
  is: "object",
  members: {
    id: { is: "checked", read: readId },
    circuits: {
      is: "list",
      of: { is: "text", says: "a circuit in the raceway or enclosure that it bonds" },
      least: 1,
      most: 200,
    },
    from: { is: "text", says: "where it starts" },
    to: { is: "text", says: "where it ends" },
    flexibleConduit: flexibleConduitShape,
    placed: { is: "words", of: ["inside", "outside"] },
    lengthFeet: { is: "number", unit: "feet" },
    atOutdoorPole: { is: "flag", says: "whether it bonds isolated raceway at an outdoor pole" },
    materials: {
      is: "object",
      members: { bondingJumpers: { is: "checked", read: readMaterial } },
      optional: ["bondingJumpers"],
    },
  },
  optional: ["flexibleConduit", "lengthFeet", "atOutdoorPole", "materials"],
};
