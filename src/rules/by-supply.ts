import {
  type Citation,
  type Policy,
  type PolicySet,
  policyUnder,
  type Role,
  type RoleFacts,
} from "../edition/index.js";
import type { CapStep } from "../sizing/index.js";
import { type SizedArea, sizeBySupply } from "../sizing/size-by-supply.js";
import { assumedIn } from "../supply/equal-ampacity.js";
import { bySupplyCautions } from "./by-supply-cautions.js";
import type { BySupplyInput } from "./by-supply-input.js";
import type { Caution } from "./caution.js";
import type { Decided } from "./decided.js";
import { tableOf } from "./tables.js";

/** By what a role is sized from its supply. */
export interface SupplyRule<Id extends Role = Role> {
  readonly facts: RoleFacts<Id>;
  readonly policies: PolicySet;
  /** Further caps that the rule brings along. */
  readonly caps?: readonly CapStep[];
  /** Whether listed equipment comes with this conductor. */
  readonly comesWithEquipment?: boolean;
  /** The sentence that sends the role to its table, where it is another than that of the policies. */
  readonly citation?: Citation | null;
  /** What the rule has to say beside what there is to say of any supply. */
  readonly cautions?: () => readonly Caution[];
}

/** Decides a conductor by its supply; a rule with further requirements lays them over this. */
export function decideBySupply<Id extends Role>(rule: SupplyRule<Id>, input: BySupplyInput): Decided<Id> {
  const { code, conductor } = input;
  const policy = policyUnder(code, rule.policies);
  const sized = requiredBy(policy, rule, input);
  const { steps, governs, requiredArea } = sized;
  return {
    facts: rule.facts,
    code,
    material: conductor.material,
    form: conductor.form ?? "wire",
    steps,
    governs,
    requiredArea,
    citation: rule.citation ?? policy.basis.rule,
    policies: rule.policies,
    cautions: () => [...bySupplyCautions(input, rule, policy, sized), ...(rule.cautions?.() ?? [])],
  };
}

function requiredBy(policy: Policy, { caps }: SupplyRule, input: BySupplyInput): SizedArea {
  const { code, supply, conductor, temperature = 75 } = input;
  const { material } = conductor;
  return sizeBySupply({
    table: tableOf(policy, code),
    policy,
    supply,
    material,
    temperature,
    assume: () => assumedIn(code.year, supply, material, temperature),
    caps,
  });
}
