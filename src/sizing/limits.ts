import { areaOf, type ConductorColumn, type ConductorSize } from "../conductor/index.js";
import type { Limit } from "../edition/index.js";
import type { CapReason, CapStep, FloorReason, FloorStep, Governing } from "./step.js";

/** A required area and the step that decides it. */
export interface Required {
  readonly requiredArea: number;
  readonly governs: Governing;
}

/** Lays caps and then floors over a required area: the floor wins over the cap. */
export function limited(
  required: Required,
  caps: readonly CapStep[],
  floors: readonly FloorStep[],
): Required {
  let { requiredArea, governs } = required;
  for (const cap of caps) {
    if (cap.requiredArea < requiredArea) ({ requiredArea, kind: governs } = cap);
  }
  for (const floor of floors) {
    if (floor.requiredArea > requiredArea) ({ requiredArea, kind: governs } = floor);
  }
  return { requiredArea, governs };
}

/** The caps that act on a required area; one that lies above it says nothing and is left out. */
export function acting(caps: readonly CapStep[], requiredArea: number): readonly CapStep[] {
  return caps.filter((cap) => cap.requiredArea < requiredArea);
}

/** A limit of a policy as a floor. */
export function floorFrom(
  limit: Limit | null,
  read: ConductorColumn,
  why: FloorReason = "least-size",
): readonly FloorStep[] {
  return limit === null ? [] : [floorStep(limit[read], limit.citation, why)];
}

/** A size as a floor. */
export function floorStep(size: ConductorSize, citation: FloorStep["citation"], why: FloorReason): FloorStep {
  return { kind: "floor", why, size, requiredArea: areaOf(size), citation };
}

/** A limit of a policy as a cap. */
export function capStep(limit: Limit, read: ConductorColumn, why: CapReason = "largest-size"): CapStep {
  return { kind: "cap", why, requiredArea: areaOf(limit[read]), citation: limit.citation };
}
