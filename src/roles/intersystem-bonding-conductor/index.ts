import { intersystemBondingConductorFacts } from "../../edition/tables/roles.generated.js";
import { standardSchema } from "../../input/standard-schema.js";
import type { NotRequiredResult, SizedResult } from "../../rules/result.js";
import type { RoleByOther } from "../definition.js";
import { type IntersystemBondingConductorInput, readInput } from "./input.js";
import { decide } from "./rule.js";

/**
 * The conductor to an intersystem bonding termination (250.94): at least 6 AWG copper, and only where the termination is not
 * itself mounted on and connected to an enclosure or raceway. From 2023 the tie of a busbar also follows the largest grounding
 * electrode conductor on it.
 *
 * @example
 * ```ts
 * import { intersystemBondingConductor, size } from "bondmil";
 * const conductor = size(intersystemBondingConductor, { code: { year: "2017" }, termination: "apart" });
 * conductor.outcome; // => { kind: "conductor", size: "6 AWG", quantity: 1 }
 * ```
 */
export const intersystemBondingConductor: RoleByOther<
  "intersystem-bonding-conductor",
  IntersystemBondingConductorInput,
  SizedResult<"intersystem-bonding-conductor"> | NotRequiredResult<"intersystem-bonding-conductor">
> = {
  id: "intersystem-bonding-conductor",
  facts: intersystemBondingConductorFacts,
  by: "named-size",
  "~standard": /* @__PURE__ */ standardSchema(readInput),
  read: readInput,
  decide,
  plainest: ({ code }) => ({ code, termination: "apart" }),
};
