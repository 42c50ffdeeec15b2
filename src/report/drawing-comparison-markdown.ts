import { useResult } from "../input/given-result.js";
import { type DrawingComparison, drawingComparisonMarks } from "../installation/drawing-comparison.js";
import { partsOfComparison } from "./drawing-comparison-parts.js";
import { partsAsMarkdown } from "./parts.js";

/**
 * Writes a comparison of whole drawings as Markdown: the columns with their totals of metal, every conductor in every column, the
 * reasons where one is another, and new cautions. What the drawing names is escaped.
 *
 * @param comparison - what {@link compareDrawing} gives
 * @returns Markdown
 * @throws {@link InputError} for anything but what compareDrawing gives
 *
 * @example
 * ```ts
 * import { compareDrawing, writeComparisonMarkdown } from "bondmil";
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
 * writeComparisonMarkdown(comparison).split("\n").find((line) => line.includes("C1"));
 * // => "| equipment-grounding-conductor C1 | 800 kcmil Al | 750 kcmil Al - |"
 * ```
 */
export function writeComparisonMarkdown(comparison: DrawingComparison): string {
  return useResult(comparison, "compareDrawing", drawingComparisonMarks, (given) =>
    partsAsMarkdown(partsOfComparison(given)),
  );
}
