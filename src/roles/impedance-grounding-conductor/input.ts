import { readShape } from "../../input/read-shape.js";
import type { Reader } from "../../input/reader.js";
import {
  type ImpedanceGroundingConductorInput,
  impedanceGroundingConductorInputShape,
} from "./shape.generated.js";

export type { ImpedanceGroundingConductorInput };

/** Checks the input of a conductor to an impedance. */
export function readInput(at: Reader): ImpedanceGroundingConductorInput | undefined {
  return readShape<ImpedanceGroundingConductorInput>(at, impedanceGroundingConductorInputShape);
}
