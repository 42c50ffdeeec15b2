import { type Code, type PolicySet, policyUnder, type Role } from "../edition/index.js";
import { readAll } from "../input/reader.js";
import type { CapStep } from "../sizing/index.js";
import { type SizedArea, sizeBySupply } from "../sizing/size-by-supply.js";
import { assumedConductors } from "../supply/equal-ampacity.js";
import type { Decided } from "./decided.js";
import { finish } from "./finish.js";
import { jumperCautions } from "./jumper-cautions.js";
import { type JumperInput, readJumperInput } from "./jumper-input.js";
import type { SizingResult } from "./result.js";
import { tableOf } from "./tables.js";

/** Which role is sized, and its policies. */
export interface JumperRole {
  readonly role: Role;
  readonly policies: PolicySet;
  /** Further caps that the rule brings along. */
  readonly caps?: readonly CapStep[];
}

/** Sizes a jumper of a role: checks the input, calls the kernel, and says what the answer rests on. */
export function sizeJumper(jumper: JumperRole, given: JumperInput): SizingResult {
  return sizeCheckedJumper(jumper, readAll(given, readJumperInput));
}

/** Sizes a conductor from its supply, the input being checked. */
export function sizeCheckedJumper(jumper: JumperRole, input: JumperInput): SizingResult {
  return finish(input.code, (code) => decideBySupply(jumper, { ...input, code }));
}

/** Decides a conductor by its supply; a rule with further requirements lays them over this. */
export function decideBySupply(jumper: JumperRole, input: JumperInput): Decided {
  const { code } = input;
  const policy = policyUnder(code, jumper.policies);
  const sized = requiredUnder(code, jumper, input);
  return {
    role: jumper.role,
    code,
    material: input.jumper.material,
    form: input.jumper.form ?? "wire",
    ...sized,
    citation: policy.basis.rule,
    policies: jumper.policies,
    cautions: jumperCautions(input, jumper, policy, sized),
  };
}

function requiredUnder(code: Code, { policies, caps }: JumperRole, input: JumperInput): SizedArea {
  const policy = policyUnder(code, policies);
  const { supply, jumper, temperature = 75 } = input;
  const { material } = jumper;
  return sizeBySupply({
    table: tableOf(policy, code),
    policy,
    supply,
    material,
    temperature,
    assume: () => assumedConductors(code.year, supply, material, temperature),
    ...(caps && { caps }),
  });
}
