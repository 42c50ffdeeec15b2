import { useResult } from "../input/given-result.js";
import type { DrawingComparison } from "../installation/drawing-comparison.js";
import { drawingComparisonMarks } from "../installation/drawing-comparison.js";
import { variantWords, whyPhrases } from "./drawing-comparison-words.js";

/** One conductor in one column of a comparison as a flat row. */
export interface ComparisonRow {
  readonly id: string;
  readonly role: string;
  readonly purpose: string;
  readonly alternative: string | null;
  /** The key of the column, and what it is. */
  readonly column: string;
  readonly what: string;
  readonly edition: string;
  readonly refused: boolean;
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
}

/**
 * Turns a comparison of whole drawings into flat rows, one for each conductor in each column, for CSV or a data frame.
 *
 * @param comparison - what {@link compareDrawing} gives
 * @returns rows with the same columns each; areas in circular mils
 * @throws {@link InputError} for anything but what compareDrawing gives
 *
 * @example
 * ```ts
 * import { compareDrawing, comparisonRows } from "bondmil";
 * const comparison = compareDrawing({
 *   by: "edition",
 *   years: ["2008", "2011"],
 *   drawing: {
 *     format: 1,
 *     title: "Pump house",
 *     code: { year: "2020" },
 *     materials: {
 *       bondingJumpers: "copper",
 *       groundedConductors: "copper",
 *       electrodeConductors: "copper",
 *       equipmentGrounding: "aluminum",
 *     },
 *     existing: [{ id: "P1" }],
 *     circuits: [{ id: "C1", from: "P1", to: "pump", device: { amperes: 4000 }, wiring: "raceway" }],
 *   },
 * });
 * comparisonRows(comparison).map(({ column, size, effect }) => [column, size, effect]);
 * // => [["2008", "800 kcmil", "first"], ["2011", "750 kcmil", "smaller"]]
 * ```
 */
export function comparisonRows(comparison: DrawingComparison): readonly ComparisonRow[] {
  return useResult(comparison, "compareDrawing", drawingComparisonMarks, rowsOf);
}

function rowsOf({ variants, conductors }: DrawingComparison): readonly ComparisonRow[] {
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
          quantity: conductor?.quantity ?? 0,
          size: outcome?.kind === "conductor" ? outcome.size : null,
          material: conductor?.result.material ?? null,
          requiredArea: conductor?.result.requiredArea ?? null,
          effect,
          why: whyPhrases(entry).join("; "),
          section: conductor?.result.citation.section ?? null,
          evidence: conductor?.result.evidence ?? null,
        },
      ];
    }),
  );
}
