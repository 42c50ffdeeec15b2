// Generated from shape.ts by "npm run generate"; do not edit.
import type { Material } from "../conductor/index.js";
import { readMaterial } from "../conductor/read.js";
import { readCode } from "../edition/read-code.js";
import type { Code } from "../edition/shape.generated.js";
import type { Shape } from "../input/shapes.js";
import type { WantedWire } from "../rules/shape.generated.js";
import { wantedWireShape } from "../rules/shape.generated.js";
import type { Conductor } from "../supply/shape.generated.js";
import { conductorShape } from "../supply/shape.generated.js";

/** A conductor that is there, and the edition by which it is to be judged. */
export interface LargestDeviceInput {
  /** The code that it is held under: an edition, its amendments and readings. */
  readonly code: Code;
  /** The conductor that is there. */
  readonly conductor: Conductor;
}

export const largestDeviceInputShape: Shape = {
  is: "object",
  members: { code: { is: "checked", read: readCode }, conductor: conductorShape },
};

/** An installed conductor, and the material of the supply whose largest area is to be found. */
export interface LargestSupplyInput {
  /** The code that it is held under: an edition, its amendments and readings. */
  readonly code: Code;
  /** The conductor that is there. */
  readonly conductor: Conductor;
  /** The one material of the supply. */
  readonly supplyMaterial: Material;
}

export const largestSupplyInputShape: Shape = {
  is: "object",
  members: {
    code: { is: "checked", read: readCode },
    conductor: conductorShape,
    supplyMaterial: { is: "checked", read: readMaterial },
  },
};

/** What is fixed before a loop over ratings. */
export interface PreparedRatingRequest {
  /** The code that it is held under: an edition, its amendments and readings. */
  readonly code: Code;
  /** The conductor to be sized. */
  readonly conductor: WantedWire;
}

export const preparedRatingRequestShape: Shape = {
  is: "object",
  members: { code: { is: "checked", read: readCode }, conductor: wantedWireShape },
};

/** What is fixed before a loop over areas: the code and the materials. The supply is of one material. */
export interface PreparedRequest {
  /** The code that it is held under: an edition, its amendments and readings. */
  readonly code: Code;
  /** Material of the supply, the same throughout. */
  readonly supplyMaterial: Material;
  /** The conductor to be sized. */
  readonly conductor: WantedWire;
}

export const preparedRequestShape: Shape = {
  is: "object",
  members: {
    code: { is: "checked", read: readCode },
    supplyMaterial: { is: "checked", read: readMaterial },
    conductor: wantedWireShape,
  },
};
