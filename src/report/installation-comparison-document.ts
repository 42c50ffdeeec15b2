import type { EditionYear } from "../edition/index.js";
import { conductorWords } from "../installation/conductor-words.js";
import type {
  ComparedConductor,
  InstallationComparison,
  InstallationVariant,
} from "../installation/installation-comparison.js";
import type { DocumentPart } from "./document.js";
import { type Content, listed } from "./frame.js";
import { rowsOfComparison } from "./installation-comparison-rows.js";
import { remarksSideBySide } from "./remarks-side-by-side.js";
import { forbiddenBy, sameParts, verdictHead } from "./side-by-side.js";
import { amendedFact, citationsOf } from "./told/facts.js";
import { cautionSentence } from "./words/caution-words.js";
import { assumedMetalName, assumedMetalOf, assumedMetalWords, metalWords } from "./words/metal-words.js";
import { capital } from "./words/names.js";
import { readingPhrase } from "./words/reading-words.js";
import { comparedWords, entryWords, markWords, reasonsIn, variantWords } from "./words/variant-words.js";
import { violationSentence } from "./words/violation-words.js";

/** A comparison of whole installations: what differs and why, what stays the same, the columns with their metal, cautions, open readings. */
export function contentOfInstallations(comparison: InstallationComparison): Content {
  const { title, over, variants, conductors } = comparison;
  const results = conductors.flatMap(({ entries }) =>
    entries.flatMap(({ conductor }) => (conductor === null ? [] : [conductor.result])),
  );
  const editions = [...new Set<EditionYear>(variants.map(({ edition }) => edition))];
  return {
    title: `${title}: ${comparedWords[over]} side by side`,
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
  const { cautions, readings } = remarksOf(comparison);
  return [
    ...differenceParts(comparison),
    { kind: "heading", level: 2, text: "Columns" },
    {
      kind: "table",
      of: "records",
      head: ["column", "what", assumedMetalName(), "metal of known length", "fingerprint"],
      rows: variants.map((variant, i) => columnCells(variant, i, comparison)),
    },
    ...listed("Not permitted", variants.flatMap(violationsOf)),
    ...whyParts(comparison),
    ...sameParts(sameIn(comparison)),
    ...listed("New cautions", variants.flatMap(newCautionsOf)),
    ...listed("Cautions", cautions),
    ...listed("Open readings", readings),
  ];
}

function differenceParts(comparison: InstallationComparison): readonly DocumentPart[] {
  const { over, variants, conductors } = comparison;
  const differing = conductors.filter(({ differs }) => differs);
  const heading = { kind: "heading", level: 2, text: "What differs" } as const;
  if (differing.length === 0) {
    return [heading, { kind: "text", text: variants.length === 1 ? nothingBeside[over] : nothingDiffers }];
  }
  return [
    heading,
    {
      kind: "table",
      of: "grid",
      head: ["conductor", ...variants.map(columnHead)],
      rows: differing.map((one) => [
        `${conductorWords(one)}${sectionsOf(one)}`,
        ...variants.map((variant, i) => {
          const entry = one.entries[i];
          return entry === undefined ? "" : entryWords(entry, variant);
        }),
      ]),
    },
    { kind: "text", text: markWords(comparison) },
  ];
}

/** The key of a column with its verdict. */
function columnHead(variant: InstallationVariant): string {
  const { key } = variant;
  if (variant.refused !== undefined) return `${key}, refused`;
  return verdictHead(key, variant.violations);
}

/** Conductors that do not differ, each with its size in the first column that has one. */
function sameIn({ variants, conductors }: InstallationComparison): readonly string[] {
  const i = variants.findIndex(({ refused }) => refused === undefined);
  return conductors
    .filter(({ differs }) => !differs)
    .map((one) => {
      const [entry, variant] = [one.entries[i], variants[i]];
      const size = entry && variant ? `: ${entryWords({ ...entry, effect: "same" }, variant)}` : "";
      return `${conductorWords(one)}${size}${sectionsOf(one)}`;
    });
}

/** The sections of a conductor in the columns that have it, each once. */
function sectionsOf({ entries }: ComparedConductor): string {
  const cited = entries.flatMap(({ conductor }) => conductor?.result.citation.section ?? []);
  return ` [${[...new Set(cited)].join(" / ")}]`;
}

function remarksOf({ variants, conductors }: InstallationComparison) {
  const entries = conductors.flatMap((one) =>
    one.entries.map(({ conductor }, i) => ({
      name: conductorWords(one),
      key: variants[i]?.key ?? "",
      cautions: (conductor?.result.cautions ?? []).map(cautionSentence),
      readings: (conductor?.result.readings ?? []).map(({ id, chosen }) =>
        capital(`${readingPhrase(id, chosen)}.`),
      ),
    })),
  );
  return remarksSideBySide(
    entries,
    variants.map(({ key }) => key),
  );
}

const nothingDiffers = "No conductor differs in size, number or material.";

/** Said where there is one column only. */
const nothingBeside: Readonly<Record<InstallationComparison["over"], string>> = {
  editions: "One edition alone differs from nothing.",
  amendments: "Nothing is amended.",
  readings: "No open reading has a say in this schedule.",
  arrangements: "This installation has no other arrangement.",
};

function whyParts(comparison: InstallationComparison): readonly DocumentPart[] {
  const reasons = reasonsIn(comparison);
  if (reasons.length === 0) return [];
  return [
    { kind: "heading", level: 2, text: "Why" },
    ...reasons.flatMap(({ name, key, phrases }): DocumentPart[] => [
      { kind: "heading", level: 3, text: `${name}, ${key}` },
      { kind: "list", items: phrases },
    ]),
  ];
}

function columnCells(
  variant: InstallationVariant,
  place: number,
  { variants, against, conductors }: InstallationComparison,
): readonly string[] {
  const { change } = variant;
  const metalIn = (one: InstallationVariant) => {
    const i = variants.indexOf(one);
    const own = conductors.flatMap(({ entries }) => entries[i]?.conductor ?? []);
    return assumedMetalOf(own.filter(({ alternative }) => alternative === undefined));
  };
  const head = columnHead(variant);
  if (variant.refused === undefined) {
    const before = variants.slice(0, place).filter(({ refused }) => refused === undefined);
    const base = against === "before" ? before.at(-1) : before[0];
    const metal = metalWords(variant.totals);
    return [
      head,
      `${variantWords(change)}${forbiddenBy(variant.violations)}`,
      assumedMetalWords(metalIn(variant), base && metalIn(base), base?.key),
      metal === "" ? "no length is given" : metal,
      variant.fingerprint,
    ];
  }
  const issues = variant.refused.map(({ path, message }) => `${path === "" ? "" : `${path}: `}${message}`);
  return [head, `${variantWords(change)}; refused: ${issues.join("; ")}`, "", "", ""];
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
