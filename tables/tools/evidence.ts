import namedSizesFile from "../evidence/named-sizes.json" with { type: "json" };
import placementsFile from "../evidence/placements.json" with { type: "json" };
import policiesFile from "../evidence/policies.json" with { type: "json" };
import ratingPoliciesFile from "../evidence/rating-policies.json" with { type: "json" };
import sectionsFile from "../evidence/sections.json" with { type: "json" };
import type { EvidenceByPart, EvidenceFile } from "./generator/model.js";

/**
 * How sure the wording is behind the policies, the sections, the facts of placement and the sizes that sections name, and through which
 * sources, by name and edition; for policies also by part. Computed from what was read (`bondmil/tables/extracts.csv`), as in
 * `tables/evidence/`. How sure the cells of a table are is in `bondmil/tables/evidence.csv`.
 *
 * @example
 * ```ts
 * import { evidence } from "bondmil/tables";
 * evidence.policies.evidence["main-bonding-jumper"]?.["2020"]["cap"]?.level; // => "single"
 * evidence.sections.evidence["conductor-sizes"]?.["2017"].level; // => "single"
 * ```
 */
export const evidence: {
  /** Of the policies by supply. */
  readonly policies: EvidenceFile<EvidenceByPart>;
  /** Of the policies by rating. */
  readonly ratingPolicies: EvidenceFile<EvidenceByPart>;
  /** Of the sections. */
  readonly sections: EvidenceFile;
  /** Of the facts of placement. */
  readonly placements: EvidenceFile;
  /** Of the sizes that sections name. */
  readonly namedSizes: EvidenceFile;
} = {
  policies: policiesFile as unknown as EvidenceFile<EvidenceByPart>,
  ratingPolicies: ratingPoliciesFile as unknown as EvidenceFile<EvidenceByPart>,
  sections: sectionsFile as unknown as EvidenceFile,
  placements: placementsFile as unknown as EvidenceFile,
  namedSizes: namedSizesFile as unknown as EvidenceFile,
};
