import { electrodeBondingJumperPolicies } from "../../edition/tables/policies.generated.js";
import { electrodeBondingJumperFacts } from "../../edition/tables/roles.generated.js";
import { standardSchema } from "../../input/standard-schema.js";
import type { SizedResult } from "../../rules/result.js";
import type { RoleBySupply } from "../definition.js";
import { type ElectrodeBondingJumperInput, readInput } from "./input.js";
import { decide } from "./rule.js";

/**
 * The bonding jumper between grounding electrodes (250.53(C)): as the grounding electrode conductor by Table 250.66, with the
 * sizes that it need not exceed for the electrodes beyond it, and for a supplemental rod, pipe or plate (250.53(E)).
 *
 * @example
 * ```ts
 * import { electrodeBondingJumper, size } from "bondmil";
 * const jumper = size(electrodeBondingJumper, {
 *   code: { year: "2017" },
 *   supply: { sets: [{ count: 1, size: "500 kcmil", material: "copper" }] },
 *   conductor: { material: "copper" },
 *   electrodes: [{ kind: "concrete-encased" }],
 * });
 * jumper.outcome; // => { kind: "conductor", size: "4 AWG", quantity: 1 }
 * ```
 */
export const electrodeBondingJumper: RoleBySupply<
  "electrode-bonding-jumper",
  ElectrodeBondingJumperInput,
  SizedResult<"electrode-bonding-jumper">
> = {
  id: "electrode-bonding-jumper",
  facts: electrodeBondingJumperFacts,
  by: "supply",
  policies: electrodeBondingJumperPolicies,
  "~standard": /* @__PURE__ */ standardSchema(readInput),
  read: readInput,
  decide,
  plainest: ({ code, supply, material }) => ({
    code,
    supply,
    conductor: { material },
    electrodes: [{ kind: "metal-water-pipe" }],
  }),
};
