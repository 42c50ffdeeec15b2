import { structuralMetalServicePolicies } from "../../edition/tables/policies.generated.js";
import { structuralMetalBondingJumperFacts } from "../../edition/tables/roles.generated.js";
import { standardSchema } from "../../input/standard-schema.js";
import type { NotRequiredResult, SizedResult } from "../../rules/result.js";
import type { RoleBySupply } from "../definition.js";
import { readInput, type StructuralMetalBondingJumperInput } from "./input.js";
import { decide } from "./rule.js";

/**
 * The bonding jumper of structural metal (250.104(C), (D)(2)) by the ungrounded conductors: through 2014 by Table 250.66, whose
 * last row is its largest size; in 2017 by Table 250.102(C)(1) without such an end; from 2020 not above 3/0 AWG copper or 250 kcmil aluminum.
 *
 * @example
 * ```ts
 * import { size, structuralMetalBondingJumper } from "bondmil";
 * const jumper = size(structuralMetalBondingJumper, {
 *   code: { year: "2023" },
 *   system: "service",
 *   supply: { sets: [{ count: 4, size: "600 kcmil", material: "copper" }] },
 *   conductor: { material: "copper" },
 * });
 * jumper.outcome; // => { kind: "conductor", size: "3/0 AWG", quantity: 1 }
 * jumper.governs; // => "cap"
 * ```
 */
export const structuralMetalBondingJumper: RoleBySupply<
  "structural-metal-bonding-jumper",
  StructuralMetalBondingJumperInput,
  SizedResult<"structural-metal-bonding-jumper"> | NotRequiredResult<"structural-metal-bonding-jumper">
> = {
  id: "structural-metal-bonding-jumper",
  facts: structuralMetalBondingJumperFacts,
  by: "supply",
  policies: structuralMetalServicePolicies,
  "~standard": /* @__PURE__ */ standardSchema(readInput),
  read: readInput,
  decide,
  plainest: ({ code, supply, material }) => ({ code, system: "service", supply, conductor: { material } }),
};
