import { columnOf } from "../conductor/index.js";
import {
  type Citation,
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
import type { Caution } from "./caution.js";
import type { Decided } from "./decided.js";
import { type CircuitDevice, type ProtectedCircuit, ratingOf } from "./protected-circuit.js";
import { ratingTable } from "./rating-table.js";

/** By what a role is sized from its overcurrent devices. */
export interface RatingRule<Id extends Role = Role> {
  readonly facts: RoleFacts<Id>;
  readonly policies: PolicySet<RatingPolicy>;
  /** The sentence that sends the role to its table, where the deciding device has another than that of the policies. */
  readonly citation?: (device: CircuitDevice) => Citation | null;
  /** What the rule has to say beside what there is to say of any circuit. */
  readonly cautions?: () => readonly Caution[];
}

/** Decides a conductor by the devices of its circuits: each with its own row, increase and cap, and the largest serves all. */
export function decideByRating<Id extends Role>(rule: RatingRule<Id>, input: RatedInput): Decided<Id> {
  const { code, circuits, conductor } = input;
  const policy = policyUnder(code, rule.policies);
  const sized = sizedUnder(rule.facts.role, policy, input);
  const { steps, governs, requiredArea } = sized;
  const deciding = circuits[sized.decides];
  return {
    facts: rule.facts,
    code,
    material: conductor.material,
    steps,
    governs,
    requiredArea,
    citation: (deciding && rule.citation?.(deciding.device)) ?? policy.basis.rule,
    policies: rule.policies,
    cautions: () => [...byRatingCautions(input, policy, sized), ...(rule.cautions?.() ?? [])],
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
  const { steps, governs, requiredArea } = sized;
  return { steps: circuits.length > 1 ? [...steps, shared] : steps, governs, requiredArea, decides };
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
