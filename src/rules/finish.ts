import type { Material } from "../conductor/index.js";
import { type Citation, type Code, type Role, type RoleFacts, weakestEvidence } from "../edition/index.js";
import { conductorSizes } from "../edition/tables/sections.generated.js";
import type { Step } from "../sizing/index.js";
import { standardSizeStep } from "../sizing/size-by-supply.js";
import { areaUnder, idleCautions, withAmendments } from "./amendment-cautions.js";
import type { Caution } from "./caution.js";
import type { Decided } from "./decided.js";
import { readingsUsed } from "./readings-used.js";
import type { NotRequiredReason, NotRequiredResult, SizedResult } from "./result.js";

/** Turns what is decided under a code into a result: amendments, open readings, standard size, name, evidence. */
export function finish<Id extends Role>(
  code: Code,
  decideUnder: (code: Code) => Decided<Id>,
): SizedResult<Id> {
  const decided = withAmendments(code, decideUnder);
  const {
    facts,
    material,
    form = "wire",
    governs,
    requiredArea,
    citation,
    policies,
    cautions = [],
  } = decided;
  const { year } = code;
  const standard = form === "wire" ? standardSizeStep(requiredArea, conductorSizes[year]) : null;
  const steps = standard === null ? decided.steps : [...decided.steps, standard];
  const tooLarge = form === "wire" && standard === null;
  const { role, purpose, name } = facts;
  const outcome: SizedResult["outcome"] =
    standard === null
      ? { kind: "area-only", requiredArea, why: tooLarge ? "above-largest-standard-size" : "bus" }
      : { kind: "conductor", size: standard.size, quantity: decided.quantity ?? 1 };
  return {
    role,
    purpose,
    edition: year,
    name: name[year],
    material,
    form,
    outcome,
    requiredArea,
    governs,
    steps,
    citation,
    readings:
      policies === undefined
        ? []
        : readingsUsed(code, policies, requiredArea, (other) => areaUnder(other, decideUnder)),
    evidence: weakestEvidence([citation, ...steps.flatMap(citationsOf)].map((one) => one.evidence)),
    cautions: tooLarge
      ? [...cautions, { code: "above-largest-standard-size", section: conductorSizes[year].section }]
      : cautions,
  };
}

/** A result that says why no conductor is required. */
export function notRequired<Id extends Role>(
  { role, purpose, name }: RoleFacts<Id>,
  code: Code,
  material: Material,
  why: NotRequiredReason,
  citation: Citation,
  cautions: readonly Caution[] = [],
): NotRequiredResult<Id> {
  return {
    role,
    purpose,
    edition: code.year,
    name: name[code.year],
    material,
    form: "wire",
    outcome: { kind: "not-required", why, citation },
    requiredArea: 0,
    governs: null,
    steps: [],
    citation,
    readings: [],
    evidence: weakestEvidence([citation.evidence]),
    cautions: [...cautions, ...idleCautions({ code, role, material })],
  };
}

/** Every place that a step rests on; an assumed conductor rests on its ampacities too. */
function citationsOf(step: Step): readonly Citation[] {
  const conductors = step.kind === "assumed" ? step.conductors.map(({ citation }) => citation) : [];
  return [step.citation, ...conductors];
}
