import type { InstallationComparison } from "../installation/installation-comparison.js";
import { codedCautions, codedViolations } from "./words/coded.js";
import { variantWords, whyPhrases } from "./words/variant-words.js";

/** One conductor in one column of a comparison as a flat row. */
type ComparisonRow = {
  readonly id: string;
  readonly role: string;
  readonly purpose: string;
  readonly alternative: string | null;
  /** The key of the column, and what it is. */
  readonly column: string;
  readonly what: string;
  readonly edition: string;
  readonly refused: boolean;
  /** What is forbidden or missing in the column, as code, section and places, with semicolons between. */
  readonly notPermitted: string;
  /** Cautions that the column it is held against has not, as code, section and place, with semicolons between. */
  readonly newCautions: string;
  /** 0 where none is required or drawn. */
  readonly quantity: number;
  readonly size: string | null;
  readonly material: string | null;
  /** Circular mils of one conductor. */
  readonly requiredArea: number | null;
  readonly effect: string;
  /** Reasons, where the area is another. */
  readonly why: string;
  readonly section: string | null;
  readonly evidence: string | null;
  /** Codes, with spaces between. */
  readonly cautions: string;
};

/** A comparison of whole installations as flat rows, one for each conductor in each column; areas in circular mils. */
export function rowsOfComparison({ variants, conductors }: InstallationComparison): readonly ComparisonRow[] {
  return conductors.flatMap(({ id, role, purpose, alternative, entries }) =>
    entries.flatMap((entry, i) => {
      const variant = variants[i];
      if (variant === undefined) return [];
      const { conductor, effect } = entry;
      const outcome = conductor?.result.outcome;
      return [
        {
          id,
          role,
          purpose,
          alternative: alternative ?? null,
          column: variant.key,
          what: variantWords(variant.change),
          edition: variant.edition,
          refused: variant.refused !== undefined,
          notPermitted: variant.refused === undefined ? codedViolations(variant.violations) : "",
          newCautions: variant.refused === undefined ? codedCautions(variant.newCautions) : "",
          quantity: conductor?.quantity ?? 0,
          size: outcome?.kind === "conductor" ? outcome.size : null,
          material: conductor?.result.material ?? null,
          requiredArea: conductor?.result.requiredArea ?? null,
          effect,
          why: whyPhrases(entry).join("; "),
          section: conductor?.result.citation.section ?? null,
          evidence: conductor?.result.evidence ?? null,
          cautions: (conductor?.result.cautions ?? []).map(({ code }) => code).join(" "),
        },
      ];
    }),
  );
}
