import { columnOf } from "../conductor/index.js";
import type { Code } from "../edition/index.js";
import {
  member,
  optional,
  type Reader,
  readList,
  readObject,
  readOneOf,
  readPositive,
  refuse,
} from "../input/reader.js";
import { readSupply } from "../supply/read.js";
import { conductorsOf } from "../supply/sums.js";
import type { Supply } from "../supply/supply.js";
import { largestRating } from "./rating-table.js";

/**
 * The overcurrent device that decides, with its rating in amperes. It need not be a standard rating; one between two rows of
 * the table takes the next.
 */
export type CircuitDevice = OwnDevice | MotorDevice | FeederDevice;

/** The device that protects the circuit. */
export interface OwnDevice {
  readonly amperes: number;
}

/** A motor circuit, whose short-circuit device is larger than its conductors' ampacity (250.122(D)). */
export interface MotorDevice {
  readonly motor: InverseTimeMotorDevice | InstantaneousTripMotorDevice;
}

/** Fuses or an inverse-time breaker as branch-circuit short-circuit and ground-fault device; overloads do not count. */
export interface InverseTimeMotorDevice {
  readonly kind: "inverse-time-or-fuse";
  readonly amperes: number;
}

/**
 * An instantaneous-trip breaker or a motor short-circuit protector: what counts is the largest dual-element time-delay fuse that
 * 430.52(C)(1) Exception No. 1 permits for the motor, which the caller gives.
 */
export interface InstantaneousTripMotorDevice {
  readonly kind: "instantaneous-trip";
  readonly dualElementFuseAmperes: number;
}

/** A tap: what counts is the device ahead of the feeder, not one at the end of the tap (250.122(G)). */
export interface FeederDevice {
  readonly aheadOfFeeder: { readonly amperes: number };
}

/** Why ungrounded conductors were increased. */
export type IncreaseReason = "voltage-drop" | "temperature-or-number" | "other";

/** What the ungrounded conductors would be without the increase. */
export interface Increase {
  /**
   * The baseline, of the material that is installed. Which conductors it is differs between editions: through 2014 those before
   * the increase; 2017 the smallest with sufficient ampacity for the installation; from 2020 those that temperature and the
   * number of conductors require.
   */
  readonly conductors: Supply;
  readonly reason: IncreaseReason;
}

/** A circuit that the conductor serves. */
export interface ProtectedCircuit {
  readonly device: CircuitDevice;
  /**
   * Its ungrounded conductors as installed, every set of a parallel run; of a tap, the tap conductors. Needed for the limit at
   * the circuit conductors and for an increase; without them neither is applied.
   */
  readonly conductors?: Supply;
  /** Without it no increase is counted. Where the installed conductors are the baseline, give them here too. */
  readonly increasedFrom?: Increase;
}

const reasons: readonly IncreaseReason[] = ["voltage-drop", "temperature-or-number", "other"];

/** Amperes that enter the table. */
export function ratingOf(device: CircuitDevice): number {
  if ("aheadOfFeeder" in device) return device.aheadOfFeeder.amperes;
  if (!("motor" in device)) return device.amperes;
  return "amperes" in device.motor ? device.motor.amperes : device.motor.dualElementFuseAmperes;
}

/** Checks the circuits of an input. */
export function readCircuits(at: Reader, code: Code | undefined): readonly ProtectedCircuit[] | undefined {
  return readList(at, (one) => readCircuit(one, code));
}

function readCircuit(at: Reader, code: Code | undefined): ProtectedCircuit | undefined {
  if (!readObject(at, ["device", "conductors", "increasedFrom"])) return undefined;
  const device = readDevice(member(at, "device"), code);
  const conductors = optional(member(at, "conductors"), readSupply);
  const increasedFrom = optional(member(at, "increasedFrom"), readIncrease);
  if (member(at, "increasedFrom").value !== undefined && member(at, "conductors").value === undefined) {
    refuse(
      member(at, "conductors"),
      "missing",
      "the conductors as installed",
      "give them beside increasedFrom",
    );
  }
  if (
    increasedFrom !== undefined &&
    conductors !== undefined &&
    !areAlike(increasedFrom.conductors, conductors)
  ) {
    refuse(
      member(member(at, "increasedFrom"), "conductors"),
      "unlike-materials",
      "conductors of the material that is installed",
      "areas of different materials are not in proportion; name the baseline in the installed material",
    );
  }
  return device && { device, ...(conductors && { conductors }), ...(increasedFrom && { increasedFrom }) };
}

function readDevice(at: Reader, code: Code | undefined): CircuitDevice | undefined {
  const feeder = member(at, "aheadOfFeeder");
  if (feeder.value !== undefined) {
    if (!readObject(at, ["aheadOfFeeder"])) return undefined;
    if (!readObject(feeder, ["amperes"])) return undefined;
    const amperes = readRating(member(feeder, "amperes"), code);
    return amperes === undefined ? undefined : { aheadOfFeeder: { amperes } };
  }
  if (member(at, "motor").value !== undefined) {
    if (!readObject(at, ["motor"])) return undefined;
    const motor = readMotor(member(at, "motor"), code);
    return motor && { motor };
  }
  if (!readObject(at, ["amperes"])) return undefined;
  const amperes = readRating(member(at, "amperes"), code);
  return amperes === undefined ? undefined : { amperes };
}

function readMotor(at: Reader, code: Code | undefined): MotorDevice["motor"] | undefined {
  const isInstantaneous = member(at, "kind").value === "instantaneous-trip";
  const key = isInstantaneous ? "dualElementFuseAmperes" : "amperes";
  if (!readObject(at, ["kind", key])) return undefined;
  const kind = readOneOf(member(at, "kind"), ["inverse-time-or-fuse", "instantaneous-trip"]);
  const rating = readRating(member(at, key), code);
  if (kind === undefined || rating === undefined) return undefined;
  return kind === "instantaneous-trip" ? { kind, dualElementFuseAmperes: rating } : { kind, amperes: rating };
}

/** Checks the rating of a device in an input; the table ends somewhere. */
export function readRating(at: Reader, code: Code | undefined): number | undefined {
  const amperes = readPositive(at, "amperes");
  if (amperes === undefined || code === undefined || amperes <= largestRating(code)) return amperes;
  return refuse(
    at,
    "out-of-range",
    `at most ${largestRating(code)} A, where the table ends`,
    "the table has no row for a larger device",
  );
}

function readIncrease(at: Reader): Increase | undefined {
  if (!readObject(at, ["conductors", "reason"])) return undefined;
  const conductors = readSupply(member(at, "conductors"));
  const reason = readOneOf(member(at, "reason"), reasons);
  return conductors && reason && { conductors, reason };
}

function areAlike(baseline: Supply, installed: Supply): boolean {
  const columns = new Set(
    [...conductorsOf(baseline), ...conductorsOf(installed)].map((one) => columnOf(one.material)),
  );
  return columns.size === 1;
}
