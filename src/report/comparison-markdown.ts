import type {
  Change,
  ComparedResult,
  EditionComparison,
  EditionEntry,
  ReadingComparison,
} from "../comparison/comparison.js";
import { readingComparisonMarks } from "../comparison/comparison.js";
import { useResult } from "../input/given-result.js";
import type { Issue } from "../input/input-error.js";
import { member, readAll, readText } from "../input/reader.js";
import type { Caution } from "../rules/caution.js";
import type { ReadingUsed } from "../rules/result.js";
import type { Step } from "../sizing/index.js";
import { formatArea } from "../units/area.js";
import { changePhrase, effectWords, outcomeWords } from "./comparison-words.js";
import { sentenceOf } from "./explain.js";
import { markdownTable, plainText } from "./markdown.js";
import { cautionWords, standingCautions } from "./words.js";

/**
 * Writes a comparison of editions as Markdown: the editions in one table; from edition to edition what changed, why, and where it
 * stands; then every edition in full, with its steps, open readings and cautions.
 *
 * @param comparison - what {@link compareEditions} gives
 * @param title - heading, escaped
 * @returns Markdown
 * @throws {@link InputError} for anything but what compareEditions gives
 *
 * @example
 * ```ts
 * import { compareEditions, sizeEquipmentGroundingConductor, writeEditions } from "bondmil";
 * const editions = compareEditions({
 *   size: sizeEquipmentGroundingConductor,
 *   input: { circuits: [{ device: { amperes: 4000 } }], conductor: { material: "aluminum" } },
 *   years: ["2008", "2011"],
 * });
 * const lines = writeEditions(editions, "Riser").split("\n");
 * lines[4]; // => "| 2008 | 800 kcmil aluminum | 800,000 cmil |  | rating-row | Table 250.122 | memory |"
 * lines[11];
 * // => "- another number: the table's size for the device, 800 kcmil before, 750 kcmil now \\[Table 250.122\\] (memory / single)"
 * ```
 */
export function writeEditions(comparison: EditionComparison, title: string): string {
  const heading = readAll({ title }, (at) => readText(member(at, "title"), "the heading"));
  return useResult({ comparison }, "compareEditions", { comparison: "list" }, (given) =>
    editionsPage(given.comparison, heading),
  );
}

function editionsPage(comparison: EditionComparison, title: string): string {
  const pairs = comparison.slice(1).map((entry, i) => ({ entry, before: comparison[i] ?? entry }));
  return blocks([
    `# ${plainText(title)}`,
    markdownTable(["edition", ...columns], comparison.map(editionRow)),
    ...(pairs.length === 0 ? [] : ["## What changed"]),
    ...pairs.flatMap(({ entry, before }) => [
      `### ${before.edition} to ${entry.edition}`,
      changeList(entry.changes),
    ]),
    "## Each edition in full",
    ...comparison.flatMap((entry) => [
      `### ${entry.edition}`,
      ...(entry.result === undefined ? [issueList(entry.refused)] : inFull(entry.result)),
    ]),
    ...standingCautions.map(plainText),
  ]);
}

/**
 * Writes a comparison of readings as Markdown: the alternatives in one table, what each changes, why, and where it stands; then every
 * result in full.
 *
 * @param comparison - what {@link compareReadings} gives
 * @param title - heading, escaped
 * @returns Markdown
 * @throws {@link InputError} for anything but what compareReadings gives
 *
 * @example
 * ```ts
 * import { compareReadings, sizeMainBondingJumper, writeReadings } from "bondmil";
 * const readings = compareReadings({
 *   size: sizeMainBondingJumper,
 *   input: {
 *     code: { year: "2020" },
 *     supply: { sets: [{ count: 1, size: "10 AWG", material: "copper" }] },
 *     jumper: { material: "copper" },
 *   },
 * });
 * writeReadings(readings, "Kiosk").split("\n")[5];
 * // => "| cap-on-small-supplies | large-supplies-only | 8 AWG copper | 16,510 cmil | LARGER | row | Table 250.102(C)(1) | bracketed |"
 * ```
 */
export function writeReadings(comparison: ReadingComparison, title: string): string {
  const heading = readAll({ title }, (at) => readText(member(at, "title"), "the heading"));
  return useResult(comparison, "compareReadings", readingComparisonMarks, (given) =>
    readingsPage(given, heading),
  );
}

function readingsPage(comparison: ReadingComparison, title: string): string {
  const { edition, result, otherwise } = comparison;
  const first = ["as given", "", ...cellsOf(result, "first")];
  const rows = otherwise.map((one) => [
    plainText(one.reading),
    plainText(one.alternative),
    ...cellsOf(one.result, one.effect),
  ]);
  return blocks([
    `# ${plainText(title)}, NFPA 70-${edition}`,
    markdownTable(["reading", "read as", ...columns], [first, ...rows]),
    otherwise.length === 0 ? "No open reading has a say here." : "## What changes",
    ...otherwise.flatMap((one) => [
      `### ${plainText(one.reading)}: ${plainText(one.alternative)} instead of ${plainText(one.chosen)}`,
      changeList(one.changes),
    ]),
    "## Each result in full",
    "### As given",
    ...inFull(result),
    ...otherwise.flatMap((one) => [
      `### With ${plainText(one.reading)} as ${plainText(one.alternative)}`,
      ...inFull(one.result),
    ]),
    ...standingCautions.map(plainText),
  ]);
}

const columns = [
  "required",
  "area",
  "against the first or the one before",
  "decided by",
  "where",
  "evidence",
] as const;

function blocks(parts: readonly string[]): string {
  return `${parts.join("\n\n")}\n`;
}

function editionRow(entry: EditionEntry): readonly string[] {
  const { edition, result, effect } = entry;
  if (result !== undefined) return [edition, ...cellsOf(result, effect)];
  return [edition, "refused", "", effectWords[effect], "", "", ""];
}

function cellsOf(result: ComparedResult, effect: EditionEntry["effect"]): readonly string[] {
  const isSized = "steps" in result;
  const governs = isSized ? (result.governs ?? "") : "";
  const deciding = isSized
    ? result.steps.find(
        (step) =>
          step.kind === governs && "requiredArea" in step && step.requiredArea === result.requiredArea,
      )
    : undefined;
  return [
    outcomeWords(result),
    isSized && result.governs !== null ? formatArea(result.requiredArea) : "",
    effectWords[effect],
    governs,
    (deciding ?? result).citation.section,
    isSized ? result.evidence : result.citation.evidence,
  ].map(plainText);
}

function changeList(changes: readonly Change[]): string {
  if (changes.length === 0) return "Nothing.";
  return changes.map((change) => `- ${plainText(changePhrase(change))}`).join("\n");
}

function issueList(issues: readonly Issue[]): string {
  return issues
    .map(
      ({ code, path, message }) => `- ${plainText(`${code}${path === "" ? "" : ` at ${path}`}: ${message}`)}`,
    )
    .join("\n");
}

function inFull(result: ComparedResult): readonly string[] {
  const head =
    "steps" in result
      ? `${result.name}, ${result.role}, ${result.purpose}; ${result.material} ${result.form}; ${outcomeWords(result)}`
      : `cable tray, ${result.metal}, for ${result.amperes} A; ${outcomeWords(result)}`;
  const { section, evidence } = result.citation;
  const steps = "steps" in result ? result.steps : [];
  return [
    `${plainText(head)} \\[${plainText(section)}, ${evidence}\\]`,
    ...(steps.length === 0 ? [] : [stepTable(steps)]),
    ...listed("Open readings:", "readings" in result ? result.readings.map(readingPhrase) : []),
    ...listed("Cautions:", result.cautions.map(cautionPhrase)),
  ];
}

function stepTable(steps: readonly Step[]): string {
  const rows = steps.flatMap((step) => {
    const { section, evidence } = step.citation;
    const own = [step.kind, sentenceOf(step), section, evidence];
    const assumed = step.kind === "assumed" ? step.conductors : [];
    return [
      own,
      ...assumed.map(({ installed, citation }) => [
        "ampacity",
        `${installed.size} ${installed.material} and the conductor assumed for it`,
        citation.section,
        citation.evidence,
      ]),
    ];
  });
  return markdownTable(
    ["step", "in words", "where", "evidence"],
    rows.map((cells) => cells.map(plainText)),
  );
}

function listed(heading: string, phrases: readonly string[]): readonly string[] {
  return phrases.length === 0
    ? []
    : [`${heading}\n\n${phrases.map((one) => `- ${plainText(one)}`).join("\n")}`];
}

function readingPhrase({ id, chosen, otherwise }: ReadingUsed): string {
  const others = otherwise.map(
    ({ alternative, requiredArea }) => `${alternative} asks for ${formatArea(requiredArea)}`,
  );
  return `${id} is read as ${chosen}; ${others.join("; ")}`;
}

function cautionPhrase({ code, section }: Caution): string {
  return `${cautionWords[code]} (${code})${section === null ? "" : ` [${section}]`}`;
}
