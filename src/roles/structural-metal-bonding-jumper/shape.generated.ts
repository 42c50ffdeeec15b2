// Generated from shape.ts by "npm run generate"; do not edit.

import { readCode } from "../../edition/read-code.js";
import type { Code } from "../../edition/shape.generated.js";
import type { Shape } from "../../input/shapes.js";
import type { WantedWire } from "../../rules/shape.generated.js";
import { wantedWireShape } from "../../rules/shape.generated.js";
import { readSupply } from "../../supply/read.js";
import type { Supply } from "../../supply/shape.generated.js";

/** A bonding jumper to exposed structural metal that is interconnected to form a building frame. */
export interface StructuralMetalBondingJumperInput {
  /** The code that a result is to follow: an edition of NFPA 70 and, where the text is open, the readings that were chosen. Plain JSON. There is no default edition; a jurisdiction enforces the one that it adopted. */
  readonly code: Code;
  /** Whose jumper it is: of a service, of the disconnect of a building on a feeder, or of a separately derived system. */
  readonly system: "service" | "building" | "separately-derived";
  /** Ungrounded conductors of the service, of the feeder, or of the derived system. */
  readonly supply: Supply;
  /** The conductor to be sized. */
  readonly conductor: WantedWire;
  /** Whether the frame is itself an electrode of that service, building or system, which then needs no further jumper to it. */
  readonly isElectrode?: boolean;
}

export const structuralMetalBondingJumperInputShape: Shape = {
  is: "object",
  members: {
    code: { is: "checked", read: readCode },
    system: { is: "words", of: ["service", "building", "separately-derived"] },
    supply: { is: "checked", read: readSupply },
    conductor: wantedWireShape,
    isElectrode: { is: "flag", says: "whether the frame is itself the electrode" },
  },
  optional: ["isElectrode"],
};
