import { groundingElectrodeConductorServicePolicies } from "../../edition/tables/policies.generated.js";
import { groundingElectrodeConductorFacts } from "../../edition/tables/roles.generated.js";
import { standardSchema } from "../../input/standard-schema.js";
import type { NotRequiredResult, SizedResult } from "../../rules/result.js";
import type { RoleBySupply } from "../definition.js";
import { type GroundingElectrodeConductorInput, readInput } from "./input.js";
import { decide } from "./rule.js";

/**
 * The grounding electrode conductor by the ungrounded supply conductors (Table 250.66): of a service, of a separately derived
 * system or of a building on a feeder; as the one conductor, as the common conductor of several enclosures (each set's largest
 * conductor added, 250.64(D)(1)), or as the tap of one enclosure or system. It stops at the table's last row, 3/0 AWG copper or
 * 250 kcmil aluminum, and need not exceed the size for the electrodes that it serves (250.66(A) to (C)). It clears no fault. An
 * ungrounded system has one by the same table. The common conductor of several separately derived systems is a fixed 3/0 AWG copper or
 * 250 kcmil aluminum, whatever the systems (250.30(A)(6)).
 *
 * @example
 * ```ts
 * import { groundingElectrodeConductor, size } from "bondmil";
 * const supply = { sets: [{ count: 2, size: "350 kcmil", material: "copper" }] } as const;
 * const to = (electrodes: readonly { kind: "metal-water-pipe" | "rod" }[]) =>
 *   size(groundingElectrodeConductor, {
 *     code: { year: "2020" },
 *     system: "service",
 *     supply,
 *     conductor: { material: "copper" },
 *     electrodes,
 *   }).outcome;
 * to([{ kind: "metal-water-pipe" }, { kind: "rod" }]); // => { kind: "conductor", size: "2/0 AWG", quantity: 1 }
 * to([{ kind: "rod" }, { kind: "rod" }]); // => { kind: "conductor", size: "6 AWG", quantity: 1 }
 * ```
 */
export const groundingElectrodeConductor: RoleBySupply<
  "grounding-electrode-conductor",
  GroundingElectrodeConductorInput,
  SizedResult<"grounding-electrode-conductor"> | NotRequiredResult<"grounding-electrode-conductor">
> = {
  id: "grounding-electrode-conductor",
  facts: groundingElectrodeConductorFacts,
  by: "supply",
  policies: groundingElectrodeConductorServicePolicies,
  "~standard": /* @__PURE__ */ standardSchema(readInput),
  read: readInput,
  decide,
  plainest: ({ code, supply, material }) => ({
    code,
    system: "service",
    supply,
    conductor: { material },
    electrodes: [{ kind: "metal-water-pipe" }],
  }),
};
