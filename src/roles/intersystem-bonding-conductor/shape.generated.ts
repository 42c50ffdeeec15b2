// Generated from shape.ts by "npm run generate"; do not edit.
import type { ConductorSize } from "../../conductor/index.js";
import { readSize } from "../../conductor/read.js";
import { readCode } from "../../edition/read-code.js";
import type { Code } from "../../edition/shape.generated.js";
import type { Shape } from "../../input/shapes.js";

/** The copper conductor that ties an intersystem bonding termination to the grounding of the building. */
export interface IntersystemBondingConductorInput {
  /** The code that a result is to follow: an edition of NFPA 70 and, where the text is open, the readings that were chosen. Plain JSON. There is no default edition; a jurisdiction enforces the one that it adopted. */
  readonly code: Code;
  /** A termination mounted on and connected to an enclosure or raceway, one set apart, or a busbar (from 2017). */
  readonly termination: "on-enclosure" | "apart" | "busbar";
  /** Largest grounding electrode conductor that lands on the busbar, if one does; only a busbar has one. */
  readonly electrodeConductorOnBusbar?: ConductorSize;
  /** Whether communications systems are unlikely to be used here; they are likely by default. */
  readonly communicationsUnlikely?: boolean;
}

export const intersystemBondingConductorInputShape: Shape = {
  is: "object",
  members: {
    code: { is: "checked", read: readCode },
    termination: { is: "words", of: ["on-enclosure", "apart", "busbar"] },
    electrodeConductorOnBusbar: { is: "checked", read: readSize },
    communicationsUnlikely: { is: "flag", says: "whether communications systems are unlikely" },
  },
  optional: ["electrodeConductorOnBusbar", "communicationsUnlikely"],
};
