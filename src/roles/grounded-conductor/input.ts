import { type Members, readShape } from "../../input/read-shape.js";
import { member, type Reader, refuse } from "../../input/reader.js";
import { refuseLargeRating } from "../../rules/protected-circuit.js";
import { type GroundedConductorInput, groundedConductorInputShape } from "./shape.generated.js";

export type { GroundedConductorInput };

/** Checks the input of a grounded conductor. */
export function readInput(at: Reader): GroundedConductorInput | undefined {
  return readShape<GroundedConductorInput>(at, groundedConductorInputShape, refine);
}

function refine(
  at: Reader,
  {
    code,
    system,
    jumperAt,
    feederDeviceAmperes,
    rebondedAtBuildingWithDevice,
  }: Members<GroundedConductorInput>,
): void {
  const place = member(at, "jumperAt");
  const isOfFeeder = feederDeviceAmperes !== undefined;
  if (system === "separately-derived" && place.value === undefined && !isOfFeeder) {
    refuse(place, "missing", 'one of "source", "enclosure"', "", ["source", "enclosure"]);
  }
  if (system === "service" && jumperAt !== undefined) {
    refuse(place, "unknown-key", "no place of a system bonding jumper at a service", "leave it out");
  }
  if (isOfFeeder && jumperAt !== undefined) {
    refuse(place, "unknown-key", "no place of a system bonding jumper at a feeder", "leave it out");
  }
  if (isOfFeeder && rebondedAtBuildingWithDevice !== undefined) {
    const expected = "one of feederDeviceAmperes and rebondedAtBuildingWithDevice";
    refuse(member(at, "feederDeviceAmperes"), "unknown-key", expected, "leave one of the two out");
  }
  if (code === undefined) return;
  refuseLargeRating(member(at, "rebondedAtBuildingWithDevice"), code);
  refuseLargeRating(member(at, "feederDeviceAmperes"), code);
}
