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

/** A system bonding jumper to be sized. */
export interface SystemBondingJumperInput {
  /** The code that a result is to follow: an edition of NFPA 70 and, where the text is open, the readings that were chosen. Plain JSON. There is no default edition; a jurisdiction enforces the one that it adopted. */
  readonly code: Code;
  /** The ungrounded conductors by which the conductor is sized. */
  readonly supply: Supply;
  /** The conductor to be sized. */
  readonly conductor: WantedConductor;
  /** Temperature column in which conductors of another material are matched; 75 C by default. */
  readonly temperature?: TemperatureColumn;
  /** Whether the source is a transformer of at most 1000 VA for Class 1, 2 or 3 circuits: its jumper need only be as large as the derived ungrounded conductors, not below 14 AWG copper or 12 AWG aluminum. Conductors for more than 100 A belong to no such transformer and are refused. */
  readonly controlTransformer?: boolean;
}

export const systemBondingJumperInputShape: Shape = {
  is: "object",
  members: {
    code: { is: "checked", read: readCode },
    supply: { is: "checked", read: readSupply },
    conductor: wantedConductorShape,
    temperature: temperatureColumnShape,
    controlTransformer: { is: "flag", says: "whether the source is a small control transformer" },
  },
  optional: ["temperature", "controlTransformer"],
};
