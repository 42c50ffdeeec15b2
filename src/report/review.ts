import { buildSchedule } from "../installation/build-schedule.js";
import { readDrawing } from "../installation/read-drawing.js";
import type { Schedule, ScheduledConductor } from "../installation/schedule.js";
import { groupsOf } from "../picture/groups.js";
import { sheetOf } from "../picture/layout.js";
import type { Sheet } from "../picture/picture.js";
import { writeSize } from "../picture/write.js";
import type { SizingResult } from "../rules/result.js";
import { formatArea } from "../units/area.js";
import { explain } from "./explain.js";
import { servedWords } from "./schedule-words.js";
import { violationSentence } from "./violation-words.js";
import { cautionWords, notRequiredWords, standingCautions } from "./words.js";

/** A line of the schedule as a report shows it. */
export interface ReviewRow {
  /** Number in the schedule, from 1. */
  readonly mark: number;
  readonly id: string;
  readonly from: string;
  readonly to: string;
  readonly size: string;
  readonly area: string;
  readonly section: string;
  readonly evidence: string;
}

/** How a result came about, in words. */
export interface ReviewBasis {
  readonly mark: number;
  readonly id: string;
  readonly size: string;
  readonly sentences: string;
  readonly evidence: string;
  readonly readings: readonly string[];
  readonly cautions: readonly string[];
}

/** What a report says, before it is written in a format; nothing is escaped yet. */
export interface Review {
  readonly title: string;
  /** Title block: what each line is called, and what it says. */
  readonly block: readonly (readonly [string, string])[];
  /** What is forbidden or missing, before all else. */
  readonly violations: readonly string[];
  readonly sheets: readonly Sheet[];
  readonly schedule: readonly (readonly [string, readonly ReviewRow[]])[];
  readonly basis: readonly ReviewBasis[];
  readonly cautions: readonly string[];
  readonly notSized: readonly string[];
  readonly standing: readonly string[];
}

/** Reads a drawing and gathers everything that a reviewer is to see. */
export function reviewOf(source: unknown): Review {
  const drawing = readDrawing(source);
  const schedule = buildSchedule(drawing);
  const marked = schedule.conductors.map((one, i) => ({ one, mark: i + 1 }));
  const purposes = Object.keys(purposeNames) as SizingResult["purpose"][];
  return {
    title: schedule.title,
    block: blockOf(schedule),
    violations: schedule.violations.map(violationSentence),
    sheets: groupsOf(drawing, schedule).map(sheetOf),
    schedule: purposes.flatMap((purpose) => {
      const rows = marked.filter(({ one }) => one.result.purpose === purpose);
      return rows.length === 0 ? [] : [[purposeNames[purpose], rows.map(rowOf)] as const];
    }),
    basis: marked.map(basisOf),
    cautions: schedule.cautions.map(
      ({ at, code, section }) => `${at}: ${cautionWords[code]}${section === null ? "" : ` [${section}]`}`,
    ),
    notSized: notSizedOf(schedule),
    standing: standingCautions,
  };
}

const purposeNames: Readonly<Record<SizingResult["purpose"], string>> = {
  "fault-path": "Fault path, by which a breaker opens",
  "electrode-system": "Grounding electrode system, which ties to earth and clears no fault",
  equalizing: "Equalizing conductors, which keep metal at one potential",
};

function blockOf({ title, edition, code, fingerprint, conductors }: Schedule): Review["block"] {
  const { amendments = [], readings = {} } = code;
  const amended = amendments.map(
    ({ kind, citation }) => `${kind}: ${citation.jurisdiction}, ${citation.section}`,
  );
  const chosen = Object.entries(readings).map(([id, alternative]) => `${id}: ${alternative}`);
  return [
    ["Project", title],
    ["Edition", `NFPA 70-${edition}`],
    ["Amendments", amended.join("; ") || "none"],
    ["Readings", chosen.join("; ") || "the defaults"],
    ["Conductors", `${conductors.length} lines`],
    ["Fingerprint", fingerprint],
  ];
}

interface MarkedConductor {
  readonly one: ScheduledConductor;
  readonly mark: number;
}

function rowOf({ one, mark }: MarkedConductor): ReviewRow {
  const { from, to, result } = one;
  return {
    mark,
    id: nameOf(one),
    from,
    to,
    size: writeSize(one),
    area: result.outcome.kind === "not-required" ? "none" : formatArea(result.requiredArea),
    section: sectionOf(result),
    evidence: result.evidence,
  };
}

function basisOf({ one, mark }: MarkedConductor): ReviewBasis {
  const { result } = one;
  return {
    mark,
    id: nameOf(one),
    size: writeSize(one),
    sentences: [explain(result), sentence(servedWords(one))].filter((part) => part !== "").join(" "),
    evidence: result.evidence,
    readings: result.readings.map(
      ({ id, chosen, otherwise }) =>
        `${id} is read as ${chosen}; ${otherwise
          .map(({ alternative, requiredArea }) => `${alternative} asks for ${formatArea(requiredArea)}`)
          .join("; ")}`,
    ),
    cautions: result.cautions.map(
      ({ code, section }) => `${cautionWords[code]}${section === null ? "" : ` [${section}]`}`,
    ),
  };
}

function sentence(words: string): string {
  return words === "" ? "" : `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
}

/** The id; with the arrangement that it belongs to, where the id does not say it. */
function nameOf({ id, alternative }: ScheduledConductor): string {
  return alternative === undefined || id.endsWith(`(${alternative})`) ? id : `${id} (${alternative})`;
}

function sectionOf({ outcome, citation }: SizingResult): string {
  return outcome.kind === "not-required" ? outcome.citation.section : citation.section;
}

function notSizedOf({ notSized, conductors }: Schedule): readonly string[] {
  const needless = conductors.flatMap((one) => {
    const { outcome } = one.result;
    return outcome.kind === "not-required"
      ? [`${nameOf(one)}: not required, ${notRequiredWords[outcome.why]} [${outcome.citation.section}]`]
      : [];
  });
  return [
    ...notSized.map(({ what, see }) => `${what}: the drawing does not give what sizes it; see ${see}`),
    ...needless,
  ];
}
