import { type Citation, type Code, chosenReading, type PolicySet } from "../../edition/index.js";
import { commonConductorOfDerivedSystems } from "../../edition/tables/named-sizes.generated.js";
import {
  commonConductorForFeeders,
  commonDerivedExceptionExists,
} from "../../edition/tables/placements.generated.js";
import {
  groundingElectrodeConductorBuildingPolicies,
  groundingElectrodeConductorCommonFromDropPolicies,
  groundingElectrodeConductorCommonPolicies,
  groundingElectrodeConductorDerivedPolicies,
  groundingElectrodeConductorServicePolicies,
} from "../../edition/tables/policies.generated.js";
import { groundingElectrodeConductorFacts } from "../../edition/tables/roles.generated.js";
import {
  branchCircuitRating,
  buildingOnBranchCircuit,
  commonDerivedException,
  controlTransformerElectrode,
  controlTransformerTap,
  impedanceElectrode,
  serviceElectrodeSeveralEnclosures,
  serviceUngroundedElectrode,
  ungroundedDerivedElectrode,
} from "../../edition/tables/sections.generated.js";
import { isAlwaysWire } from "../../rules/amendment-effects.js";
import { decideBySupply } from "../../rules/by-supply.js";
import type { Caution } from "../../rules/caution.js";
import type { Decided } from "../../rules/decided.js";
import { electrodeCap, electrodeCautions } from "../../rules/electrode.js";
import { finish, notRequired } from "../../rules/finish.js";
import type { NotRequiredResult, SizedResult } from "../../rules/result.js";
import { carriesMoreThan, mostSharedBranchCircuitAmperes } from "../../rules/small-supplies.js";
import type { CapStep } from "../../sizing/index.js";
import type { ElectrodeConductorOfSupply } from "./input.js";

type Id = "grounding-electrode-conductor";

const facts = groundingElectrodeConductorFacts;

/** Sizes a grounding electrode conductor from the ungrounded conductors, or says why none is required. */
export function ofSupply(input: ElectrodeConductorOfSupply): SizedResult<Id> | NotRequiredResult<Id> {
  const { code, conductor, part = "only" } = input;
  const { material } = conductor;
  if (input.controlTransformer === true && !isAlwaysWire(code, facts.role)) {
    const { [code.year]: citation } = part === "tap" ? controlTransformerTap : controlTransformerElectrode;
    return notRequired(facts, code, material, "control-transformer", citation);
  }
  if (input.onSingleBranchCircuit === true) {
    const citation = buildingOnBranchCircuit[code.year];
    const isLarge = carriesMoreThan(input.supply, mostSharedBranchCircuitAmperes, code.year);
    const { section } = branchCircuitRating[code.year];
    const cautions = isLarge ? [{ code: "larger-than-shared-branch-circuit", section } as const] : [];
    return notRequired(facts, code, material, "building-on-one-branch-circuit", citation, cautions);
  }
  return finish(code, (under) => decideUnder(under, input));
}

type Drawn = Omit<ElectrodeConductorOfSupply, "code">;

function decideUnder(code: Code, drawn: Drawn): Decided<Id> {
  const { supply, conductor } = drawn;
  const cap = capFor(code, drawn);
  const caps = cap === null ? [] : [cap];
  const rule = {
    facts,
    policies: policiesFor(drawn),
    caps,
    citation: ruleOf(code, drawn),
    cautions: () => cautionsFor(code, drawn),
  };
  return decideBySupply(rule, { code, supply, conductor });
}

function policiesFor({ system, part, fromDrop = false }: Drawn): PolicySet {
  if (part !== "common") return policySets[system];
  return fromDrop
    ? groundingElectrodeConductorCommonFromDropPolicies
    : groundingElectrodeConductorCommonPolicies;
}

const policySets: Readonly<Record<ElectrodeConductorOfSupply["system"], PolicySet>> = {
  service: groundingElectrodeConductorServicePolicies,
  "separately-derived": groundingElectrodeConductorDerivedPolicies,
  building: groundingElectrodeConductorBuildingPolicies,
};

/** The size for the electrodes, where it limits this conductor. A tap of a derived system has a sentence of its own since 2020. */
function capFor(code: Code, { system, part = "only", electrodes, conductor }: Drawn): CapStep | null {
  const cap = electrodeCap(code, facts.role, electrodes, conductor.material);
  if (cap === null || part === "only") return cap;
  if (system === "separately-derived" && commonDerivedExceptionExists[code.year])
    return { ...cap, citation: commonDerivedException[code.year] };
  return chosenReading(code, "electrode-ceiling-on-common-conductor") === "applies" ? cap : null;
}

/** The rule of a tap and of an ungrounded system, which have another than that of their policies. */
function ruleOf({ year }: Code, { system, part, ungrounded, impedance }: Drawn): Citation | null {
  if (part === "tap")
    return system === "separately-derived"
      ? commonConductorOfDerivedSystems[year].citation
      : groundingElectrodeConductorCommonPolicies.byEdition[year].basis.rule;
  if (part !== "common" && impedance === true && system !== "building") return impedanceElectrode[year];
  if (part === "common" || ungrounded !== true) return null;
  if (system === "building") return null;
  return system === "service" ? serviceUngroundedElectrode[year] : ungroundedDerivedElectrode[year];
}

function cautionsFor(
  code: Code,
  { system, part = "only", electrodes, conductor }: Drawn,
): readonly Caution[] {
  const servicesOnly = system === "building" && part !== "only" && !commonConductorForFeeders[code.year];
  const { section } = serviceElectrodeSeveralEnclosures[code.year];
  return [
    ...electrodeCautions(code, facts.role, electrodes, conductor.material),
    ...(servicesOnly ? [{ code: "common-conductor-of-services-only", section } as const] : []),
  ];
}
