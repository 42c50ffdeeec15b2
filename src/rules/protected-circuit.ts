import { columnOf } from "../conductor/index.js";
import type { Code } from "../edition/index.js";
import { type Members, readShape } from "../input/read-shape.js";
import { member, placeIn, type Reader, refuse } from "../input/reader.js";
import type { Supply } from "../supply/index.js";
import { conductorsOf } from "../supply/sums.js";
import { largestRating } from "./rating-table.js";
import { type CircuitDevice, type ProtectedCircuit, protectedCircuitShape } from "./shape.generated.js";

export type { CircuitDevice, ProtectedCircuit };

/** Amperes that enter the table. */
export function ratingOf(device: CircuitDevice): number {
  if ("aheadOfFeeder" in device) return device.aheadOfFeeder.amperes;
  if (!("motor" in device)) return device.amperes;
  return "deviceAmperes" in device.motor ? device.motor.deviceAmperes : device.motor.dualElementFuseAmperes;
}

/** Checks a circuit in an input; whether the table has a row for its device, the code tells. */
export function readCircuit(at: Reader): ProtectedCircuit | undefined {
  return readShape<ProtectedCircuit>(at, protectedCircuitShape, refineCircuit);
}

function refineCircuit(at: Reader, { conductors, increasedFrom }: Members<ProtectedCircuit>): void {
  if (increasedFrom === undefined) return;
  const installed = member(at, "conductors");
  if (installed.value === undefined) {
    refuse(installed, "missing", "the conductors as installed", "give them beside increasedFrom");
  } else if (conductors !== undefined && !areAlike(increasedFrom.conductors, conductors)) {
    refuse(
      member(member(at, "increasedFrom"), "conductors"),
      "unlike-materials",
      "conductors of the material that is installed",
      "areas of different materials are not in proportion; name the baseline in the installed material",
    );
  }
}

/** Refuses devices that the table of a code has no row for. */
export function refuseLargeDevices(at: Reader, circuits: readonly ProtectedCircuit[], code: Code): void {
  circuits.forEach(({ device }, i) => {
    refuseLargeRating(
      placeIn(at, ["circuits", i, "device", ...keysOfRating(device)], ratingOf(device)),
      code,
    );
  });
}

/** Refuses the rating of a device that the table of a code has no row for. */
export function refuseLargeRating(at: Reader, code: Code): void {
  if (typeof at.value !== "number" || at.value <= largestRating(code)) return;
  refuse(
    at,
    "out-of-range",
    `at most ${largestRating(code)} A, where the table ends`,
    "the table has no row for a larger device",
  );
}

function keysOfRating(device: CircuitDevice): readonly string[] {
  if ("aheadOfFeeder" in device) return ["aheadOfFeeder", "amperes"];
  if (!("motor" in device)) return ["amperes"];
  return ["motor", "deviceAmperes" in device.motor ? "deviceAmperes" : "dualElementFuseAmperes"];
}

function areAlike(baseline: Supply, installed: Supply): boolean {
  const columns = new Set(
    [...conductorsOf(baseline), ...conductorsOf(installed)].map((one) => columnOf(one.material)),
  );
  return columns.size === 1;
}
