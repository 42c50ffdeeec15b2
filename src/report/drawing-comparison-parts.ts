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
import type { Part } from "./parts.js";
import { violationSentence } from "./violation-words.js";
import { cautionWords, standingCautions } from "./words.js";

/** A comparison as the parts of a page: columns with their totals of metal, every conductor in every column, reasons, new cautions. */
export function partsOfComparison(comparison: DrawingComparison): readonly Part[] {
  const { title, by, variants, conductors } = comparison;
  const violations = variants.flatMap(violationsOf);
  const cautions = variants.flatMap(cautionsOf);
  return [
    { kind: "title", text: `${title}: ${comparedWords[by]} side by side` },
    ...(violations.length === 0
      ? []
      : ([
          { kind: "heading", text: "Not permitted" },
          { kind: "list", lines: violations },
        ] as const)),
    {
      kind: "table",
      head: ["column", "what", "metal in all", "fingerprint"],
      rows: variants.map(columnCells),
    },
    {
      kind: "table",
      head: ["conductor", ...variants.map(({ key }) => key)],
      rows: conductors.map((one) => [
        conductorName(one),
        ...variants.map((variant, i) => {
          const entry = one.entries[i];
          return entry === undefined ? "" : entryWords(entry, variant);
        }),
      ]),
    },
    { kind: "text", text: markWords(comparison) },
    ...reasonsIn(comparison).flatMap(({ name, key, phrases }): Part[] => [
      { kind: "text", text: `${name}, ${key}` },
      { kind: "list", lines: phrases },
    ]),
    ...(cautions.length === 0
      ? []
      : ([
          { kind: "heading", text: "New cautions" },
          { kind: "list", lines: cautions },
        ] as const)),
    { kind: "lines", lines: standingCautions },
  ];
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
    return `${variant.key}, ${at}: ${cautionWords[code]}${where}`;
  });
}

function violationsOf(variant: DrawingVariant): readonly string[] {
  if (variant.refused !== undefined) return [];
  return variant.newViolations.map((one) => `${variant.key}, ${violationSentence(one)}`);
}
