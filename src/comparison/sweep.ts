import { checkRole } from "../asking/check-role.js";
import { readShape } from "../input/read-shape.js";
import { readAll } from "../input/reader.js";
import type { RoleByRating, RoleBySupply } from "../roles/definition.js";
import { type RatingSweep, ratingSweepShape, type SupplySweep, supplySweepShape } from "./shape.generated.js";
import { type RatingSweepRow, ratingRows } from "./sweep-rating.js";
import { type SupplySweepRow, supplyRows } from "./sweep-supply.js";

/**
 * Sizes one role for many supplies, or for many overcurrent devices, under many editions, as rows: the supplies in the order of the sizes
 * and then of the sets, or the ratings, and for each the editions one below the other. Every row comes from the full path, with what governs,
 * its section and evidence. It is the plainest question of the role; `with` changes it, for example to a separately derived system.
 *
 * @param role - the value of a role that goes by its supply or by a device
 * @param request - the materials, and which sizes, sets or ratings, and editions
 * @returns flat rows of plain JSON; areas in circular mils
 * @throws {@link InputError} if the request is wrong; what an edition refuses is a row that says so
 *
 * @example
 * ```ts
 * import { equipmentGroundingConductor, structuralMetalBondingJumper, sweep } from "bondmil";
 * const jumpers = sweep(structuralMetalBondingJumper, {
 *   editions: ["2014", "2017", "2020"],
 *   supplyMaterial: "copper",
 *   material: "copper",
 *   sizes: ["600 kcmil"],
 *   counts: [1, 4],
 * });
 * jumpers.map(({ sets, edition, size }) => [sets, edition, size]);
 * // => [
 * //   [1, "2014", "1/0 AWG"], [1, "2017", "1/0 AWG"], [1, "2020", "1/0 AWG"],
 * //   [4, "2014", "3/0 AWG"], [4, "2017", "300 kcmil"], [4, "2020", "3/0 AWG"],
 * // ]
 * const grounding = sweep(equipmentGroundingConductor, {
 *   editions: ["2008", "2011"],
 *   material: "aluminum",
 *   ratings: [3000, 4000],
 * });
 * grounding.map(({ amperes, edition, size, evidence }) => [amperes, edition, size, evidence]);
 * // => [
 * //   [3000, "2008", "600 kcmil", "carried"], [3000, "2011", "600 kcmil", "single"],
 * //   [4000, "2008", "800 kcmil", "memory"], [4000, "2011", "750 kcmil", "single"],
 * // ]
 * ```
 */
export function sweep<R extends RoleBySupply>(
  role: R,
  request: SupplySweep & {
    /** Changes to the plainest question. */
    readonly with?: Partial<Parameters<R["decide"]>[0]>;
  },
): readonly SupplySweepRow[];
export function sweep<R extends RoleByRating>(
  role: R,
  request: RatingSweep & {
    /** Changes to the plainest question. */
    readonly with?: Partial<Parameters<R["decide"]>[0]>;
  },
): readonly RatingSweepRow[];
export function sweep(
  role: RoleBySupply | RoleByRating,
  request: SupplySweep | RatingSweep,
): readonly SupplySweepRow[] | readonly RatingSweepRow[] {
  checkRole(role, "supply", "rating");
  if (role.by === "supply") {
    const read = readAll(request, (at) => readShape<SupplySweep>(at, supplySweepShape));
    return supplyRows(role, read);
  }
  return ratingRows(
    role,
    readAll(request, (at) => readShape<RatingSweep>(at, ratingSweepShape)),
  );
}
