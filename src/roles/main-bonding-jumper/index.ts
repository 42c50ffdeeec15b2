import { mainBondingJumperPolicies } from "../../edition/tables/policies.generated.js";
import { mainBondingJumperFacts } from "../../edition/tables/roles.generated.js";
import { standardSchema } from "../../input/standard-schema.js";
import { decideBySupply } from "../../rules/by-supply.js";
import { finish } from "../../rules/finish.js";
import type { SizedResult } from "../../rules/result.js";
import type { RoleBySupply } from "../definition.js";
import { type MainBondingJumperInput, readInput } from "./input.js";

const rule = { facts: mainBondingJumperFacts, policies: mainBondingJumperPolicies, comesWithEquipment: true };

/**
 * The main bonding jumper: the connection, inside the enclosure of a service disconnect, between the grounded conductor
 * and the enclosure with its equipment grounding conductors (250.28(D)(1); 250.28(D)(2) where a service has several
 * enclosures, each by the ungrounded conductors to it). Areas are in circular mils.
 *
 * @example
 * ```ts
 * import { mainBondingJumper, size } from "bondmil";
 * const jumper = size(mainBondingJumper, {
 *   code: { year: "2023" },
 *   supply: { sets: [{ count: 3, size: "600 kcmil", material: "copper" }] },
 *   conductor: { material: "copper" },
 * });
 * jumper.outcome; // => { kind: "conductor", size: "250 kcmil", quantity: 1 }
 * jumper.governs; // => "one-eighth"
 * ```
 */
export const mainBondingJumper: RoleBySupply<
  "main-bonding-jumper",
  MainBondingJumperInput,
  SizedResult<"main-bonding-jumper">
> = {
  id: "main-bonding-jumper",
  facts: mainBondingJumperFacts,
  by: "supply",
  policies: mainBondingJumperPolicies,
  "~standard": /* @__PURE__ */ standardSchema(readInput),
  read: readInput,
  decide: ({ code, supply, conductor, temperature }) =>
    finish(code, (under) => decideBySupply(rule, { code: under, supply, conductor, temperature })),
  plainest: ({ code, supply, material }) => ({ code, supply, conductor: { material } }),
};
