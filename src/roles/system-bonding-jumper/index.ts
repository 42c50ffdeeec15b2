import { systemBondingJumperPolicies } from "../../edition/tables/policies.generated.js";
import { systemBondingJumperFacts } from "../../edition/tables/roles.generated.js";
import { standardSchema } from "../../input/standard-schema.js";
import { decideBySupply } from "../../rules/by-supply.js";
import { finish } from "../../rules/finish.js";
import type { SizedResult } from "../../rules/result.js";
import type { RoleBySupply } from "../definition.js";
import { ofControlTransformer } from "./control-transformer.js";
import { readInput, type SystemBondingJumperInput } from "./input.js";

const rule = {
  facts: systemBondingJumperFacts,
  policies: systemBondingJumperPolicies,
  comesWithEquipment: true,
};

/**
 * The system bonding jumper: the connection between the grounded conductor of a separately derived system and its
 * supply-side bonding jumper or equipment grounding conductors (250.28(D)(1); 250.28(D)(3) where the system feeds several
 * enclosures). For a jumper in an enclosure the supply is the feeder to it; for one at the source, all feeders together.
 *
 * @example
 * ```ts
 * import { size, systemBondingJumper } from "bondmil";
 * const jumper = size(systemBondingJumper, {
 *   code: { year: "2020" },
 *   supply: { sets: [{ count: 1, size: "4/0 AWG", material: "copper" }] },
 *   conductor: { material: "copper" },
 * });
 * jumper.outcome; // => { kind: "conductor", size: "2 AWG", quantity: 1 }
 * ```
 */
export const systemBondingJumper: RoleBySupply<
  "system-bonding-jumper",
  SystemBondingJumperInput,
  SizedResult<"system-bonding-jumper">
> = {
  id: "system-bonding-jumper",
  facts: systemBondingJumperFacts,
  by: "supply",
  policies: systemBondingJumperPolicies,
  "~standard": /* @__PURE__ */ standardSchema(readInput),
  read: readInput,
  decide: ({ code, supply, conductor, temperature, controlTransformer = false }) =>
    controlTransformer
      ? ofControlTransformer({ code, supply, conductor, temperature })
      : finish(code, (under) => decideBySupply(rule, { code: under, supply, conductor, temperature })),
  plainest: ({ code, supply, material }) => ({ code, supply, conductor: { material } }),
};
