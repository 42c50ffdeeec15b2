// Generated from shape.ts by "npm run generate"; do not edit.

import { readCode } from "../edition/read-code.js";
import type { Code } from "../edition/shape.generated.js";
import type { Shape } from "../input/shapes.js";

/** A permanently installed generator, or another alternate source such as an inverter or a fuel cell. */
export interface AlternateSource {
  /** A generator or another alternate source. */
  readonly kind: "generator" | "other";
  /** Whether its overcurrent device is in the enclosure of the source. */
  readonly overcurrentDevice: "integral" | "not-integral";
}

export const alternateSourceShape: Shape = {
  is: "object",
  members: {
    kind: { is: "words", of: ["generator", "other"] },
    overcurrentDevice: { is: "words", of: ["integral", "not-integral"] },
  },
};

/** What a disconnect on the supply side, or the service disconnect itself, is marked as: an outdoor emergency disconnect of a dwelling either is the service disconnect or lies ahead of it; `supply-side-source` is the disconnect of a source, solar power for example, that is connected ahead of the service disconnect in an enclosure of its own. */
export type Designation =
  | "service-disconnect"
  | "emergency-disconnect-as-service-disconnect"
  | "emergency-disconnect-not-service-equipment"
  | "meter-disconnect"
  | "supply-side-source";

export const designationShape: Shape = {
  is: "words",
  of: [
    "service-disconnect",
    "emergency-disconnect-as-service-disconnect",
    "emergency-disconnect-not-service-equipment",
    "meter-disconnect",
    "supply-side-source",
  ],
};

/** How the system is grounded; `grounded-phase` is a corner-grounded delta. */
export type Grounding = "solidly-grounded" | "grounded-phase" | "impedance" | "ungrounded";

export const groundingShape: Shape = {
  is: "words",
  of: ["solidly-grounded", "grounded-phase", "impedance", "ungrounded"],
};

/** A designated disconnect of a service. */
export interface DesignationInput {
  /** The code that a result is to follow: an edition of NFPA 70 and, where the text is open, the readings that were chosen. Plain JSON. There is no default edition; a jurisdiction enforces the one that it adopted. */
  readonly code: Code;
  /** How the disconnect is marked. */
  readonly designation: Designation;
  /** How the utility's system is grounded. */
  readonly grounding: Grounding;
}

export const designationInputShape: Shape = {
  is: "object",
  members: {
    code: { is: "checked", read: readCode },
    designation: designationShape,
    grounding: groundingShape,
  },
};

/** A source, and how its grounded conductor meets that of another system. */
export interface SourceInput {
  /** The code that it is held under: an edition, its amendments and readings. */
  readonly code: Code;
  /** The source and how it is connected. */
  readonly source: TransformerSource | AlternateSource;
  /** How the system of the source is grounded, or would be if it stood alone; `grounded-phase` is the corner of a delta. */
  readonly grounding: Grounding;
  /** Whether the grounded conductor is solidly connected to that of a service or of another system. Without it the transfer switch tells; a transformer's is not by default. Decides where both are given. */
  readonly groundedConductorSolidlyConnected?: boolean;
  /** Of a generator or another alternate source that has a grounded conductor. */
  readonly transferSwitch?: {
    /** Whether the transfer switch opens the grounded conductor. */
    readonly switchesGroundedConductor: boolean;
  };
}

export const sourceInputShape: Shape = {
  is: "object",
  members: {
    code: { is: "checked", read: readCode },
    source: {
      is: "variants",
      by: "kind",
      of: [
        {
          is: "object",
          members: {
            kind: { is: "exactly", value: "transformer" },
            overcurrentDevice: { is: "words", of: ["integral", "not-integral"] },
            windings: { is: "words", of: ["separate", "common"] },
          },
        },
        {
          is: "object",
          members: {
            kind: { is: "words", of: ["generator", "other"] },
            overcurrentDevice: { is: "words", of: ["integral", "not-integral"] },
          },
        },
      ],
    },
    grounding: groundingShape,
    groundedConductorSolidlyConnected: {
      is: "flag",
      says: "whether the grounded conductor is solidly connected to that of another system",
    },
    transferSwitch: {
      is: "object",
      members: {
        switchesGroundedConductor: { is: "flag", says: "whether it switches the grounded conductor" },
      },
    },
  },
  optional: ["groundedConductorSolidlyConnected", "transferSwitch"],
};

/** A transformer with windings of its own, or an autotransformer, whose windings are in common. */
export interface TransformerSource {
  /** A transformer. */
  readonly kind: "transformer";
  /** Whether its overcurrent device is in the enclosure of the source. */
  readonly overcurrentDevice: "integral" | "not-integral";
  /** How its windings are connected to those of its supply. */
  readonly windings: "separate" | "common";
}

export const transformerSourceShape: Shape = {
  is: "object",
  members: {
    kind: { is: "exactly", value: "transformer" },
    overcurrentDevice: { is: "words", of: ["integral", "not-integral"] },
    windings: { is: "words", of: ["separate", "common"] },
  },
};
