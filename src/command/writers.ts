import type { Check } from "../installation/check.js";
import type { DrawingComparison } from "../installation/drawing-comparison.js";
import type { Schedule } from "../installation/schedule.js";
import { type CsvCell, rowsToCsv } from "../report/csv.js";
import { writeComparisonMarkdown } from "../report/drawing-comparison-markdown.js";
import { comparisonRows } from "../report/drawing-comparison-rows.js";
import { writeComparison } from "../report/drawing-comparison-text.js";
import { writeCheckMarkdown, writeScheduleMarkdown } from "../report/schedule-markdown.js";
import { checkRows, scheduleRows } from "../report/schedule-rows.js";
import { writeCheck, writeSchedule } from "../report/schedule-table.js";
import type { formats } from "./subcommands.js";

export type Format = (typeof formats)[number];

/** Writes an answer; the width is that of the terminal. */
type Writer<Answer> = (answer: Answer, width: number | undefined) => string;

type Writers<Answer> = Readonly<Record<Format, Writer<Answer>>>;

/** How a schedule is written in each format. */
export const scheduleWriters: Writers<Schedule> = {
  text: writeSchedule,
  markdown: writeScheduleMarkdown,
  csv: (schedule) => csv(scheduleRows(schedule)),
  json,
};

/** How a check is written in each format. */
export const checkWriters: Writers<Check> = {
  text: writeCheck,
  markdown: writeCheckMarkdown,
  csv: (check) => csv(checkRows(check)),
  json,
};

/** How a comparison is written in each format. */
export const comparisonWriters: Writers<DrawingComparison> = {
  text: writeComparison,
  markdown: writeComparisonMarkdown,
  csv: (comparison) => csv(comparisonRows(comparison)),
  json,
};

function json(answer: unknown): string {
  return JSON.stringify(answer, null, 2);
}

function csv<Row extends { readonly [Column in keyof Row]: CsvCell }>(rows: readonly Row[]): string {
  return rowsToCsv(rows.map((row) => Object.fromEntries(Object.entries<CsvCell>(row).map(inert))));
}

/** A spreadsheet takes a text that starts so for a formula; an apostrophe before it keeps it a text. */
function inert([column, cell]: [string, CsvCell]): [string, CsvCell] {
  return [column, typeof cell === "string" && /^[=+\-@\t\r]/.test(cell) ? `'${cell}` : cell];
}
