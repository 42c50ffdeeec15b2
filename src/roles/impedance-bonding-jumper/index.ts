import { impedanceBondingJumperPolicies } from "../../edition/tables/policies.generated.js";
import { impedanceBondingJumperFacts } from "../../edition/tables/roles.generated.js";
import { standardSchema } from "../../input/standard-schema.js";
import type { SizedResult } from "../../rules/result.js";
import type { RoleBySupply } from "../definition.js";
import { type ImpedanceBondingJumperInput, readInput } from "./input.js";
import { decide } from "./rule.js";

/**
 * The unspliced jumper from the equipment grounding conductors to the grounded side of the impedance (250.36(E), (G)): by
 * the electrode conductor table if the electrode conductor is connected at the impedance, which knows no 12.5 percent; the size of
 * the conductor to the impedance if it is connected at the first disconnect.
 *
 * @example
 * ```ts
 * import { impedanceBondingJumper, size } from "bondmil";
 * const jumper = size(impedanceBondingJumper, {
 *   code: { year: "2017" },
 *   electrodeConductorAt: "impedance",
 *   supply: { sets: [{ count: 6, size: "500 kcmil", material: "copper" }] },
 *   conductor: { material: "copper" },
 * });
 * jumper.outcome; // => { kind: "conductor", size: "3/0 AWG", quantity: 1 }
 * ```
 */
export const impedanceBondingJumper: RoleBySupply<
  "impedance-bonding-jumper",
  ImpedanceBondingJumperInput,
  SizedResult<"impedance-bonding-jumper">
> = {
  id: "impedance-bonding-jumper",
  facts: impedanceBondingJumperFacts,
  by: "supply",
  policies: impedanceBondingJumperPolicies,
  "~standard": /* @__PURE__ */ standardSchema(readInput),
  read: readInput,
  decide,
  plainest: ({ code, supply, material }) => ({
    code,
    electrodeConductorAt: "impedance",
    supply,
    conductor: { material },
  }),
};
