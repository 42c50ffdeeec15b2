import type { EditionYear } from "../edition/index.js";
import { conductorWords } from "../installation/conductor-words.js";
import type { InstallationComparison, InstallationVariant } from "../installation/installation-comparison.js";
import { formatArea } from "../units/area.js";
import type { DocumentPart } from "./document.js";
import { type Content, listed } from "./frame.js";
import { remarksIn } from "./installation-comparison-remarks.js";
import { rowsOfComparison } from "./installation-comparison-rows.js";
import { amendedFact, citationsOf } from "./told/facts.js";
import { cautionSentence } from "./words/caution-words.js";
import { comparedWords, entryWords, markWords, reasonsIn, variantWords } from "./words/variant-words.js";
import { violationSentence } from "./words/violation-words.js";

/** A comparison of whole installations: its columns with their metal, every conductor in each column, reasons, cautions, open readings. */
export function contentOfInstallations(comparison: InstallationComparison): Content {
  const { title, by, variants, conductors } = comparison;
  const results = conductors.flatMap(({ entries }) =>
    entries.flatMap(({ conductor }) => (conductor === null ? [] : [conductor.result])),
  );
  const editions = [...new Set<EditionYear>(variants.map(({ edition }) => edition))];
  return {
    title: `${title}: ${comparedWords[by]} side by side`,
    editions,
    facts: amendedFact(
      results.flatMap(citationsOf),
      results.flatMap(({ cautions }) => cautions),
    ),
    parts: partsOf(comparison),
    rows: rowsOfComparison(comparison),
  };
}

function partsOf(comparison: InstallationComparison): readonly DocumentPart[] {
  const { variants } = comparison;
  const { cautions, readings } = remarksIn(comparison);
  return [
    ...listed("Not permitted", variants.flatMap(violationsOf)),
    { kind: "heading", level: 2, text: "Columns" },
    {
      kind: "table",
      of: "records",
      head: ["column", "what", "metal in all", "fingerprint"],
      rows: variants.map(columnCells),
    },
    ...differenceParts(comparison),
    ...whyParts(comparison),
    ...listed("The same in every column", sameIn(comparison)),
    ...listed("New cautions", variants.flatMap(newCautionsOf)),
    ...listed("Cautions", cautions),
    ...listed("Open readings", readings),
  ];
}

function differenceParts(comparison: InstallationComparison): readonly DocumentPart[] {
  const { by, variants, conductors } = comparison;
  const differing = conductors.filter(({ differs }) => differs);
  const heading = { kind: "heading", level: 2, text: "What differs" } as const;
  if (differing.length === 0) {
    return [heading, { kind: "text", text: variants.length === 1 ? nothingBeside[by] : nothingDiffers }];
  }
  return [
    heading,
    {
      kind: "table",
      of: "grid",
      head: ["conductor", ...variants.map(({ key }) => key)],
      rows: differing.map((one) => [
        conductorWords(one),
        ...variants.map((variant, i) => {
          const entry = one.entries[i];
          return entry === undefined ? "" : entryWords(entry, variant);
        }),
      ]),
    },
    { kind: "text", text: markWords(comparison) },
  ];
}

/** Conductors that do not differ, with their size in the first column that has one. */
function sameIn({ variants, conductors }: InstallationComparison): readonly string[] {
  const i = variants.findIndex(({ refused }) => refused === undefined);
  return conductors
    .filter(({ differs }) => !differs)
    .map((one) => {
      const [entry, variant] = [one.entries[i], variants[i]];
      const size = entry && variant ? `: ${entryWords({ ...entry, effect: "same" }, variant)}` : "";
      return `${conductorWords(one)}${size}`;
    });
}

const nothingDiffers = "No conductor differs in size, number or material.";

/** Said where there is one column only. */
const nothingBeside: Readonly<Record<InstallationComparison["by"], string>> = {
  edition: "One edition alone differs from nothing.",
  amendment: "Nothing is amended.",
  reading: "No open reading has a say in this schedule.",
  arrangement: "This installation has no other arrangement.",
};

function whyParts(comparison: InstallationComparison): readonly DocumentPart[] {
  const reasons = reasonsIn(comparison);
  if (reasons.length === 0) return [];
  return [
    { kind: "heading", level: 2, text: "Why" },
    ...reasons.flatMap(({ name, key, phrases }): DocumentPart[] => [
      { kind: "text", text: `${name}, ${key}` },
      { kind: "list", items: phrases },
    ]),
  ];
}

function columnCells(variant: InstallationVariant): readonly string[] {
  const { key, change } = variant;
  if (variant.refused === undefined) {
    const sections = [...new Set(variant.violations.map(({ section }) => section))];
    const forbidden = sections.length === 0 ? "" : `; not permitted [${sections.join(", ")}]`;
    const what = `${variantWords(change)}${forbidden}`;
    return [key, what, formatArea(variant.totalArea), variant.fingerprint];
  }
  const issues = variant.refused.map(({ path, message }) => `${path === "" ? "" : `${path}: `}${message}`);
  return [key, `${variantWords(change)}; refused: ${issues.join("; ")}`, "", ""];
}

function newCautionsOf(variant: InstallationVariant): readonly string[] {
  if (variant.refused !== undefined) return [];
  return variant.newCautions.map(
    ({ at, ...caution }) => `${variant.key}, ${at}: ${cautionSentence(caution)}`,
  );
}

function violationsOf(variant: InstallationVariant): readonly string[] {
  if (variant.refused !== undefined) return [];
  return variant.newViolations.map((one) => `${variant.key}, ${violationSentence(one)}`);
}
