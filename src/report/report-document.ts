import { groupsOf } from "../drawing/groups.js";
import { sheetsOf } from "../drawing/sheets.js";
import { writeSize } from "../drawing/write.js";
import { conductorWords, endWords } from "../installation/conductor-words.js";
import type { Installation } from "../installation/document.js";
import { readInstallation } from "../installation/read-installation.js";
import type { Schedule, ScheduledConductor } from "../installation/schedule.js";
import { scheduleOfRead } from "../installation/schedule-of.js";
import { formatArea } from "../units/area.js";
import type { Document, DocumentCell, DocumentPart } from "./document.js";
import { type DocumentOptions, framed, listed, readOptions } from "./frame.js";
import { openParts, scheduleFacts } from "./schedule-parts.js";
import { rowsOfSchedule } from "./schedule-rows.js";
import { tellSizing } from "./told/sizing.js";
import { remarksOf, sentencesOf } from "./told/told.js";
import { cautionSentence } from "./words/caution-words.js";
import { evidenceWords } from "./words/evidence-words.js";
import { capital } from "./words/names.js";
import { notRequiredWords } from "./words/not-required-words.js";
import { purposeNames, purposes, servedWords } from "./words/schedule-words.js";
import { violationSentence } from "./words/violation-words.js";

/**
 * Makes the report for a plan reviewer: title block, what is not permitted, the installation, the schedule, every result in sentences with its
 * numbers, sections, evidence, open readings and cautions, and what was not sized and why. As HTML it is one file that loads nothing,
 * follows a dark theme on a screen and prints black on white.
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
  const { title, edition, conductors } = schedule;
  return framed(
    {
      title: `${title}: bonding and grounding conductors`,
      editions: [edition],
      facts: [
        { name: "Project", text: title },
        { name: "Conductors", text: `${conductors.length} lines` },
        ...scheduleFacts(schedule),
      ],
      parts: [
        ...listed("Not permitted", schedule.violations.map(violationSentence)),
        ...openParts(schedule),
        heading(2, "The installation"),
        ...sheetsOf(groupsOf(installation, schedule)).map(
          (sheet): DocumentPart => ({ kind: "drawing", sheet }),
        ),
        ...partsOf(schedule),
      ],
      rows: rowsOfSchedule(schedule),
    },
    own,
  );
}

function partsOf(schedule: Schedule): readonly DocumentPart[] {
  const marked = schedule.conductors.map((one, i) => ({ one, mark: i + 1 }));
  const notSized = notSizedOf(schedule);
  return [
    heading(2, "Schedule"),
    ...purposes.flatMap((purpose) => {
      const rows = marked.filter(({ one }) => one.result.purpose === purpose).map(cellsOf);
      return rows.length === 0
        ? []
        : [heading(3, purposeNames[purpose]), { kind: "table", of: "records", head, rows } as const];
    }),
    heading(2, "Each result"),
    ...marked.flatMap(resultParts),
    heading(2, "Not sized, and why"),
    notSized.length === 0
      ? {
          kind: "text",
          text: "Every line of the schedule is sized. Ungrounded conductors are taken from the installation and not sized here.",
        }
      : { kind: "list", items: notSized },
    ...listed(
      "Cautions",
      schedule.cautions.map(({ at, ...caution }) => `${at}: ${cautionSentence(caution)}`),
    ),
  ];
}

const head = ["No.", "Conductor", "From", "To", "Minimum size", "Required", "Section", "Evidence"];

interface MarkedConductor {
  readonly one: ScheduledConductor;
  readonly mark: number;
}

function cellsOf({ one, mark }: MarkedConductor): readonly DocumentCell[] {
  const { from, to, result } = one;
  const { outcome, citation, requiredArea, evidence } = result;
  const isRequired = outcome.kind !== "not-required";
  return [
    `${mark}`,
    { text: conductorWords(one), to: `result-${mark}` },
    endWords(from),
    endWords(to),
    writeSize(one),
    isRequired ? formatArea(requiredArea) : "none",
    isRequired ? citation.section : outcome.citation.section,
    evidenceWords(evidence),
  ];
}

function resultParts({ one, mark }: MarkedConductor): readonly DocumentPart[] {
  const told = tellSizing(one.result);
  const served = servedWords(one);
  const remarks = remarksOf(told);
  const sentences = [
    sentencesOf(told),
    ...(served === "" ? [] : [`${capital(served)}.`]),
    `Evidence: ${evidenceWords(one.result.evidence)}.`,
  ];
  return [
    { kind: "heading", level: 3, text: `${mark}. ${conductorWords(one)}`, mark: `result-${mark}` },
    { kind: "text", strong: capital(writeSize(one)), text: sentences.join(" ") },
    ...(remarks.length === 0 ? [] : [{ kind: "list", items: remarks } as const]),
  ];
}

function notSizedOf({ notSized, conductors }: Schedule): readonly string[] {
  return [
    ...notSized.map(({ what, see }) => `${what}: the installation does not give what sizes it; see ${see}`),
    ...conductors.flatMap((one) => {
      const { outcome } = one.result;
      return outcome.kind === "not-required"
        ? [
            `${conductorWords(one)}: not required, ${notRequiredWords[outcome.why]} [${outcome.citation.section}]`,
          ]
        : [];
    }),
  ];
}

function heading(level: 2 | 3, text: string): DocumentPart {
  return { kind: "heading", level, text };
}
