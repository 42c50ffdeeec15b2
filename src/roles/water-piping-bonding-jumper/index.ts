import { waterPipingServicePolicies } from "../../edition/tables/policies.generated.js";
import { waterPipingBondingJumperFacts } from "../../edition/tables/roles.generated.js";
import { standardSchema } from "../../input/standard-schema.js";
import type { NotRequiredResult, SizedResult } from "../../rules/result.js";
import type { RoleBySupply } from "../definition.js";
import { readInput, type WaterPipingBondingJumperInput } from "./input.js";
import { decide } from "./rule.js";

/**
 * The bonding jumper of metal water piping (250.104(A), (D)(1)). At a service or a separately derived system by the ungrounded
 * conductors: through 2014 by Table 250.66, whose last row is its largest size; in 2017 by Table 250.102(C)(1) without such an end; from 2020 not
 * above 3/0 AWG copper or 250 kcmil aluminum. In one occupancy of several by the device. In a building on a feeder by the feeder
 * conductors through 2017 and by the device from 2020, never above the feeder's largest conductor.
 *
 * @example
 * ```ts
 * import { size, waterPipingBondingJumper } from "bondmil";
 * const required = (year: "2014" | "2017" | "2020") =>
 *   size(waterPipingBondingJumper, {
 *     code: { year },
 *     system: "service",
 *     supply: { sets: [{ count: 6, size: "500 kcmil", material: "copper" }] },
 *     conductor: { material: "copper" },
 *   }).requiredArea;
 * [required("2014"), required("2017"), required("2020")]; // => [167800, 375000, 167800]
 * ```
 */
export const waterPipingBondingJumper: RoleBySupply<
  "water-piping-bonding-jumper",
  WaterPipingBondingJumperInput,
  SizedResult<"water-piping-bonding-jumper"> | NotRequiredResult<"water-piping-bonding-jumper">
> = {
  id: "water-piping-bonding-jumper",
  facts: waterPipingBondingJumperFacts,
  by: "supply",
  policies: waterPipingServicePolicies,
  "~standard": /* @__PURE__ */ standardSchema(readInput),
  read: readInput,
  decide,
  plainest: ({ code, supply, material }) => ({ code, system: "service", supply, conductor: { material } }),
};
