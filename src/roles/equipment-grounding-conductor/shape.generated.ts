// Generated from shape.ts by "npm run generate"; do not edit.

import { readCode } from "../../edition/read-code.js";
import type { Code } from "../../edition/shape.generated.js";
import type { Shape } from "../../input/shapes.js";
import { readCircuit } from "../../rules/protected-circuit.js";
import type { ProtectedCircuit, WantedWire } from "../../rules/shape.generated.js";
import { wantedWireShape } from "../../rules/shape.generated.js";

/** A metal cable tray that is to serve as equipment grounding conductor. */
export interface CableTrayInput {
  /** The code that a result is to follow: an edition of NFPA 70 and, where the text is open, the readings that were chosen. Plain JSON. There is no default edition; a jurisdiction enforces the one that it adopted. */
  readonly code: Code;
  /** Largest fuse or breaker, or relay setting for ground-fault protection, of any circuit in the tray. */
  readonly amperes: number;
  /** Metal of the tray. */
  readonly metal: "steel" | "aluminum";
}

export const cableTrayInputShape: Shape = {
  is: "object",
  members: {
    code: { is: "checked", read: readCode },
    amperes: { is: "number", unit: "amperes" },
    metal: { is: "words", of: ["steel", "aluminum"] },
  },
};

/** How an equipment grounding conductor runs. */
export type GroundingRun =
  | {
      /** In one raceway, cable or trench, or with parallel sets in several, one in each. */
      readonly kind: "single" | "parallel-raceways" | "parallel-cables";
    }
  | {
      /** In a cable tray. */
      readonly kind: "tray";
      /** A single conductor of its own, or one inside a multiconductor cable. */
      readonly conductor: "single" | "in-cable";
    };

export const groundingRunShape: Shape = {
  is: "variants",
  by: "kind",
  of: [
    {
      is: "object",
      members: { kind: { is: "words", of: ["single", "parallel-raceways", "parallel-cables"] } },
    },
    {
      is: "object",
      members: {
        kind: { is: "exactly", value: "tray" },
        conductor: { is: "words", of: ["single", "in-cable"] },
      },
    },
  ],
};

/** An equipment grounding conductor to be sized. */
export interface EquipmentGroundingConductorInput {
  /** The code that a result is to follow: an edition of NFPA 70 and, where the text is open, the readings that were chosen. Plain JSON. There is no default edition; a jurisdiction enforces the one that it adopted. */
  readonly code: Code;
  /** The circuit that it serves, or several that share a raceway, cable or tray. */
  readonly circuits: readonly ProtectedCircuit[];
  /** The conductor to be sized. */
  readonly conductor: WantedWire;
  /** How it runs; in one raceway or cable by default. */
  readonly run?: GroundingRun;
}

export const equipmentGroundingConductorInputShape: Shape = {
  is: "object",
  members: {
    code: { is: "checked", read: readCode },
    circuits: { is: "list", of: { is: "checked", read: readCircuit }, least: 1, most: 2000 },
    conductor: wantedWireShape,
    run: groundingRunShape,
  },
  optional: ["run"],
};
