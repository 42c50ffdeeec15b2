import { equipmentGroundingConductorPolicies } from "../../edition/tables/rating-policies.generated.js";
import { equipmentGroundingConductorFacts } from "../../edition/tables/roles.generated.js";
import { standardSchema } from "../../input/standard-schema.js";
import type { SizedResult } from "../../rules/result.js";
import type { RoleByRating } from "../definition.js";
import { type EquipmentGroundingConductorInput, readInput } from "./input.js";
import { decide } from "./rule.js";

/**
 * The equipment grounding conductor of the wire type: the path from equipment back to the grounded conductor, by which a
 * fault opens the overcurrent device (250.122). By the rating of the device ahead; in proportion where the ungrounded conductors
 * were increased (250.122(B)); never required larger than the circuit conductors (250.122(A)); of a single conductor in a cable
 * tray not below 4 AWG (392.10(B)(1)(c)). It is a minimum: the path must also let the device open (250.4(A)(5)).
 *
 * @example
 * ```ts
 * import { equipmentGroundingConductor, size } from "bondmil";
 * const grounding = size(equipmentGroundingConductor, {
 *   code: { year: "2020" },
 *   circuits: [
 *     {
 *       device: { amperes: 50 },
 *       conductors: { sets: [{ count: 1, size: "4 AWG", material: "copper" }] },
 *       increasedFrom: {
 *         conductors: { sets: [{ count: 1, size: "8 AWG", material: "copper" }] },
 *         reason: "voltage-drop",
 *       },
 *     },
 *   ],
 *   conductor: { material: "copper" },
 * });
 * grounding.requiredArea; // => 26243
 * grounding.outcome; // => { kind: "conductor", size: "4 AWG", quantity: 1 }
 * grounding.cautions.some(({ code }) => code === "short-by-rounding"); // => true
 * ```
 */
export const equipmentGroundingConductor: RoleByRating<
  "equipment-grounding-conductor",
  EquipmentGroundingConductorInput,
  SizedResult<"equipment-grounding-conductor">
> = {
  id: "equipment-grounding-conductor",
  facts: equipmentGroundingConductorFacts,
  by: "rating",
  policies: equipmentGroundingConductorPolicies,
  "~standard": /* @__PURE__ */ standardSchema(readInput),
  read: readInput,
  decide,
  plainest: ({ code, amperes, material }) => ({
    code,
    circuits: [{ device: { amperes } }],
    conductor: { material },
  }),
};
