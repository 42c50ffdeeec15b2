import { groundedConductorPolicies } from "../../edition/tables/policies.generated.js";
import { groundedConductorFacts } from "../../edition/tables/roles.generated.js";
import { standardSchema } from "../../input/standard-schema.js";
import type { NotRequiredResult, SizedResult } from "../../rules/result.js";
import type { RoleBySupply } from "../definition.js";
import { type GroundedConductorInput, readInput } from "./input.js";
import { decide } from "./rule.js";

/**
 * The grounded conductor as part of the fault path: the minimum size of the table, by the ungrounded conductors that run
 * with it (250.24(C), since 2023 250.24(D); 250.30(A)(3) in a separately derived system whose jumper is not at the source),
 * not below 1/0 AWG in each of several parallel raceways. Where its load is given, the conductor that carries it stands beside
 * the table's, and the larger governs. That of a corner-grounded delta carries as much as the ungrounded ones, in an existing separate building too
 * whose grounded conductor stays the fault path; there the table has no say, and an equipment grounding conductor's size stands beside.
 *
 * @example
 * ```ts
 * import { groundedConductor, size } from "bondmil";
 * const inEachRaceway = size(groundedConductor, {
 *   code: { year: "2023" },
 *   system: "service",
 *   supply: { sets: [{ count: 1, size: "350 kcmil", material: "copper" }] },
 *   scope: "raceway",
 *   conductor: { material: "copper" },
 *   load: { amperes: 60, circuitAmperes: 600 },
 * });
 * inEachRaceway.outcome; // => { kind: "conductor", size: "1/0 AWG", quantity: 1 }
 * inEachRaceway.governs; // => "floor"
 * ```
 */
export const groundedConductor: RoleBySupply<
  "grounded-conductor",
  GroundedConductorInput,
  SizedResult<"grounded-conductor"> | NotRequiredResult<"grounded-conductor">
> = {
  id: "grounded-conductor",
  facts: groundedConductorFacts,
  by: "supply",
  policies: groundedConductorPolicies,
  "~standard": /* @__PURE__ */ standardSchema(readInput),
  read: readInput,
  decide,
  plainest: ({ code, supply, material }) => ({ code, system: "service", supply, conductor: { material } }),
};
