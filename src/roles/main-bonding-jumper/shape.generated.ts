// Generated from shape.ts by "npm run generate"; do not edit.
import type { TemperatureColumn } from "../../ampacity/shape.generated.js";
import { temperatureColumnShape } from "../../ampacity/shape.generated.js";
import { readCode } from "../../edition/read-code.js";
import type { Code } from "../../edition/shape.generated.js";
import type { Shape } from "../../input/shapes.js";
import type { WantedConductor } from "../../rules/shape.generated.js";
import { wantedConductorShape } from "../../rules/shape.generated.js";
import { readSupply } from "../../supply/read.js";
import type { Supply } from "../../supply/shape.generated.js";

/** A main bonding jumper to be sized. */
export interface MainBondingJumperInput {
  /** The code that a result is to follow: an edition of NFPA 70 and, where the text is open, the readings that were chosen. Plain JSON. There is no default edition; a jurisdiction enforces the one that it adopted. */
  readonly code: Code;
  /** The ungrounded conductors by which the conductor is sized. */
  readonly supply: Supply;
  /** The conductor to be sized. */
  readonly conductor: WantedConductor;
  /** Temperature column in which conductors of another material are matched; 75 C by default. */
  readonly temperature?: TemperatureColumn;
}

export const mainBondingJumperInputShape: Shape = {
  is: "object",
  members: {
    code: { is: "checked", read: readCode },
    supply: { is: "checked", read: readSupply },
    conductor: wantedConductorShape,
    temperature: temperatureColumnShape,
  },
  optional: ["temperature"],
};
