import type { PolicySet } from "../../edition/index.js";
import {
  structuralMetalDerivedPolicies,
  structuralMetalServicePolicies,
} from "../../edition/tables/policies.generated.js";
import { structuralMetalBondingJumperFacts } from "../../edition/tables/roles.generated.js";
import { structuralMetalGrounded } from "../../edition/tables/sections.generated.js";
import { isAlwaysWire } from "../../rules/amendment-effects.js";
import { decideBySupply } from "../../rules/by-supply.js";
import { finish, notRequired } from "../../rules/finish.js";
import type { NotRequiredResult, SizedResult } from "../../rules/result.js";
import type { StructuralMetalBondingJumperInput } from "./input.js";

type Id = "structural-metal-bonding-jumper";

const facts = structuralMetalBondingJumperFacts;

/** Sizes the bonding jumper of structural metal, or says why none is required. */
export function decide(input: StructuralMetalBondingJumperInput): SizedResult<Id> | NotRequiredResult<Id> {
  const { code, system, supply, conductor, isElectrode = false } = input;
  const policies = policySets[system];
  if (isElectrode && !isAlwaysWire(code, facts.role)) {
    const { basis } = policies.byEdition[code.year];
    const citation = system === "separately-derived" ? basis.rule : structuralMetalGrounded[code.year];
    return notRequired(facts, code, conductor.material, "part-is-the-electrode", citation);
  }
  return finish(code, (under) => decideBySupply({ facts, policies }, { code: under, supply, conductor }));
}

const policySets: Readonly<Record<StructuralMetalBondingJumperInput["system"], PolicySet>> = {
  service: structuralMetalServicePolicies,
  building: structuralMetalServicePolicies,
  "separately-derived": structuralMetalDerivedPolicies,
};
