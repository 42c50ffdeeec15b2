import { columnOf } from "../conductor/index.js";
import {
  type PolicySet,
  policyUnder,
  type RatingPolicy,
  type Role,
  type RoleFacts,
} from "../edition/index.js";
import { equipmentGroundingFeederTap } from "../edition/tables/sections.generated.js";
import type { SharedStep } from "../sizing/index.js";
import { sizeByRating } from "../sizing/size-by-rating.js";
import type { SizedArea } from "../sizing/size-by-supply.js";
import { isWithoutIncrease } from "./amendment-effects.js";
import { byRatingCautions } from "./by-rating-cautions.js";
import { countsIncrease, type RatedArea, type RatedInput } from "./by-rating-input.js";
import type { Decided } from "./decided.js";
import { type ProtectedCircuit, ratingOf } from "./protected-circuit.js";
import { ratingTable } from "./rating-table.js";

/** By what a role is sized from its overcurrent devices. */
export interface RatingRule<Id extends Role = Role> {
  readonly facts: RoleFacts<Id>;
  readonly policies: PolicySet<RatingPolicy>;
}

/** Decides a conductor by the devices of its circuits: each with its own row, increase and cap, and the largest serves all. */
export function decideByRating<Id extends Role>(
  { facts, policies }: RatingRule<Id>,
  input: RatedInput,
): Decided<Id> & RatedArea {
  const { code, conductor } = input;
  const policy = policyUnder(code, policies);
  const sized = sizedUnder(facts.role, policy, input);
  return {
    ...sized,
    facts,
    code,
    material: conductor.material,
    citation: policy.basis.rule,
    policies,
    cautions: () => byRatingCautions(input, policy, sized),
  };
}

function sizedUnder(role: Role, policy: RatingPolicy, input: RatedInput): RatedArea {
  const each = input.circuits.map((circuit) => sizeCircuit(role, policy, circuit, input));
  const circuits = input.circuits.map(({ device }, place) => ({
    amperes: ratingOf(device),
    requiredArea: each[place]?.requiredArea ?? 0,
  }));
  const decides = decidingPlace(policy, circuits);
  const sized = each[decides];
  if (sized === undefined) throw new TypeError("no circuit decides");
  const shared: SharedStep = { kind: "shared", circuits, decides, citation: policy.basis.shared };
  return { ...sized, steps: circuits.length > 1 ? [...sized.steps, shared] : sized.steps, decides };
}

function sizeCircuit(
  role: Role,
  policy: RatingPolicy,
  circuit: ProtectedCircuit,
  { code, conductor, floors }: RatedInput,
): SizedArea {
  const { device, conductors, increasedFrom } = circuit;
  const counts = countsIncrease(policy, circuit) && !isWithoutIncrease(code, role);
  return sizeByRating({
    table: ratingTable(code),
    policy,
    amperes: ratingOf(device),
    read: columnOf(conductor.material),
    installed: conductors,
    baseline: counts ? increasedFrom?.conductors : undefined,
    capCitation: "aheadOfFeeder" in device ? equipmentGroundingFeederTap[code.year] : undefined,
    floors,
  });
}

function decidingPlace({ shared }: RatingPolicy, circuits: SharedStep["circuits"]): number {
  const rank = ({ amperes, requiredArea }: SharedStep["circuits"][number]): readonly [number, number] =>
    shared === "each-circuit" ? [requiredArea, amperes] : [amperes, requiredArea];
  return circuits.reduce((best, circuit, place) => {
    const [first, second] = rank(circuit);
    const [bestFirst, bestSecond] = rank(circuits[best] ?? circuit);
    return first > bestFirst || (first === bestFirst && second > bestSecond) ? place : best;
  }, 0);
}
