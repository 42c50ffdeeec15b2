import {
  type Code,
  chosenReading,
  otherReadings,
  type PolicySet,
  policyUnder,
  type Role,
  readingsFor,
} from "../edition/index.js";
import { readAll } from "../input/reader.js";
import type { CapStep, FloorStep } from "../sizing/index.js";
import { type SizedArea, sizeBySupply } from "../sizing/size-by-supply.js";
import { assumedConductors } from "../supply/equal-ampacity.js";
import { finish } from "./finish.js";
import { jumperCautions } from "./jumper-cautions.js";
import { type JumperInput, readJumperInput } from "./jumper-input.js";
import type { ReadingUsed, SizingResult } from "./result.js";
import { tableOf } from "./tables.js";

/** Which role is sized, and its policies. */
export interface JumperRole {
  readonly role: Role;
  readonly policies: PolicySet;
  /** Further caps and floors that the rule brings along. */
  readonly caps?: readonly CapStep[];
  readonly floors?: readonly FloorStep[];
}

/** Sizes a jumper of a role: checks the input, calls the kernel, and says what the answer rests on. */
export function sizeJumper(jumper: JumperRole, given: JumperInput): SizingResult {
  return sizeCheckedJumper(jumper, readAll(given, readJumperInput));
}

/** Sizes a conductor from its supply, the input being checked. */
export function sizeCheckedJumper(jumper: JumperRole, input: JumperInput): SizingResult {
  const { role, policies } = jumper;
  const { code } = input;
  const policy = policyUnder(code, policies);
  const sized = requiredUnder(code, jumper, input);
  return finish({
    role,
    year: code.year,
    material: input.jumper.material,
    form: input.jumper.form ?? "wire",
    ...sized,
    citation: policy.basis.rule,
    readings: readingsUsed(jumper, input, sized.requiredArea),
    cautions: jumperCautions(input, jumper, policy, sized),
  });
}

function requiredUnder(code: Code, { policies, caps, floors }: JumperRole, input: JumperInput): SizedArea {
  const policy = policyUnder(code, policies);
  const { supply, jumper, temperature = 75 } = input;
  const { material } = jumper;
  return sizeBySupply({
    table: tableOf(policy, code.year),
    policy,
    supply,
    material,
    temperature,
    assume: () => assumedConductors(code.year, supply, material, temperature),
    ...(caps && { caps }),
    ...(floors && { floors }),
  });
}

function readingsUsed(jumper: JumperRole, input: JumperInput, requiredArea: number): readonly ReadingUsed[] {
  const { code } = input;
  return readingsFor(code, jumper.policies).flatMap((id): ReadingUsed[] => {
    const otherwise = otherReadings(code, id).map((other) => ({
      alternative: other.alternative,
      requiredArea: requiredUnder(other.code, jumper, input).requiredArea,
    }));
    const matters = otherwise.some((other) => other.requiredArea !== requiredArea);
    return matters ? [{ id, chosen: chosenReading(code, id), otherwise }] : [];
  });
}
