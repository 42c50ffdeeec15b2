import type { Material } from "../conductor/index.js";
import { type Code, readCode } from "../edition/index.js";
import { member, optional, type Reader, readFlag, readObject, readOneOf } from "../input/reader.js";
import type { Supply } from "../supply/index.js";
import { readSupply } from "../supply/read.js";
import { readConductorMaterial } from "./impedance-grounding-conductor.js";
import { readRating } from "./protected-circuit.js";

/** Metal water piping in the area of a service or of a separately derived system. */
export interface PipingOfSystem {
  readonly code: Code;
  readonly of: "service" | "separately-derived";
  /** Ungrounded conductors of the service or of the derived system. */
  readonly supply: Supply;
  readonly jumper: { readonly material: Material };
  /** Whether the piping is itself the electrode of the derived system, which then needs no further jumper to it. */
  readonly isElectrode?: boolean;
}

/** Metal water piping in a building or structure that a feeder supplies. */
export interface PipingOfBuilding {
  readonly code: Code;
  readonly of: "building";
  /** Ungrounded conductors of the feeder. */
  readonly supply: Supply;
  /** Rating in amperes of the device that protects the feeder; it decides from 2020. */
  readonly deviceAmperes?: number;
  readonly jumper: { readonly material: Material };
}

/** Metal water piping of one occupancy, isolated from that of the others. */
export interface PipingOfOccupancy {
  readonly code: Code;
  readonly of: "occupancy";
  /** Rating in amperes of the device that supplies the occupancy. */
  readonly deviceAmperes: number;
  readonly jumper: { readonly material: Material };
}

/** A bonding jumper to metal water piping. */
export type WaterPipingInput = PipingOfSystem | PipingOfBuilding | PipingOfOccupancy;

/** Checks the input of a jumper to water piping. */
export function readWaterPipingInput(at: Reader): WaterPipingInput | undefined {
  const of = readOneOf(member(at, "of"), ["service", "separately-derived", "building", "occupancy"]);
  if (of === undefined || !readObject(at, ["code", "of", "jumper", ...keysOf(of)])) return undefined;
  const code = readCode(member(at, "code"));
  const jumper = readConductorMaterial(member(at, "jumper"));
  if (of === "occupancy") {
    const deviceAmperes = readRating(member(at, "deviceAmperes"), code);
    if (code === undefined || jumper === undefined || deviceAmperes === undefined) return undefined;
    return { code, of, jumper, deviceAmperes };
  }
  const supply = readSupply(member(at, "supply"));
  if (of === "building") {
    const deviceAmperes = optional(member(at, "deviceAmperes"), (one) => readRating(one, code));
    return code && jumper && supply && { code, of, jumper, supply, ...(deviceAmperes && { deviceAmperes }) };
  }
  const isElectrode = optional(member(at, "isElectrode"), (one) =>
    readFlag(one, "whether the piping is itself the electrode"),
  );
  return (
    code &&
    jumper &&
    supply && { code, of, jumper, supply, ...(isElectrode === undefined ? {} : { isElectrode }) }
  );
}

function keysOf(of: WaterPipingInput["of"]): readonly string[] {
  switch (of) {
    case "occupancy":
      return ["deviceAmperes"];
    case "building":
      return ["supply", "deviceAmperes"];
    case "separately-derived":
      return ["supply", "isElectrode"];
    case "service":
      return ["supply"];
  }
}
