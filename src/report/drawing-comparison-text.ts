import { useResult } from "../input/given-result.js";
import { member, readAll, readBetween } from "../input/reader.js";
import type { DrawingComparison, DrawingVariant } from "../installation/drawing-comparison.js";
import { drawingComparisonMarks } from "../installation/drawing-comparison.js";
import { formatArea } from "../units/area.js";
import {
  comparedWords,
  conductorName,
  entryWords,
  markWords,
  reasonsIn,
  variantWords,
} from "./drawing-comparison-words.js";
import { textTable, wrapped } from "./text-table.js";
import { violationSentence } from "./violation-words.js";
import { cautionWords, standingCautions } from "./words.js";

const usualWidth = 120;
const leastWidth = 20;
const mostWidth = 10_000;

/**
 * Writes a comparison of whole drawings as plain text: what each column is with its total of metal, the conductors that differ as a
 * table, the reasons, new cautions, and the conductors that are the same everywhere. Columns that do not fit the width follow below.
 *
 * @param comparison - what {@link compareDrawing} gives
 * @param width - letters in a line, from 20 to 10,000; 120 unless told
 * @returns lines of text
 * @throws {@link InputError} for anything but what compareDrawing gives
 *
 * @example
 * ```ts
 * import { compareDrawing, writeComparison } from "bondmil";
 * const comparison = compareDrawing({
 *   by: "edition",
 *   years: ["2017", "2020"],
 *   drawing: {
 *     format: 1,
 *     title: "Pump house",
 *     code: { year: "2020" },
 *     materials: {
 *       bondingJumpers: "copper",
 *       groundedConductors: "copper",
 *       electrodeConductors: "copper",
 *       equipmentGrounding: "copper",
 *     },
 *     existing: [{ id: "P1" }],
 *     circuits: [{ id: "C1", from: "P1", to: "pump", device: { amperes: 100 }, wiring: "raceway" }],
 *   },
 * });
 * writeComparison(comparison).split("\n").slice(0, 1); // => ["Pump house: editions side by side"]
 * ```
 */
export function writeComparison(comparison: DrawingComparison, width = usualWidth): string {
  const letters = readAll({ width }, (at) =>
    readBetween(member(at, "width"), "letters", leastWidth, mostWidth),
  );
  return useResult(comparison, "compareDrawing", drawingComparisonMarks, (given) =>
    comparisonText(given, letters),
  );
}

function comparisonText(comparison: DrawingComparison, width = usualWidth): string {
  const { title, by, variants, conductors } = comparison;
  const differing = conductors.filter(({ differs }) => differs);
  const alike = conductors.filter(({ differs }) => !differs);
  const heading = `${title}: ${comparedWords[by]} side by side`;
  return [
    heading,
    "=".repeat(heading.length),
    "",
    ...variants.flatMap((one) => columnLines(one, width)),
    ...violationLines(variants, width),
    ...section("What differs"),
    ...(differing.length === 0
      ? [variants.length === 1 ? nothingBeside[by] : "No conductor differs in size, number or material."]
      : [
          ...textTable(
            ["conductor", ...variants.map(({ key }) => key)],
            differing.map((one) => [
              conductorName(one),
              ...variants.map((variant, i) => {
                const entry = one.entries[i];
                return entry === undefined ? "" : entryWords(entry, variant);
              }),
            ]),
            width,
          ),
          "",
          ...wrapped(markWords(comparison), width),
        ]),
    ...reasonLines(comparison, width),
    ...cautionLines(variants, width),
    ...(alike.length === 0 ? [] : section("The same in every column")),
    ...alike.flatMap((one) => {
      const i = variants.findIndex(({ refused }) => refused === undefined);
      const [entry, variant] = [one.entries[i], variants[i]];
      const size = entry && variant ? `: ${entryWords({ ...entry, effect: "same" }, variant)}` : "";
      return hanging(`- ${conductorName(one)}${size}`, "  ", width);
    }),
    "",
    ...standingCautions.flatMap((one) => wrapped(one, width)),
  ].join("\n");
}

/** Said where there is one column only. */
const nothingBeside: Readonly<Record<DrawingComparison["by"], string>> = {
  edition: "One edition alone differs from nothing.",
  amendment: "Nothing is amended.",
  reading: "No open reading has a say in this schedule.",
  arrangement: "This drawing has no other arrangement.",
};

function columnLines(variant: DrawingVariant, width: number): readonly string[] {
  const { key, change } = variant;
  const head = `${key}: ${variantWords(change)}`;
  if (variant.refused === undefined) {
    const { totalArea, fingerprint } = variant;
    return hanging(
      `${head}; ${formatArea(totalArea)} of metal in all; fingerprint ${fingerprint}`,
      "    ",
      width,
    );
  }
  const issues = variant.refused.map(({ path, message }) => `${path === "" ? "" : `${path}: `}${message}`);
  return [
    ...hanging(`${head}; refused`, "    ", width),
    ...issues.flatMap((one) => hanging(`  - ${one}`, "    ", width)),
  ];
}

function reasonLines(comparison: DrawingComparison, width: number): readonly string[] {
  const reasons = reasonsIn(comparison);
  if (reasons.length === 0) return [];
  return [
    ...section("Why"),
    ...reasons.flatMap(({ name, key, phrases }) => [
      ...hanging(`${name}, ${key}`, "  ", width),
      ...phrases.flatMap((one) => hanging(`  - ${one}`, "    ", width)),
    ]),
  ];
}

function cautionLines(variants: readonly DrawingVariant[], width: number): readonly string[] {
  const lines = variants.flatMap(({ key, ...rest }) =>
    rest.refused === undefined
      ? rest.newCautions.map(
          ({ code, section: where, at }) =>
            `- ${key}, ${at}: ${cautionWords[code]}${where === null ? "" : ` [${where}]`}`,
        )
      : [],
  );
  if (lines.length === 0) return [];
  return [...section("New cautions"), ...lines.flatMap((one) => hanging(one, "  ", width))];
}

function violationLines(variants: readonly DrawingVariant[], width: number): readonly string[] {
  const lines = variants.flatMap(({ key, ...rest }) =>
    rest.refused === undefined ? rest.newViolations.map((one) => `- ${key}, ${violationSentence(one)}`) : [],
  );
  if (lines.length === 0) return [];
  return [...section("Not permitted"), ...lines.flatMap((one) => hanging(one, "  ", width))];
}

function section(heading: string): readonly string[] {
  return ["", heading, "-".repeat(heading.length)];
}

/** Lines of which all but the first are set in. */
function hanging(text: string, indent: string, width: number): readonly string[] {
  const lead = /^ */.exec(text)?.[0] ?? "";
  const [first = "", ...rest] = wrapped(text.trimStart(), width - indent.length);
  return [`${lead}${first}`, ...rest.map((line) => `${indent}${line}`)];
}
