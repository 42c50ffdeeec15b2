// Generated from shape.ts by "npm run generate"; do not edit.
import type { TemperatureColumn } from "../../ampacity/shape.generated.js";
import { temperatureColumnShape } from "../../ampacity/shape.generated.js";
import { readCode } from "../../edition/read-code.js";
import type { Code } from "../../edition/shape.generated.js";
import type { Shape } from "../../input/shapes.js";
import type { SystemKind, WantedConductor } from "../../rules/shape.generated.js";
import { systemKindShape, wantedConductorShape } from "../../rules/shape.generated.js";
import { readSupply } from "../../supply/read.js";
import type { Supply } from "../../supply/shape.generated.js";

/** A supply-side bonding jumper to be sized. */
export interface SupplySideBondingJumperInput {
  /** The code that a result is to follow: an edition of NFPA 70 and, where the text is open, the readings that were chosen. Plain JSON. There is no default edition; a jurisdiction enforces the one that it adopted. */
  readonly code: Code;
  /** The ungrounded conductors by which the conductor is sized. */
  readonly supply: Supply;
  /** The conductor to be sized. */
  readonly conductor: WantedConductor;
  /** Temperature column in which conductors of another material are matched; 75 C by default. */
  readonly temperature?: TemperatureColumn;
  /** A service by default. In a separately derived system the jumper is capped at the derived ungrounded conductors. */
  readonly system?: SystemKind;
  /** Whether the jumper serves one of several raceways, by the ungrounded conductors in that raceway; the single raceway that holds all sets; or all that there is, in several raceways or in boxes. All by default. */
  readonly scope?: "raceway" | "single-raceway" | "all";
  /** Whether a separately derived system is ungrounded. The size is the same; another section requires the jumper. */
  readonly ungrounded?: boolean;
  /** What bonds in place of a wire or bus: a nonflexible metal raceway, or, at boxes and raceways of a service, the grounded conductor or fittings that are permitted for it. No jumper is then required. */
  readonly instead?: "nonflexible-metal-raceway" | "grounded-conductor" | "bonding-fittings";
}

export const supplySideBondingJumperInputShape: Shape = {
  is: "object",
  members: {
    code: { is: "checked", read: readCode },
    supply: { is: "checked", read: readSupply },
    conductor: wantedConductorShape,
    temperature: temperatureColumnShape,
    system: systemKindShape,
    scope: { is: "words", of: ["raceway", "single-raceway", "all"] },
    ungrounded: { is: "flag", says: "whether the system has no grounded conductor" },
    instead: { is: "words", of: ["nonflexible-metal-raceway", "grounded-conductor", "bonding-fittings"] },
  },
  optional: ["temperature", "system", "scope", "ungrounded", "instead"],
};
