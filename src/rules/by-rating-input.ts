import type { Material } from "../conductor/index.js";
import type { Code, RatingPolicy } from "../edition/index.js";
import type { FloorStep } from "../sizing/index.js";
import type { SizedArea } from "../sizing/size-by-supply.js";
import type { ProtectedCircuit } from "./protected-circuit.js";

/** A conductor to be sized by overcurrent devices, the input being checked. */
export interface RatedInput {
  readonly code: Code;
  readonly circuits: readonly ProtectedCircuit[];
  readonly conductor: { readonly material: Material };
  /** Floors that the way of running brings along. */
  readonly floors?: readonly FloorStep[];
}

/** The size for several circuits together, and the place of the one that decides. */
export interface RatedArea extends SizedArea {
  readonly decides: number;
}

/** Whether the edition counts the increase of a circuit, if there is one. */
export function countsIncrease({ increase }: RatingPolicy, { increasedFrom }: ProtectedCircuit): boolean {
  return (
    increasedFrom !== undefined && (increase === "any" || increasedFrom.reason !== "temperature-or-number")
  );
}
