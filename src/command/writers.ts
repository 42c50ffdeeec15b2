import { buildSchedule } from "../installation/build-schedule.js";
import type { Check } from "../installation/check.js";
import type { DrawingComparison } from "../installation/drawing-comparison.js";
import { pictureOf } from "../picture/picture-of.js";
import { rowsToCsv } from "../report/csv.js";
import { writeComparisonMarkdown } from "../report/drawing-comparison-markdown.js";
import { comparisonRows } from "../report/drawing-comparison-rows.js";
import { writeComparison } from "../report/drawing-comparison-text.js";
import { checkAsHtml, comparisonAsHtml } from "../report/pages-html.js";
import { pictureAsSvg } from "../report/picture-svg.js";
import { reportAsHtml } from "../report/report-html.js";
import { reportAsMarkdown } from "../report/report-markdown.js";
import { writeCheckMarkdown, writeScheduleMarkdown } from "../report/schedule-markdown.js";
import { checkRows, scheduleRows } from "../report/schedule-rows.js";
import { writeCheck, writeSchedule } from "../report/schedule-table.js";
import type { formats, reportFormats } from "./subcommands.js";

export type Format = (typeof formats)[number];

export type ReportFormat = (typeof reportFormats)[number];

/** Writes an answer; the width is that of the terminal. */
type Writer<Answer> = (answer: Answer, width: number | undefined) => string;

type Writers<Answer> = Readonly<Record<Format, Writer<Answer>>>;

/** How the schedule of a drawing is written in each format; as a page it is the report. */
export const scheduleWriters: Writers<string> = {
  text: (drawing) => writeSchedule(buildSchedule(drawing)),
  markdown: (drawing) => writeScheduleMarkdown(buildSchedule(drawing)),
  csv: (drawing) => rowsToCsv(scheduleRows(buildSchedule(drawing))),
  json: (drawing) => json(buildSchedule(drawing)),
  html: reportAsHtml,
};

/** How the report on a drawing is written in each format. */
export const reportWriters: Readonly<Record<ReportFormat, (drawing: string) => string>> = {
  html: reportAsHtml,
  markdown: reportAsMarkdown,
  svg: (drawing) => pictureAsSvg(pictureOf(drawing)),
};

/** How a check is written in each format. */
export const checkWriters: Writers<Check> = {
  text: writeCheck,
  markdown: writeCheckMarkdown,
  csv: (check) => rowsToCsv(checkRows(check)),
  json,
  html: checkAsHtml,
};

/** How a comparison is written in each format. */
export const comparisonWriters: Writers<DrawingComparison> = {
  text: writeComparison,
  markdown: writeComparisonMarkdown,
  csv: (comparison) => rowsToCsv(comparisonRows(comparison)),
  json,
  html: comparisonAsHtml,
};

function json(answer: unknown): string {
  return JSON.stringify(answer, null, 2);
}
