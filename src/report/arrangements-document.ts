import { useResult } from "../input/given-result.js";
import type { Arrangement, ArrangementComparison } from "../installation/arrangements/arrangement.js";
import { arrangementMarks } from "../installation/arrangements/arrangement.js";
import { conductorWords } from "../installation/conductor-words.js";
import { type ArrangementLine, conductorLines, connectionLines } from "./arrangement-lines.js";
import { arrangementRows } from "./arrangement-rows.js";
import type { Document, DocumentFact, DocumentPart } from "./document.js";
import { type DocumentOptions, framed, listed, readOptions } from "./frame.js";
import { remarksSideBySide } from "./remarks-side-by-side.js";
import { forbiddenBy, sameParts, verdictHead } from "./side-by-side.js";
import { amendedFact, citationsOf } from "./told/facts.js";
import { tellSizing } from "./told/sizing.js";
import { arrangementNames, arrangementStatusWords } from "./words/arrangement-words.js";
import { cautionSentence } from "./words/caution-words.js";
import { assumedMetalName, assumedMetalOf, assumedMetalWords } from "./words/metal-words.js";
import { capital } from "./words/names.js";
import { purposeNames } from "./words/schedule-words.js";
import { violationSentence } from "./words/violation-words.js";

/**
 * Makes a document of arrangements side by side: what differs, with the verdict of each in the head of its column and why, then what stays
 * the same, where things are connected, the metal of each in feet and pounds, cautions and open readings.
 *
 * @param comparison - the arrangements of a service, of a separately derived system, of raceways or of electrode conductors
 * @param options - another title, who prepared it, the date
 * @returns a document for {@link render}; its rows are the conductors of each arrangement, areas in circular mils
 * @throws {@link InputError} for anything but what arrangementsOf gives, and for wrong options
 *
 * @example
 * ```ts
 * import { arrangementsDocument, arrangementsOf, mainBondingJumper, render } from "bondmil";
 * const comparison = arrangementsOf(mainBondingJumper, {
 *   code: { year: "2020" },
 *   enclosures: [{ id: "D1", supply: { sets: [{ count: 1, size: "4/0 AWG", material: "aluminum" }] } }],
 *   conductor: { material: "copper" },
 * });
 * const document = arrangementsDocument(comparison, { title: "Shop" });
 * render(document, { as: "text" }).split("\n")[8]; // => "conductor                                A jumper in each enclosure"
 * ```
 */
export function arrangementsDocument(
  comparison: ArrangementComparison,
  options: DocumentOptions = {},
): Document {
  const own = readOptions(options);
  return useResult(comparison, "arrangementsOf", arrangementMarks, (given) => {
    const { edition, arrangements } = given;
    return framed(
      {
        title: "Arrangements side by side",
        editions: [edition],
        facts: factsOf(arrangements),
        parts: partsOf(arrangements),
        rows: arrangementRows(given),
      },
      own,
    );
  });
}

function factsOf(arrangements: readonly Arrangement[]): readonly DocumentFact[] {
  const results = arrangements.flatMap(({ conductors }) => conductors.map(({ result }) => result));
  const cautions = [...arrangements, ...results].flatMap((one) => one.cautions);
  const purposes = [...new Set(results.map(({ purpose }) => purposeNames[purpose]))];
  return [
    ...amendedFact(results.flatMap(citationsOf), cautions),
    { name: "Purpose", text: purposes.join("; ") },
  ];
}

function partsOf(arrangements: readonly Arrangement[]): readonly DocumentPart[] {
  const conductors = conductorLines(arrangements);
  const connections = connectionLines(arrangements);
  const { cautions, readings } = remarksSideBySide(
    arrangements.flatMap(remarksOf),
    arrangements.map(({ id }) => arrangementNames[id]),
  );
  const isAlone = arrangements.length === 1;
  const differs = (line: ArrangementLine): boolean => isAlone || line.differs;
  const grid = (name: string, rows: readonly (readonly string[])[]): DocumentPart => ({
    kind: "table",
    of: "grid",
    head: [name, ...arrangements.map((one) => verdictHead(arrangementNames[one.id], one.violations))],
    rows,
  });
  return [
    heading(isAlone ? "The one arrangement" : "What differs"),
    grid("conductor", [
      ["section", ...arrangements.map(sectionWords)],
      ...conductors.filter(differs).map(({ name, short }) => [name, ...short]),
      [assumedMetalName(), ...metalCells(arrangements)],
    ]),
    ...listed("Not permitted", arrangements.flatMap(violationsOf)),
    heading("Why"),
    { kind: "list", items: conductors.filter(differs).flatMap(({ why }) => why) },
    ...(connections.some(differs)
      ? [
          heading("Connections"),
          grid(
            "connection",
            connections.filter(differs).map(({ name, short }) => [name, ...short]),
          ),
        ]
      : []),
    ...sameParts([...conductors, ...connections].filter((one) => !differs(one)).flatMap(({ why }) => why)),
    ...listed("Cautions", cautions),
    ...listed("Open readings", readings),
  ];
}

function sectionWords({ status, citation, violations }: Arrangement): string {
  return status === "not-permitted"
    ? `${arrangementStatusWords[status]}${forbiddenBy(violations)}`
    : `${citation.section}${arrangementStatusWords[status]}`;
}

/** Larger and smaller by the metal of the whole choice, against the first. */
function metalCells(arrangements: readonly Arrangement[]): readonly string[] {
  const [first, ...others] = arrangements.map(({ conductors }) => assumedMetalOf(conductors));
  if (first === undefined) return [];
  return [assumedMetalWords(first), ...others.map((one) => assumedMetalWords(one, first, "the first"))];
}

function violationsOf({ id, violations }: Arrangement): readonly string[] {
  return violations.map((one) => `${arrangementNames[id]}: ${violationSentence(one)}`);
}

function remarksOf({ id, conductors, cautions }: Arrangement) {
  const key = arrangementNames[id];
  return [
    ...conductors.map((one) => ({
      name: conductorWords(one),
      key,
      cautions: one.result.cautions.map(cautionSentence),
      readings: tellSizing(one.result).readings.map(capital),
    })),
    ...cautions.map(({ at, ...caution }) => ({
      name: at,
      key,
      cautions: [cautionSentence(caution)],
      readings: [],
    })),
  ];
}

function heading(text: string): DocumentPart {
  return { kind: "heading", level: 2, text };
}
