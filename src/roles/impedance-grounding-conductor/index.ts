import { impedanceGroundingConductorFacts } from "../../edition/tables/roles.generated.js";
import { standardSchema } from "../../input/standard-schema.js";
import type { SizedResult } from "../../rules/result.js";
import type { RoleByOther } from "../definition.js";
import { type ImpedanceGroundingConductorInput, readInput } from "./input.js";
import { decide } from "./rule.js";

/**
 * The conductor from the neutral point of a high-impedance grounded system, 480 V to 1000 V, to its impedance: at least the
 * impedance's largest current, never below 8 AWG copper or 6 AWG aluminum (250.36(B)).
 *
 * @example
 * ```ts
 * import { impedanceGroundingConductor, size } from "bondmil";
 * const conductor = size(impedanceGroundingConductor, {
 *   code: { year: "2020" },
 *   impedanceAmperes: 5,
 *   conductor: { material: "copper" },
 * });
 * conductor.outcome; // => { kind: "conductor", size: "8 AWG", quantity: 1 }
 * conductor.governs; // => "floor"
 * ```
 */
export const impedanceGroundingConductor: RoleByOther<
  "impedance-grounding-conductor",
  ImpedanceGroundingConductorInput,
  SizedResult<"impedance-grounding-conductor">
> = {
  id: "impedance-grounding-conductor",
  facts: impedanceGroundingConductorFacts,
  by: "current",
  "~standard": /* @__PURE__ */ standardSchema(readInput),
  read: readInput,
  decide,
  plainest: ({ code, amperes, material }) => ({ code, impedanceAmperes: amperes, conductor: { material } }),
};
