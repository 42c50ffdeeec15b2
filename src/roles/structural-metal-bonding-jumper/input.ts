import { readShape } from "../../input/read-shape.js";
import type { Reader } from "../../input/reader.js";
import {
  type StructuralMetalBondingJumperInput,
  structuralMetalBondingJumperInputShape,
} from "./shape.generated.js";

export type { StructuralMetalBondingJumperInput };

/** Checks the input of a jumper to structural metal. */
export function readInput(at: Reader): StructuralMetalBondingJumperInput | undefined {
  return readShape<StructuralMetalBondingJumperInput>(at, structuralMetalBondingJumperInputShape);
}
