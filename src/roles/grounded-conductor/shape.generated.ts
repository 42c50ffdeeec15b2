// Generated from shape.ts by "npm run generate"; do not edit.
import type { TemperatureColumn } from "../../ampacity/shape.generated.js";
import { temperatureColumnShape } from "../../ampacity/shape.generated.js";
import { readCode } from "../../edition/read-code.js";
import type { Code } from "../../edition/shape.generated.js";
import type { Shape } from "../../input/shapes.js";
import type { NeutralLoad, Scope, SystemKind, WantedConductor } from "../../rules/shape.generated.js";
import {
  neutralLoadShape,
  scopeShape,
  systemKindShape,
  wantedConductorShape,
} from "../../rules/shape.generated.js";
import { readSupply } from "../../supply/read.js";
import type { Supply } from "../../supply/shape.generated.js";

/** A grounded conductor to be sized. */
export interface GroundedConductorInput {
  /** The code that a result is to follow: an edition of NFPA 70 and, where the text is open, the readings that were chosen. Plain JSON. There is no default edition; a jurisdiction enforces the one that it adopted. */
  readonly code: Code;
  /** What kind of system it belongs to. */
  readonly system: SystemKind;
  /** The ungrounded conductors that run with it: those in its raceway, or all to its enclosure. */
  readonly supply: Supply;
  /** Whether it is one of several in parallel raceways or cables, or the only one; the only one by default. */
  readonly scope?: Scope;
  /** The conductor to be sized. */
  readonly conductor: WantedConductor;
  /** The grounded conductor of a corner-grounded delta (three-phase, three-wire), which must carry as much as the others; a neutral by default. */
  readonly grounded?: "neutral" | "phase";
  /** Where the system bonding jumper of a separately derived system is; the table counts only if it is not at the source. */
  readonly jumperAt?: "source" | "enclosure";
  /** Its load, whose requirement stands beside the table's. */
  readonly load?: NeutralLoad;
  /** Rating in amperes of the feeder's device, where an existing separate building keeps its grounded conductor as the fault path: the larger of its load's conductor and an equipment grounding conductor, and the table has no say. That of a corner-grounded delta also carries as much as the ungrounded conductors. */
  readonly rebondedAtBuildingWithDevice?: number;
  /** Rating in amperes of the feeder's device, where it is the grounded conductor of a feeder: not smaller than the equipment grounding conductor of the feeder, save in parallel raceways, where the minimum size for parallel conductors stands in its place; the table of supply conductors has no say. */
  readonly feederDeviceAmperes?: number;
  /** Temperature column in which conductors of another material are matched; 75 C by default. */
  readonly temperature?: TemperatureColumn;
}

export const groundedConductorInputShape: Shape = {
  is: "object",
  members: {
    code: { is: "checked", read: readCode },
    system: systemKindShape,
    supply: { is: "checked", read: readSupply },
    scope: scopeShape,
    conductor: wantedConductorShape,
    grounded: { is: "words", of: ["neutral", "phase"] },
    jumperAt: { is: "words", of: ["source", "enclosure"] },
    load: neutralLoadShape,
    rebondedAtBuildingWithDevice: { is: "number", unit: "amperes" },
    feederDeviceAmperes: { is: "number", unit: "amperes" },
    temperature: temperatureColumnShape,
  },
  optional: [
    "scope",
    "grounded",
    "jumperAt",
    "load",
    "rebondedAtBuildingWithDevice",
    "feederDeviceAmperes",
    "temperature",
  ],
};
