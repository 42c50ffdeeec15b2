import type { Material } from "../conductor/index.js";
import { type Citation, type EditionYear, type Role, roleFacts, weakestEvidence } from "../edition/index.js";
import { conductorSizes } from "../edition/tables/sections.generated.js";
import type { Governing, Step } from "../sizing/index.js";
import { standardSizeStep } from "../sizing/size-by-supply.js";
import type { Caution } from "./caution.js";
import type { ConductorForm, Outcome, ReadingUsed, SizingResult } from "./result.js";

/** A required area with its steps, ready to become a result. */
export interface Decided {
  readonly role: Role;
  readonly year: EditionYear;
  readonly material: Material;
  /** A wire unless told. */
  readonly form?: ConductorForm;
  readonly steps: readonly Step[];
  readonly governs: Governing;
  readonly requiredArea: number;
  /** The rule that sends the role to its table or size. */
  readonly citation: Citation;
  readonly readings?: readonly ReadingUsed[];
  readonly cautions?: readonly Caution[];
}

/** Turns a required area into a result: standard size, name, evidence. */
export function finish(decided: Decided): SizingResult {
  const {
    role,
    year,
    material,
    form = "wire",
    governs,
    requiredArea,
    citation,
    readings = [],
    cautions = [],
  } = decided;
  const standard = form === "wire" ? standardSizeStep(requiredArea, conductorSizes[year]) : null;
  const steps = standard === null ? decided.steps : [...decided.steps, standard];
  const tooLarge = form === "wire" && standard === null;
  const outcome: Outcome =
    standard === null
      ? { kind: "area-only", requiredArea, why: tooLarge ? "above-largest-standard-size" : "bus" }
      : { kind: "conductor", size: standard.size, quantity: 1 };
  return {
    ...headOf(role, year),
    material,
    form,
    outcome,
    requiredArea,
    governs,
    steps,
    citation,
    readings,
    evidence: weakestEvidence([citation, ...steps.flatMap(citationsOf)].map((one) => one.evidence)),
    cautions: tooLarge
      ? [...cautions, { code: "above-largest-standard-size", section: conductorSizes[year].section }]
      : cautions,
  };
}

/** Every place that a step rests on; an assumed conductor rests on its ampacities too. */
function citationsOf(step: Step): readonly Citation[] {
  const conductors = step.kind === "assumed" ? step.conductors.map(({ citation }) => citation) : [];
  return [step.citation, ...conductors];
}

function headOf(role: Role, year: EditionYear): Pick<SizingResult, "role" | "purpose" | "edition" | "name"> {
  return { role, purpose: roleFacts[role].purpose, edition: year, name: roleFacts[role].name[year] };
}
