import type { StandardSize } from "../conductor/index.js";
import type { EditionYear, Evidence } from "../edition/index.js";
import type { SizingResult } from "../rules/result.js";
import type { Governing } from "../sizing/index.js";
import type { Answer } from "./ask.js";

/** What a row of a sweep says of one sized conductor. */
export interface Swept {
  /** `refused` where the edition does not take the input. */
  readonly outcome: "conductor" | "area-only" | "not-required" | "refused";
  /** Circular mils, before the step to a standard size; `null` where refused. */
  readonly requiredArea: number | null;
  /** `null` where there is no standard size. */
  readonly size: StandardSize | null;
  /** The step that decided; `null` where none did. */
  readonly governs: Governing | null;
  /** Where the step that governs stands; else the rule. */
  readonly section: string | null;
  /** How sure it is; `null` where refused. */
  readonly evidence: Evidence | null;
  /** Codes of the issues where refused. */
  readonly refused: string | null;
}

/** What every row of a sweep begins with. */
export interface SweptEdition {
  /** Edition of NFPA 70, by its year. */
  readonly edition: EditionYear;
}

/** The columns of one result. */
export function sweptOf({ result, refused }: Answer<SizingResult>): Swept {
  if (result === undefined) {
    const codes = (refused ?? []).map(({ code }) => code).join(" ");
    const none = { requiredArea: null, size: null, governs: null, section: null, evidence: null };
    return { outcome: "refused", ...none, refused: codes };
  }
  const { outcome, requiredArea, governs, steps, citation, evidence } = result;
  const deciding = steps.find(
    (step) => step.kind === governs && "requiredArea" in step && step.requiredArea === requiredArea,
  );
  return {
    outcome: outcome.kind,
    requiredArea,
    size: outcome.kind === "conductor" ? outcome.size : null,
    governs,
    section: (deciding ?? { citation }).citation.section,
    evidence,
    refused: null,
  };
}
