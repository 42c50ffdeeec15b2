import { equipmentBondingJumperPolicies } from "../../edition/tables/rating-policies.generated.js";
import { equipmentBondingJumperFacts } from "../../edition/tables/roles.generated.js";
import { standardSchema } from "../../input/standard-schema.js";
import { decideByRating } from "../../rules/by-rating.js";
import { finish } from "../../rules/finish.js";
import type { SizedResult } from "../../rules/result.js";
import type { RoleByRating } from "../definition.js";
import { type EquipmentBondingJumperInput, readInput } from "./input.js";

const rule = { facts: equipmentBondingJumperFacts, policies: equipmentBondingJumperPolicies };

/**
 * The equipment bonding jumper on the load side of an overcurrent device, as an equipment grounding conductor (250.102(D));
 * one jumper in common for several raceways goes by the largest device. In 2008 not below 14 AWG and not required larger than
 * the largest ungrounded circuit conductor. On the supply side it is a supply-side bonding jumper and goes by the conductors.
 *
 * @example
 * ```ts
 * import { equipmentBondingJumper, size } from "bondmil";
 * const inCommon = size(equipmentBondingJumper, {
 *   code: { year: "2017" },
 *   circuits: [
 *     { device: { amperes: 400 } },
 *     { device: { amperes: 600 } },
 *     { device: { amperes: 1200 } },
 *   ],
 *   conductor: { material: "copper" },
 * });
 * inCommon.outcome; // => { kind: "conductor", size: "3/0 AWG", quantity: 1 }
 * ```
 */
export const equipmentBondingJumper: RoleByRating<
  "equipment-bonding-jumper",
  EquipmentBondingJumperInput,
  SizedResult<"equipment-bonding-jumper">
> = {
  id: "equipment-bonding-jumper",
  facts: equipmentBondingJumperFacts,
  by: "rating",
  policies: equipmentBondingJumperPolicies,
  "~standard": /* @__PURE__ */ standardSchema(readInput),
  read: readInput,
  decide: ({ code, circuits, conductor }) =>
    finish(code, (under) => decideByRating(rule, { code: under, circuits, conductor })),
  plainest: ({ code, amperes, material }) => ({
    code,
    circuits: [{ device: { amperes } }],
    conductor: { material },
  }),
};
