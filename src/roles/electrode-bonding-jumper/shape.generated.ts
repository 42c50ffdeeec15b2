// Generated from shape.ts by "npm run generate"; do not edit.

import { readCode } from "../../edition/read-code.js";
import type { Code } from "../../edition/shape.generated.js";
import type { Shape } from "../../input/shapes.js";
import type { Electrode, WantedWire } from "../../rules/shape.generated.js";
import { electrodeShape, wantedWireShape } from "../../rules/shape.generated.js";
import { readSupply } from "../../supply/read.js";
import type { Supply } from "../../supply/shape.generated.js";

/** A bonding jumper that ties electrodes into one grounding electrode system. */
export interface ElectrodeBondingJumperInput {
  /** The code that a result is to follow: an edition of NFPA 70 and, where the text is open, the readings that were chosen. Plain JSON. There is no default edition; a jurisdiction enforces the one that it adopted. */
  readonly code: Code;
  /** The ungrounded conductors that size the grounding electrode conductor. */
  readonly supply: Supply;
  /** The conductor to be sized. */
  readonly conductor: WantedWire;
  /** The electrodes that depend on this jumper: those beyond it, seen from the grounding electrode conductor. */
  readonly electrodes: readonly Electrode[];
  /** Whether it is the sole connection to a supplemental rod, pipe or plate (250.53(E)). */
  readonly supplemental?: boolean;
}

export const electrodeBondingJumperInputShape: Shape = {
  is: "object",
  members: {
    code: { is: "checked", read: readCode },
    supply: { is: "checked", read: readSupply },
    conductor: wantedWireShape,
    electrodes: { is: "list", of: electrodeShape, least: 1, most: 2000 },
    supplemental: { is: "flag", says: "whether the electrodes beyond it are supplemental" },
  },
  optional: ["supplemental"],
};
