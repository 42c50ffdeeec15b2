// Generated from shape.ts by "npm run generate"; do not edit.

import { readCode } from "../../edition/read-code.js";
import type { Code } from "../../edition/shape.generated.js";
import type { Shape } from "../../input/shapes.js";
import type { WantedWire } from "../../rules/shape.generated.js";
import { wantedWireShape } from "../../rules/shape.generated.js";

/** A bonding jumper to metal piping that is not water piping and is likely to become energized, gas piping among them. */
export interface OtherPipingBondingJumperInput {
  /** The code that a result is to follow: an edition of NFPA 70 and, where the text is open, the readings that were chosen. Plain JSON. There is no default edition; a jurisdiction enforces the one that it adopted. */
  readonly code: Code;
  /** Rating in amperes of the device of the circuit that is likely to energize the piping. */
  readonly deviceAmperes: number;
  /** The conductor to be sized. */
  readonly conductor: WantedWire;
}

export const otherPipingBondingJumperInputShape: Shape = {
  is: "object",
  members: {
    code: { is: "checked", read: readCode },
    deviceAmperes: { is: "number", unit: "amperes" },
    conductor: wantedWireShape,
  },
};
