// Generated from shape.ts by "npm run generate"; do not edit.

import { readCode } from "../../edition/read-code.js";
import type { Code } from "../../edition/shape.generated.js";
import type { Shape } from "../../input/shapes.js";
import type { WantedWire } from "../../rules/shape.generated.js";
import { wantedWireShape } from "../../rules/shape.generated.js";
import type { Conductor } from "../../supply/shape.generated.js";
import { conductorShape } from "../../supply/shape.generated.js";

/** A jumper that bonds the end of a metal raceway around grounding electrode conductors. */
export interface ElectrodeRacewayBondingJumperInput {
  /** The code that a result is to follow: an edition of NFPA 70 and, where the text is open, the readings that were chosen. Plain JSON. There is no default edition; a jurisdiction enforces the one that it adopted. */
  readonly code: Code;
  /** Whether the raceway, armor or enclosure is ferrous: only then must both ends be bonded. */
  readonly ferrous: boolean;
  /** The grounding electrode conductors inside, as installed. */
  readonly enclosed: readonly Conductor[];
  /** The conductor to be sized. */
  readonly conductor: WantedWire;
}

export const electrodeRacewayBondingJumperInputShape: Shape = {
  is: "object",
  members: {
    code: { is: "checked", read: readCode },
    ferrous: { is: "flag", says: "whether the raceway is of ferrous metal" },
    enclosed: { is: "list", of: conductorShape, least: 1, most: 2000 },
    conductor: wantedWireShape,
  },
};
