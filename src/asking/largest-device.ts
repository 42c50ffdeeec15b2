import { areaOf, columnOf } from "../conductor/index.js";
import { type EditionYear, policyUnder, type Role } from "../edition/index.js";
import { readShape } from "../input/read-shape.js";
import { readAll } from "../input/reader.js";
import type { RoleByRating } from "../roles/definition.js";
import { ratingTable, smallestRating } from "../rules/rating-table.js";
import { amendedFloors } from "../rules/under-amendments.js";
import type { RatingRowStep } from "../sizing/index.js";
import { ratingRowStep } from "../sizing/size-by-rating.js";
import type { Conductor } from "../supply/index.js";
import { checkRole } from "./check-role.js";
import { type LargestDeviceInput, largestDeviceInputShape } from "./shape.generated.js";

/** The largest device that a conductor serves. Plain JSON. */
export interface LargestDevice {
  /** What the conductor is there for. */
  readonly role: Role;
  /** Edition of NFPA 70, by its year. */
  readonly edition: EditionYear;
  /** The conductor that is there. */
  readonly conductor: Conductor;
  /** Circular mils of the conductor. */
  readonly area: number;
  /** Amperes of the last row that the conductor meets; `null` if it is smaller than the first row or a minimum size requires. */
  readonly amperes: number | null;
  /** That row; the first one where none is met. */
  readonly row: RatingRowStep;
  /** What the conductor has beyond the row; `null` where none is met. */
  readonly reserve: DeviceReserve | null;
}

/** What a conductor has beyond what its row requires. */
export interface DeviceReserve {
  /** Circular mils. */
  readonly area: number;
  /** Percent of what the row requires, to one decimal. */
  readonly percent: number;
}

/**
 * The other way round: up to which row of Table 250.122 a conductor is large enough, minimum sizes of the role among it. Without an increase in proportion, which would leave it less, and without the limit at the circuit
 * conductors, which could leave it more.
 *
 * @param role - a role that goes by an overcurrent device
 * @param input - the code and the conductor
 * @returns the largest rating in amperes, the row, and the reserve in circular mils and percent
 * @throws {@link InputError} listing everything that is wrong in the input
 *
 * @example
 * ```ts
 * import { equipmentGroundingConductor, largestDevice } from "bondmil";
 * const found = largestDevice(equipmentGroundingConductor, {
 *   code: { year: "2023" },
 *   conductor: { size: "2/0 AWG", material: "aluminum" },
 * });
 * found.amperes; // => 600
 * found.reserve; // => { area: 0, percent: 0 }
 * ```
 */
export function largestDevice(role: RoleByRating, input: LargestDeviceInput): LargestDevice {
  checkRole(role, "rating");
  const { id, policies } = role;
  const { code, conductor } = readAll(input, (at) =>
    readShape<LargestDeviceInput>(at, largestDeviceInputShape),
  );
  const table = ratingTable(code);
  const read = columnOf(conductor.material);
  const area = areaOf(conductor.size);
  const floor = policies === null ? null : policyUnder(code, policies).floor;
  const floors = [
    ...(floor === null ? [] : [areaOf(floor[read])]),
    ...amendedFloors(code, id, conductor.material).map(({ requiredArea }) => requiredArea),
  ];
  const isBelowFloor = floors.some((least) => area < least);
  const met = isBelowFloor ? undefined : table.rows.filter((row) => areaOf(row[read]) <= area).at(-1);
  const row = ratingRowStep(table, met?.through ?? smallestRating(code), read);
  const beyond = area - row.requiredArea;
  return {
    role: id,
    edition: code.year,
    conductor,
    area,
    amperes: met?.through ?? null,
    row,
    reserve: met ? { area: beyond, percent: Math.round((beyond * 1000) / row.requiredArea) / 10 } : null,
  };
}
