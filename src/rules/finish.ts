import type { Material } from "../conductor/index.js";
import {
  type Citation,
  type Code,
  type Evidence,
  type Role,
  type RoleFacts,
  weakerOf,
} from "../edition/index.js";
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
  const { facts, material, form = "wire", governs, requiredArea, policies } = decided;
  const cautions = decided.cautions?.() ?? [];
  const { year } = code;
  const citation = own(decided.citation);
  const standard = form === "wire" ? standardSizeStep(requiredArea, conductorSizes[year]) : null;
  const steps = standard === null ? decided.steps : [...decided.steps, standard];
  steps.forEach(giveOwnCitation);
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
    evidence: weakestOf(citation, steps),
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
  cited: Citation,
  cautions: readonly Caution[] = [],
): NotRequiredResult<Id> {
  const citation = own(cited);
  return {
    role,
    purpose,
    edition: code.year,
    name: name[code.year],
    material,
    form: "wire",
    outcome: { kind: "not-required", why, citation: own(cited) },
    requiredArea: 0,
    governs: null,
    steps: [],
    citation,
    readings: [],
    evidence: weakerOf("confirmed", citation.evidence),
    cautions: [...cautions, ...idleCautions({ code, role, material })],
  };
}

/** A citation that the caller may do with what he likes: those of the tables are the same for every result. */
function own({ section, evidence }: Citation): Citation {
  return { section, evidence };
}

/** The steps were made for this result alone, so that this can be done in place. */
function giveOwnCitation(step: { citation: Citation }): void {
  step.citation = own(step.citation);
}

/** The weakest of all that a result rests on; an assumed conductor rests on its ampacities too. */
function weakestOf(citation: Citation, steps: readonly Step[]): Evidence {
  let weakest = weakerOf("confirmed", citation.evidence);
  for (const step of steps) {
    weakest = weakerOf(weakest, step.citation.evidence);
    if (step.kind !== "assumed") continue;
    for (const one of step.conductors) weakest = weakerOf(weakest, one.citation.evidence);
  }
  return weakest;
}
