// Generated from shape.ts by "npm run generate"; do not edit.
import type { ConductorSize } from "../../conductor/index.js";
import { readSize } from "../../conductor/read.js";
import { readCode } from "../../edition/read-code.js";
import type { Code } from "../../edition/shape.generated.js";
import type { Shape } from "../../input/shapes.js";
import type { WantedWire } from "../../rules/shape.generated.js";
import { wantedWireShape } from "../../rules/shape.generated.js";
import { readSupply } from "../../supply/read.js";
import type { Supply } from "../../supply/shape.generated.js";

/** A jumper from the equipment grounding conductors of an impedance-grounded system to the impedance. */
export type ImpedanceBondingJumperInput = ImpedanceJumperAtImpedance | ImpedanceJumperAtDisconnect;

export const impedanceBondingJumperInputShape: Shape = {
  is: "variants",
  by: "electrodeConductorAt",
  of: [
    {
      is: "object",
      members: {
        code: { is: "checked", read: readCode },
        electrodeConductorAt: { is: "exactly", value: "impedance" },
        supply: { is: "checked", read: readSupply },
        conductor: wantedWireShape,
      },
    },
    {
      is: "object",
      members: {
        code: { is: "checked", read: readCode },
        electrodeConductorAt: { is: "exactly", value: "first-disconnect" },
        impedanceConductor: { is: "checked", read: readSize },
        conductor: wantedWireShape,
      },
    },
  ],
};

/** The jumper of an impedance-grounded system whose electrode conductor is connected at the first disconnect. */
export interface ImpedanceJumperAtDisconnect {
  /** The code that a result is to follow: an edition of NFPA 70 and, where the text is open, the readings that were chosen. Plain JSON. There is no default edition; a jurisdiction enforces the one that it adopted. */
  readonly code: Code;
  /** The grounding electrode conductor is connected at the first disconnect. */
  readonly electrodeConductorAt: "first-disconnect";
  /** Size of the conductor from the neutral point to the impedance. */
  readonly impedanceConductor: ConductorSize;
  /** The conductor to be sized. */
  readonly conductor: WantedWire;
}

export const impedanceJumperAtDisconnectShape: Shape = {
  is: "object",
  members: {
    code: { is: "checked", read: readCode },
    electrodeConductorAt: { is: "exactly", value: "first-disconnect" },
    impedanceConductor: { is: "checked", read: readSize },
    conductor: wantedWireShape,
  },
};

/** The jumper of an impedance-grounded system whose electrode conductor is connected at the impedance. */
export interface ImpedanceJumperAtImpedance {
  /** The code that a result is to follow: an edition of NFPA 70 and, where the text is open, the readings that were chosen. Plain JSON. There is no default edition; a jurisdiction enforces the one that it adopted. */
  readonly code: Code;
  /** The grounding electrode conductor is connected at the impedance. */
  readonly electrodeConductorAt: "impedance";
  /** Ungrounded conductors of the service or of the derived system. */
  readonly supply: Supply;
  /** The conductor to be sized. */
  readonly conductor: WantedWire;
}

export const impedanceJumperAtImpedanceShape: Shape = {
  is: "object",
  members: {
    code: { is: "checked", read: readCode },
    electrodeConductorAt: { is: "exactly", value: "impedance" },
    supply: { is: "checked", read: readSupply },
    conductor: wantedWireShape,
  },
};
