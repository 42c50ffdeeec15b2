import type { Evidence } from "../../src/edition/evidence.js";
import namedSizesFile from "../evidence/named-sizes.json" with { type: "json" };
import policiesFile from "../evidence/policies.json" with { type: "json" };
import ratingPoliciesFile from "../evidence/rating-policies.json" with { type: "json" };
import sectionsFile from "../evidence/sections.json" with { type: "json" };
import type { EvidenceByPart, EvidenceFile, SectionEvidenceFile } from "./generator/model.js";

/**
 * How sure the wording is behind the policies, the sections and the sizes that sections name, by name and edition; for policies also by
 * part, with sources and remarks. As in `tables/evidence/`. How sure the cells of a table are is in `bondmil/tables/evidence.csv`.
 *
 * @example
 * ```ts
 * import { evidence } from "bondmil/tables";
 * evidence.policies.evidence["main-bonding-jumper"]?.["2020"].parts; // => { row: "bracketed", sum: "bracketed" }
 * evidence.sections.evidence["conductor-sizes"]?.["2017"]; // => "confirmed"
 * ```
 */
export const evidence: {
  /** Of the policies by supply. */
  readonly policies: EvidenceFile<EvidenceByPart>;
  /** Of the policies by rating. */
  readonly ratingPolicies: EvidenceFile<EvidenceByPart>;
  /** Of the sections. */
  readonly sections: SectionEvidenceFile;
  /** Of the sizes that sections name. */
  readonly namedSizes: EvidenceFile<Evidence>;
} = {
  policies: policiesFile as unknown as EvidenceFile<EvidenceByPart>,
  ratingPolicies: ratingPoliciesFile as unknown as EvidenceFile<EvidenceByPart>,
  sections: sectionsFile as unknown as SectionEvidenceFile,
  namedSizes: namedSizesFile as unknown as EvidenceFile<Evidence>,
};
