import { smallestConductorIn } from "../ampacity/raceway.js";
import type { TemperatureColumn } from "../ampacity/shape.generated.js";
import { largerSize, leastOfCircuit } from "../ampacity/small-conductors.js";
import { terminationColumn } from "../ampacity/termination-column.js";
import type { Material } from "../conductor/index.js";
import type { EditionYear } from "../edition/index.js";
import { smallestParallel } from "./parallel-minimum.js";
import type { Supply } from "./shape.generated.js";

/** A load for which no conductors are chosen yet, and in how many sets they are to be counted. */
export interface LoadRequirement {
  readonly amperes: number;
  readonly material: Material;
  readonly sets: number;
  /** 60 C for a circuit through 100 A and 75 C above by default, as 110.14(C)(1) has it. */
  readonly temperature?: TemperatureColumn;
  /** Rating of the device, which decides the temperature column and the smallest conductor (240.4(D)); the load by default. */
  readonly circuitAmperes?: number;
}

/**
 * The smallest conductors that a load would require in so many sets, for bonding work ahead of the choice of conductors (the note on
 * services without service-entrance conductors). Parallel sets start at 1/0 AWG, and a single one at the smallest that a device of the circuit's
 * rating may protect (240.4(D)). `null` where no conductor of the table carries as much, or the circuit is rated below its load.
 */
export function requiredForLoad(year: EditionYear, load: LoadRequirement): Supply | null {
  const { amperes, material, sets, circuitAmperes = amperes } = load;
  if (circuitAmperes < amperes) return null;
  const column = load.temperature ?? terminationColumn(circuitAmperes, false);
  const carrying = smallestConductorIn(year, amperes / sets, material, column);
  if (carrying === null) return null;
  const least = leastOfCircuit(year, circuitAmperes, material)?.size ?? "18 AWG";
  const size = largerSize(carrying, sets > 1 ? smallestParallel : least);
  return { sets: [{ count: sets, size, material }], requiredForAmperes: amperes };
}
