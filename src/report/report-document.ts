import { groupsOf } from "../drawing/groups.js";
import { sheetsOf } from "../drawing/sheets.js";
import { conductorWords } from "../installation/conductor-words.js";
import type { Installation } from "../installation/document.js";
import { type Numbered, numbered } from "../installation/numbered.js";
import { readInstallation } from "../installation/read-installation.js";
import type { Schedule, ScheduledConductor } from "../installation/schedule.js";
import { scheduleOfRead } from "../installation/schedule-of.js";
import { type Document, type DocumentPart, type DocumentSignatures, textsOf } from "./document.js";
import { type DocumentOptions, editionWords, framed, listed, readOptions } from "./frame.js";
import { type CalculationSheet, calculationsOf, sheetsTable } from "./report-calculations.js";
import { notRequiredLines, numberedCautions, numbersWords } from "./report-remarks.js";
import { scheduleTable } from "./report-schedule.js";
import { openParts, scheduleFacts } from "./schedule-parts.js";
import { rowsOfSchedule } from "./schedule-rows.js";
import { evidenceParagraph } from "./words/evidence-words.js";
import { glossaryOf } from "./words/glossary.js";
import { metalLines } from "./words/metal-words.js";
import { violationSentence } from "./words/violation-words.js";

/**
 * Makes the report for a plan reviewer: title block, what is not permitted, the schedule with what is left open, the drawing, then every calculation
 * with what is given, its rule and its result, what is not required and why, cautions, evidence and abbreviations. As HTML it is one file that loads
 * nothing, follows a dark theme on a screen and prints black on white with numbered pages.
 *
 * @param installation - the installation; {@link readInstallation} reads one from text
 * @param options - another title, who prepared it, the date
 * @returns a document for {@link render}; its rows are the conductors, areas in circular mils, lengths in feet
 * @throws {@link InputError} listing everything that is wrong in the installation, and for wrong options
 *
 * @example
 * ```ts
 * import { render, reportDocument } from "bondmil";
 * const report = reportDocument({
 *   format: 1,
 *   title: "Pumps & valves",
 *   code: { year: "2020" },
 *   materials: {
 *     bondingJumpers: "copper",
 *     groundedConductors: "copper",
 *     electrodeConductors: "copper",
 *     equipmentGrounding: "copper",
 *   },
 *   existing: [{ id: "P1" }],
 *   circuits: [{ id: "C1", from: "P1", to: "pump", device: { amperes: 100 }, wiring: "raceway" }],
 * });
 * const html = render(report, { as: "html" });
 * html.includes("<h1>Pumps &amp; valves: bonding and grounding conductors</h1>"); // => true
 * ```
 */
export function reportDocument(installation: Installation, options: DocumentOptions = {}): Document {
  const own = readOptions(options);
  return reportOfRead(readInstallation(installation), own);
}

/** The report on an installation that was read. */
export function reportOfRead(installation: Installation, own: DocumentOptions): Document {
  const schedule = scheduleOfRead(installation);
  const { title, edition } = schedule;
  const all = numbered(schedule.conductors);
  const required = all.filter(({ conductor }) => isRequired(conductor));
  const sheets = calculationsOf(required);
  const parts = [
    { kind: "text", text: purposeSentence(schedule) } as const,
    ...listed("Not permitted", schedule.violations.map(violationSentence)),
    ...scheduleParts(schedule, all, sheets),
    ...drawingParts(installation, schedule),
    ...basisParts(schedule, all, sheets),
  ];
  return framed(
    {
      title: `${title}: bonding and grounding conductors`,
      editions: [edition],
      facts: scheduleFacts(schedule),
      signatures,
      parts: [...parts, heading("Abbreviations"), { kind: "text", text: glossaryOf(textsOf(parts)) }],
      rows: rowsOfSchedule(schedule),
    },
    own,
  );
}

const signatures: DocumentSignatures = {
  who: ["Prepared by", "Reviewed by"],
  fields: ["Name", "License no.", "Signature", "Date"],
};

function isRequired({ result }: ScheduledConductor): boolean {
  return result.outcome.kind !== "not-required";
}

/** What the report is for, and what it comes to. */
function purposeSentence({ conductors, violations, title, edition }: Schedule): string {
  const required = conductors.filter(isRequired).length;
  const verdict =
    violations.length === 0
      ? "Nothing is found that the edition forbids in the drawing, or misses in it"
      : `${violations.length} ${violations.length === 1 ? "thing is" : "things are"} not permitted as drawn`;
  return `For plan review: the minimum size of every bonding and grounding conductor of ${title} by ${editionWords([edition])}, each with the rule behind it. ${required} required, ${conductors.length - required} not required. ${verdict}.`;
}

function scheduleParts(
  schedule: Schedule,
  all: readonly Numbered[],
  sheets: readonly CalculationSheet[],
): readonly DocumentPart[] {
  const numbers = new Map(all.map(({ conductor, mark }) => [conductor, mark]));
  const numbersOf = (list: readonly ScheduledConductor[]): string =>
    numbersWords(list.map((one) => numbers.get(one) ?? 0));
  return [
    heading("Schedule"),
    ...scheduleTable(sheets),
    ...openParts(schedule, {
      one: (conductor) => `${numbersOf([conductor])}, ${conductorWords(conductor)}`,
      several: numbersOf,
    }),
  ];
}

/** The sheets of the drawing, and into what it is divided. */
function drawingParts(installation: Installation, schedule: Schedule): readonly DocumentPart[] {
  const sheets = sheetsOf(groupsOf(installation, schedule));
  if (sheets.length === 0) return [];
  const divided =
    sheets.length === 1
      ? ""
      : ` Split into ${sheets.length} sheets: by system, and between enclosures where a system is too high for a page.`;
  return [
    heading("Drawing"),
    { kind: "text", text: `Numbers are those of the schedule.${divided}` },
    ...sheets.map((sheet): DocumentPart => ({ kind: "drawing", sheet })),
  ];
}

/** What the sizes rest on: calculations, what is not required, metal, cautions, evidence. */
function basisParts(
  schedule: Schedule,
  all: readonly Numbered[],
  sheets: readonly CalculationSheet[],
): readonly DocumentPart[] {
  const { notSized, totals } = schedule;
  const evidence = [
    ...new Set(sheets.flatMap(({ of }) => of.map(({ conductor }) => conductor.result.evidence))),
  ];
  return [
    ...(sheets.length === 0 ? [] : [heading("Calculations"), sheetsTable(sheets)]),
    ...listed("Not required", notRequiredLines(all)),
    ...listed(
      "Not sized here",
      notSized.map(({ what, see }) => `${what}: the installation does not give what sizes it; see ${see}`),
    ),
    ...listed("Metal of the conductors whose length is given", metalLines(totals)),
    ...listed("Cautions", numberedCautions(schedule, all)),
    ...(evidence.length === 0
      ? []
      : [heading("Evidence"), { kind: "text", text: evidenceParagraph(evidence) } as const]),
  ];
}

function heading(text: string): DocumentPart {
  return { kind: "heading", level: 2, text };
}
