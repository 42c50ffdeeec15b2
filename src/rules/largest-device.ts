import { areaOf, columnOf } from "../conductor/index.js";
import { type Code, type EditionYear, readCode } from "../edition/index.js";
import { member, type Reader, readAll, readObject } from "../input/reader.js";
import type { RatingRowStep } from "../sizing/index.js";
import { ratingRowStep } from "../sizing/size-by-rating.js";
import type { Conductor } from "../supply/index.js";
import { readConductor } from "../supply/read.js";
import { ratingTable, smallestRating } from "./rating-table.js";

/** A conductor that is there, and the edition by which it is to be judged. */
export interface LargestDeviceInput {
  readonly code: Code;
  /** An equipment grounding conductor, or a bonding jumper on the load side. */
  readonly conductor: Conductor;
}

/** The largest device that a conductor serves. Plain JSON. */
export interface LargestDevice {
  readonly edition: EditionYear;
  readonly conductor: Conductor;
  /** Circular mils of the conductor. */
  readonly area: number;
  /** Amperes of the last row that the conductor meets; `null` if it is smaller than the first row asks for. */
  readonly amperes: number | null;
  /** That row; the first one where none is met. */
  readonly row: RatingRowStep;
  /** What the conductor has beyond the row; `null` where none is met. */
  readonly reserve: DeviceReserve | null;
}

/** What a conductor has beyond what its row asks for. */
export interface DeviceReserve {
  /** Circular mils. */
  readonly area: number;
  /** Percent of what the row asks for, to one decimal. */
  readonly percent: number;
}

/**
 * The inverse question: up to which row of Table 250.122 an equipment grounding conductor, or a bonding jumper on the load side,
 * is large enough. Without an increase in proportion, which would leave it less, and without the limit at the circuit
 * conductors, which could leave it more.
 *
 * @param input - the code and the conductor
 * @returns the largest rating in amperes, the row, and the reserve in circular mils and percent
 * @throws {@link InputError} listing everything that is wrong in the input
 *
 * @example
 * ```ts
 * import { largestDeviceFor } from "bondmil";
 * const found = largestDeviceFor({
 *   code: { year: "2023" },
 *   conductor: { size: "2/0 AWG", material: "aluminum" },
 * });
 * found.amperes; // => 600
 * found.reserve; // => { area: 0, percent: 0 }
 * ```
 */
export function largestDeviceFor(input: LargestDeviceInput): LargestDevice {
  const { code, conductor } = readAll(input, readInput);
  const table = ratingTable(code);
  const read = columnOf(conductor.material);
  const area = areaOf(conductor.size);
  const met = table.rows.filter((row) => areaOf(row[read]) <= area).at(-1);
  const row = ratingRowStep(table, met?.through ?? smallestRating(code), read);
  const beyond = area - row.requiredArea;
  return {
    edition: code.year,
    conductor,
    area,
    amperes: met?.through ?? null,
    row,
    reserve: met ? { area: beyond, percent: Math.round((beyond * 1000) / row.requiredArea) / 10 } : null,
  };
}

function readInput(at: Reader): LargestDeviceInput | undefined {
  if (!readObject(at, ["code", "conductor"])) return undefined;
  const code = readCode(member(at, "code"));
  const conductor = readConductor(member(at, "conductor"));
  return code && conductor && { code, conductor };
}
