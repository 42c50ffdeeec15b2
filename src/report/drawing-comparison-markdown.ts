import type { DrawingComparison, DrawingVariant } from "../installation/drawing-comparison.js";
import { formatArea } from "../units/area.js";
import {
  comparedWords,
  conductorName,
  entryWords,
  markWords,
  reasonsIn,
  variantWords,
} from "./drawing-comparison-words.js";
import { markdownTable, plainText } from "./markdown.js";
import { cautionWords, standingCautions } from "./words.js";

/**
 * Writes a comparison of whole drawings as Markdown: the columns with their totals of metal, every conductor in every column, the
 * reasons where one is another, and new cautions. What the drawing names is escaped.
 *
 * @param comparison - what {@link compareDrawing} gives
 * @returns Markdown
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
  const { title, by, variants, conductors } = comparison;
  const cautions = variants.flatMap(cautionsOf);
  return `${[
    `# ${plainText(`${title}: ${comparedWords[by]} side by side`)}`,
    escapedTable(["column", "what", "metal in all", "fingerprint"], variants.map(columnCells)),
    escapedTable(
      ["conductor", ...variants.map(({ key }) => key)],
      conductors.map((one) => [
        conductorName(one),
        ...variants.map((variant, i) => {
          const entry = one.entries[i];
          return entry === undefined ? "" : entryWords(entry, variant);
        }),
      ]),
    ),
    plainText(markWords(comparison)),
    ...reasonsIn(comparison).flatMap(({ name, key, phrases }) => [
      `${plainText(`${name}, ${key}`)}\n\n${phrases.map((one) => `- ${plainText(one)}`).join("\n")}`,
    ]),
    ...(cautions.length === 0 ? [] : ["## New cautions", cautions.join("\n")]),
    standingCautions.map(plainText).join("\n"),
  ].join("\n\n")}\n`;
}

function columnCells(variant: DrawingVariant): readonly string[] {
  const { key, change } = variant;
  if (variant.refused === undefined) {
    return [key, variantWords(change), formatArea(variant.totalArea), variant.fingerprint];
  }
  const issues = variant.refused.map(({ path, message }) => `${path === "" ? "" : `${path}: `}${message}`);
  return [key, `${variantWords(change)}; refused: ${issues.join("; ")}`, "", ""];
}

function cautionsOf(variant: DrawingVariant): readonly string[] {
  if (variant.refused !== undefined) return [];
  return variant.newCautions.map(({ code, section, at }) => {
    const where = section === null ? "" : ` [${section}]`;
    return `- ${plainText(`${variant.key}, ${at}: ${cautionWords[code]}${where}`)}`;
  });
}

function escapedTable(head: readonly string[], rows: readonly (readonly string[])[]): string {
  return markdownTable(
    head.map(plainText),
    rows.map((cells) => cells.map(plainText)),
  );
}
