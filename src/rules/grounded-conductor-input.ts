import type { TemperatureColumn } from "../ampacity/index.js";
import { type Code, readCode } from "../edition/index.js";
import {
  member,
  optional,
  type Reader,
  readFlag,
  readObject,
  readOneOf,
  readPositive,
  refuse,
} from "../input/reader.js";
import { readColumn } from "../supply/for-load.js";
import type { Supply } from "../supply/index.js";
import { readSupply } from "../supply/read.js";
import { type JumperRequest, readJumperRequest } from "./jumper-input.js";
import { readRating } from "./protected-circuit.js";
import { readSystemKind, type SystemKind } from "./system-kind.js";

/** The load that one grounded conductor carries. */
export interface NeutralLoad {
  /** Amperes of this conductor (its share, where several run in parallel). */
  readonly amperes: number;
  /** Amperes of the circuit, which decide the temperature of its terminations: 60 C through 100 A, 75 C above. */
  readonly circuitAmperes: number;
  /** Whether the terminations of a circuit of 100 A or less are listed for 75 C; they are not unless told. */
  readonly listedFor75?: boolean;
}

/** A grounded conductor to be sized. */
export interface GroundedConductorInput {
  readonly code: Code;
  readonly system: SystemKind;
  /** The ungrounded conductors that run with it: those in its raceway, or all to its enclosure. */
  readonly supply: Supply;
  /** Whether it is one of several in parallel raceways or cables, or the only one. The only one unless told. */
  readonly scope?: "raceway" | "all";
  readonly conductor: JumperRequest;
  /** A grounded phase of a three-phase three-wire delta, which must carry as much as the others. A neutral unless told. */
  readonly grounded?: "neutral" | "phase";
  /** Where the system bonding jumper of a separately derived system is; the table counts only if it is not at the source. */
  readonly jumperAt?: "source" | "enclosure";
  /** Its load, whose requirement stands beside the table's. */
  readonly load?: NeutralLoad;
  /**
   * Rating in amperes of the feeder's device, where an existing separate building keeps its grounded conductor as the fault
   * path: the larger of its load's conductor and an equipment grounding conductor, and the table has no say. A grounded phase also
   * carries as much as the ungrounded conductors.
   */
  readonly rebondedAtBuildingWithDevice?: number;
  /** Temperature column in which conductors of another material are matched; 75 C unless told. */
  readonly temperature?: TemperatureColumn;
}

/** Checks the input of a grounded conductor. */
export function readGroundedConductorInput(at: Reader): GroundedConductorInput | undefined {
  if (!readObject(at, keys)) return undefined;
  const code = readCode(member(at, "code"));
  const system = readSystemKind(member(at, "system"));
  const supply = readSupply(member(at, "supply"));
  const conductor = readJumperRequest(member(at, "conductor"));
  const scope = optional(member(at, "scope"), (one) => readOneOf(one, ["raceway", "all"]));
  const grounded = optional(member(at, "grounded"), (one) => readOneOf(one, ["neutral", "phase"]));
  const jumperAt = readJumperPlace(member(at, "jumperAt"), system);
  const load = optional(member(at, "load"), readLoad);
  const device = optional(member(at, "rebondedAtBuildingWithDevice"), (one) => readRating(one, code));
  const temperature = optional(member(at, "temperature"), readColumn);
  if (code === undefined || system === undefined || supply === undefined || conductor === undefined)
    return undefined;
  return {
    code,
    system,
    supply,
    conductor,
    ...(scope && { scope }),
    ...(grounded && { grounded }),
    ...(jumperAt && { jumperAt }),
    ...(load && { load }),
    ...(device && { rebondedAtBuildingWithDevice: device }),
    ...(temperature && { temperature }),
  };
}

const keys = [
  "code",
  "system",
  "supply",
  "scope",
  "conductor",
  "grounded",
  "jumperAt",
  "load",
  "rebondedAtBuildingWithDevice",
  "temperature",
] as const;

function readJumperPlace(at: Reader, system: SystemKind | undefined): "source" | "enclosure" | undefined {
  if (system === "separately-derived") return readOneOf(at, ["source", "enclosure"]);
  if (system === "service" && at.value !== undefined) {
    return refuse(at, "unknown-key", "no place of a system bonding jumper at a service", "leave it out");
  }
  return undefined;
}

function readLoad(at: Reader): NeutralLoad | undefined {
  if (!readObject(at, ["amperes", "circuitAmperes", "listedFor75"])) return undefined;
  const amperes = readPositive(member(at, "amperes"), "amperes");
  const circuitAmperes = readPositive(member(at, "circuitAmperes"), "amperes");
  const listedFor75 = optional(member(at, "listedFor75"), (one) =>
    readFlag(one, "whether the terminations are listed for 75 C"),
  );
  if (amperes === undefined || circuitAmperes === undefined) return undefined;
  return { amperes, circuitAmperes, ...(listedFor75 === undefined ? {} : { listedFor75 }) };
}
