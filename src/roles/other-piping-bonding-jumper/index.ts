import { otherPipingBondingJumperFacts } from "../../edition/tables/roles.generated.js";
import { standardSchema } from "../../input/standard-schema.js";
import type { SizedResult } from "../../rules/result.js";
import type { RoleByRating } from "../definition.js";
import { type OtherPipingBondingJumperInput, readInput } from "./input.js";
import { decide } from "./rule.js";

/**
 * The bonding jumper of other metal piping by the circuit that is likely to energize it (250.104(B), Table 250.122). The
 * equipment grounding conductor of that circuit may serve in its place.
 *
 * @example
 * ```ts
 * import { otherPipingBondingJumper, size } from "bondmil";
 * const jumper = size(otherPipingBondingJumper, {
 *   code: { year: "2020" },
 *   deviceAmperes: 20,
 *   conductor: { material: "copper" },
 * });
 * jumper.outcome; // => { kind: "conductor", size: "12 AWG", quantity: 1 }
 * ```
 */
export const otherPipingBondingJumper: RoleByRating<
  "other-piping-bonding-jumper",
  OtherPipingBondingJumperInput,
  SizedResult<"other-piping-bonding-jumper">
> = {
  id: "other-piping-bonding-jumper",
  facts: otherPipingBondingJumperFacts,
  by: "rating",
  policies: null,
  "~standard": /* @__PURE__ */ standardSchema(readInput),
  read: readInput,
  decide,
  plainest: ({ code, amperes, material }) => ({ code, deviceAmperes: amperes, conductor: { material } }),
};
