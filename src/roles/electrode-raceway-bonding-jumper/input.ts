import { readShape } from "../../input/read-shape.js";
import type { Reader } from "../../input/reader.js";
import {
  type ElectrodeRacewayBondingJumperInput,
  electrodeRacewayBondingJumperInputShape,
} from "./shape.generated.js";

export type { ElectrodeRacewayBondingJumperInput };

/** Checks the input of a jumper at the end of a raceway. */
export function readInput(at: Reader): ElectrodeRacewayBondingJumperInput | undefined {
  return readShape<ElectrodeRacewayBondingJumperInput>(at, electrodeRacewayBondingJumperInputShape);
}
