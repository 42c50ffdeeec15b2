import { useResult } from "../input/given-result.js";
import type { Check } from "../installation/check.js";
import { checkMarks } from "../installation/check.js";
import type { DrawingComparison } from "../installation/drawing-comparison.js";
import { drawingComparisonMarks } from "../installation/drawing-comparison.js";
import { partsOfCheck } from "./check-parts.js";
import { partsOfComparison } from "./drawing-comparison-parts.js";
import { partsAsHtml } from "./parts-html.js";

/**
 * Writes a check of installed conductors as one HTML file that loads nothing, in the styles of the report. What the drawing names is
 * escaped.
 *
 * @param check - what {@link checkInstalled} gives
 * @returns the text of the file
 * @throws {@link InputError} for anything but what checkInstalled gives
 *
 * @example
 * ```ts
 * import { checkAsHtml, checkInstalled } from "bondmil";
 * const check = checkInstalled({
 *   format: 1,
 *   title: "Pump house",
 *   code: { year: "2020" },
 *   materials: {
 *     bondingJumpers: "copper",
 *     groundedConductors: "copper",
 *     electrodeConductors: "copper",
 *     equipmentGrounding: "copper",
 *   },
 *   existing: [{ id: "P1" }],
 *   circuits: [{ id: "C1", from: "P1", to: "pump", device: { amperes: 100 }, wiring: "raceway" }],
 *   installed: [{ conductor: "equipment-grounding-conductor C1", size: "10 AWG", material: "copper" }],
 * });
 * checkAsHtml(check).includes("<h1>Pump house: check of installed conductors, NFPA 70-2020</h1>"); // => true
 * ```
 */
export function checkAsHtml(check: Check): string {
  return useResult(check, "checkInstalled", checkMarks, (given) => partsAsHtml(partsOfCheck(given)));
}

/**
 * Writes a comparison of whole drawings as one HTML file that loads nothing, in the styles of the report. What the drawing names is
 * escaped.
 *
 * @param comparison - what {@link compareDrawing} gives
 * @returns the text of the file
 * @throws {@link InputError} for anything but what compareDrawing gives
 *
 * @example
 * ```ts
 * import { compareDrawing, comparisonAsHtml } from "bondmil";
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
 * comparisonAsHtml(comparison).includes(">750 kcmil Al -</td>"); // => true
 * ```
 */
export function comparisonAsHtml(comparison: DrawingComparison): string {
  return useResult(comparison, "compareDrawing", drawingComparisonMarks, (given) =>
    partsAsHtml(partsOfComparison(given)),
  );
}
