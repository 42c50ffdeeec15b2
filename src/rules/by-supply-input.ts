import type { TemperatureColumn } from "../ampacity/index.js";
import type { Code } from "../edition/index.js";
import type { Supply } from "../supply/index.js";
import type { WantedConductor } from "./shape.generated.js";

export type { WantedConductor };

/** A conductor to be sized from the ungrounded conductors of its supply, the input being checked. */
export interface BySupplyInput {
  readonly code: Code;
  readonly supply: Supply;
  readonly conductor: WantedConductor;
  readonly temperature?: TemperatureColumn | undefined;
}
