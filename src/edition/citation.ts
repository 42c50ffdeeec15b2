import { type Evidence, weakestEvidence } from "./evidence.js";

/**
 * What is known of a cited place: one of the levels, or `vouched` for the citation of an amendment. Whoever wrote the amendment
 * is responsible for it and the library has not read it, so that it neither raises nor lowers the evidence of a result.
 */
export type CitedEvidence = Evidence | "vouched";

/** A place in the edition or in an amendment that a result names, and how surely its wording or value is known. */
export interface Citation {
  /** Section, table or note, for example `Table 250.102(C)(1) note 1`. */
  readonly section: string;
  /** How sure the library is of what stands there in this edition. */
  readonly evidence: CitedEvidence;
}

/** Citations without those that say the same as an earlier one. */
export function distinctCitations(all: readonly Citation[]): readonly Citation[] {
  return all.filter(
    ({ section, evidence }, i) =>
      all.findIndex((other) => other.section === section && other.evidence === evidence) === i,
  );
}

/** A row in which an amendment has put another size. Where the row starts and ends is still known as surely as the table is. */
export function citeAsAmended({ section, evidence }: Citation, by: string | undefined): Citation {
  return { section: by === undefined ? section : `${section} as amended by ${by}`, evidence };
}

/** A citation of what no text gives: taken over from the place that is named, it is known from memory at best. */
export function inferred({ section, evidence }: Citation): Citation {
  return { section, evidence: evidence === "vouched" ? evidence : "memory" };
}

/** A citation as sure as the weakest of itself and what it rests on besides. */
export function restingOn({ section, evidence }: Citation, others: readonly Citation[]): Citation {
  if (evidence === "vouched") return { section, evidence };
  return { section, evidence: weakestEvidence([evidence, ...others.map((other) => other.evidence)]) };
}
