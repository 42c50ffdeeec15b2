import { electrodeRacewayBondingJumperFacts } from "../../edition/tables/roles.generated.js";
import { standardSchema } from "../../input/standard-schema.js";
import type { NotRequiredResult, SizedResult } from "../../rules/result.js";
import type { RoleByOther } from "../definition.js";
import { type ElectrodeRacewayBondingJumperInput, readInput } from "./input.js";
import { decide } from "./rule.js";

/**
 * The jumper that bonds each end of a ferrous metal raceway to the grounding electrode conductor inside (250.64(E)): at least
 * the largest conductor enclosed, as installed, so that an oversized conductor takes its jumper along. One at each end.
 *
 * @example
 * ```ts
 * import { electrodeRacewayBondingJumper, size } from "bondmil";
 * const jumper = size(electrodeRacewayBondingJumper, {
 *   code: { year: "2023" },
 *   ferrous: true,
 *   enclosed: [{ size: "4 AWG", material: "copper" }],
 *   conductor: { material: "copper" },
 * });
 * jumper.outcome; // => { kind: "conductor", size: "4 AWG", quantity: 2 }
 * ```
 */
export const electrodeRacewayBondingJumper: RoleByOther<
  "electrode-raceway-bonding-jumper",
  ElectrodeRacewayBondingJumperInput,
  SizedResult<"electrode-raceway-bonding-jumper"> | NotRequiredResult<"electrode-raceway-bonding-jumper">
> = {
  id: "electrode-raceway-bonding-jumper",
  facts: electrodeRacewayBondingJumperFacts,
  by: "conductor",
  "~standard": /* @__PURE__ */ standardSchema(readInput),
  read: readInput,
  decide,
  plainest: ({ code, size, material }) => ({
    code,
    ferrous: true,
    enclosed: [{ size, material }],
    conductor: { material },
  }),
};
