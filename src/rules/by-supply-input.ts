import type { TemperatureColumn } from "../ampacity/index.js";
import type { Code } from "../edition/index.js";
import { readShape } from "../input/read-shape.js";
import type { Reader } from "../input/reader.js";
import type { Supply } from "../supply/index.js";
import { type WantedConductor, type WantedWire, wantedWireShape } from "./shape.generated.js";

export type { WantedConductor, WantedWire };

/** A conductor to be sized from the ungrounded conductors of its supply, the input being checked. */
export interface BySupplyInput {
  readonly code: Code;
  readonly supply: Supply;
  readonly conductor: WantedConductor;
  readonly temperature?: TemperatureColumn;
}

/** Validates the conductor to be sized, where it is a wire. */
export function readWantedWire(at: Reader): WantedWire | undefined {
  return readShape<WantedWire>(at, wantedWireShape);
}
