import type { Citation, Evidence } from "../../edition/index.js";
import type { Caution } from "../../rules/caution.js";
import type { SizingResult } from "../../rules/result.js";
import type { DocumentFact } from "../document.js";
import { evidenceWords } from "../words/evidence-words.js";

/** The weakest evidence of a result, for the title block. */
export function evidenceFact(evidence: Evidence): DocumentFact {
  return { name: "Weakest evidence", text: evidenceWords(evidence) };
}

/** The amendments that act in results, for the title block: by the citations that they vouch for, and by the cautions on others. */
export function amendedFact(
  citations: readonly Citation[],
  cautions: readonly Caution[],
): readonly DocumentFact[] {
  const sections = [
    ...citations.flatMap(({ section, evidence }) => (evidence === "vouched" ? [section] : [])),
    ...cautions.flatMap(({ code, section }) => (code === "amended" && section !== null ? [section] : [])),
  ];
  const text = [...new Set(sections)].join("; ");
  return text === "" ? [] : [{ name: "Amendments", text }];
}

/** Every citation of a sized conductor. */
export function citationsOf({ steps, citation }: SizingResult): readonly Citation[] {
  return [...steps.map((step) => step.citation), citation];
}
