import { areaOf, columnOf } from "../../conductor/index.js";
import type { Code } from "../../edition/index.js";
import { commonConductorOfDerivedSystems } from "../../edition/tables/named-sizes.generated.js";
import { commonDerivedExceptionExists } from "../../edition/tables/placements.generated.js";
import { groundingElectrodeConductorDerivedPolicies } from "../../edition/tables/policies.generated.js";
import { groundingElectrodeConductorFacts } from "../../edition/tables/roles.generated.js";
import { commonDerivedException } from "../../edition/tables/sections.generated.js";
import type { Decided } from "../../rules/decided.js";
import { electrodeCap, electrodeCautions } from "../../rules/electrode.js";
import { finish } from "../../rules/finish.js";
import type { SizedResult } from "../../rules/result.js";
import type { CapStep, NamedSizeStep } from "../../sizing/index.js";
import { acting, limited } from "../../sizing/limits.js";
import type { CommonOfDerivedSystems } from "./input.js";

type Id = "grounding-electrode-conductor";

const facts = groundingElectrodeConductorFacts;

/**
 * Sizes the common grounding electrode conductor of several separately derived systems: a fixed 3/0 AWG copper or 250 kcmil
 * aluminum, whatever the systems (250.30(A)(6)); from 2020 not above the largest size for its electrodes, where all that are present
 * have one. The taps are sized as those of one system.
 */
export function commonOfDerivedSystems(input: CommonOfDerivedSystems): SizedResult<Id> {
  const { conductor, electrodes } = input;
  return finish(input.code, (code) => ({
    ...decide(code, input),
    policies: groundingElectrodeConductorDerivedPolicies,
    cautions: () => electrodeCautions(code, facts.role, electrodes, conductor.material),
  }));
}

function decide(code: Code, { conductor: { material }, electrodes }: CommonOfDerivedSystems): Decided<Id> {
  const { year } = code;
  const named = commonConductorOfDerivedSystems[year];
  const size = named[columnOf(material)] ?? named.copper;
  const step: NamedSizeStep = {
    kind: "named-size",
    from: "code",
    size,
    requiredArea: areaOf(size),
    citation: named.citation,
  };
  const ceiling = commonDerivedExceptionExists[year]
    ? electrodeCap(code, facts.role, electrodes, material)
    : null;
  const caps: readonly CapStep[] =
    ceiling === null ? [] : [{ ...ceiling, citation: commonDerivedException[year] }];
  return {
    facts,
    code,
    material,
    steps: [step, ...acting(caps, step.requiredArea)],
    ...limited({ requiredArea: step.requiredArea, governs: step.kind }, caps, []),
    citation: named.citation,
  };
}
