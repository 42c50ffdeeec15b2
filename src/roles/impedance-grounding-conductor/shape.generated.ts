// Generated from shape.ts by "npm run generate"; do not edit.
import type { TemperatureColumn } from "../../ampacity/shape.generated.js";
import { temperatureColumnShape } from "../../ampacity/shape.generated.js";
import { readCode } from "../../edition/read-code.js";
import type { Code } from "../../edition/shape.generated.js";
import type { Shape } from "../../input/shapes.js";
import type { WantedWire } from "../../rules/shape.generated.js";
import { wantedWireShape } from "../../rules/shape.generated.js";

/** A conductor from the neutral point of a system to its grounding impedance. */
export interface ImpedanceGroundingConductorInput {
  /** The code that a result is to follow: an edition of NFPA 70 and, where the text is open, the readings that were chosen. Plain JSON. There is no default edition; a jurisdiction enforces the one that it adopted. */
  readonly code: Code;
  /** Largest current that the impedance lets through, in amperes. */
  readonly impedanceAmperes: number;
  /** The conductor to be sized. */
  readonly conductor: WantedWire;
  /** Temperature column of its ampacity; 60 C by default. */
  readonly temperature?: TemperatureColumn;
}

export const impedanceGroundingConductorInputShape: Shape = {
  is: "object",
  members: {
    code: { is: "checked", read: readCode },
    impedanceAmperes: { is: "number", unit: "amperes" },
    conductor: wantedWireShape,
    temperature: temperatureColumnShape,
  },
  optional: ["temperature"],
};
