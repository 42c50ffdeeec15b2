// Generated from shape.ts by "npm run generate"; do not edit.

import { readCode } from "../../edition/read-code.js";
import type { Code } from "../../edition/shape.generated.js";
import type { Shape } from "../../input/shapes.js";
import { readCircuit } from "../../rules/protected-circuit.js";
import type { ProtectedCircuit, WantedWire } from "../../rules/shape.generated.js";
import { wantedWireShape } from "../../rules/shape.generated.js";

/** An equipment bonding jumper on the load side of an overcurrent device, to be sized. */
export interface EquipmentBondingJumperInput {
  /** The code that a result is to follow: an edition of NFPA 70 and, where the text is open, the readings that were chosen. Plain JSON. There is no default edition; a jurisdiction enforces the one that it adopted. */
  readonly code: Code;
  /** The circuit in the raceway or enclosure that it bonds, or all those in the raceways that one jumper bonds in common. */
  readonly circuits: readonly ProtectedCircuit[];
  /** The conductor to be sized. */
  readonly conductor: WantedWire;
}

export const equipmentBondingJumperInputShape: Shape = {
  is: "object",
  members: {
    code: { is: "checked", read: readCode },
    circuits: { is: "list", of: { is: "checked", read: readCircuit }, least: 1, most: 2000 },
    conductor: wantedWireShape,
  },
};
