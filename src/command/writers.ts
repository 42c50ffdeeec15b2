import { drawingOfRead } from "../drawing/drawing-of.js";
import type { Installation } from "../installation/document.js";
import type { InstallationComparison } from "../installation/installation-comparison.js";
import type { Check } from "../installation/installed/checked.js";
import { scheduleOfRead } from "../installation/schedule-of.js";
import { checkDocument } from "../report/check-document.js";
import { comparisonDocument } from "../report/comparison-document.js";
import type { Document } from "../report/document.js";
import type { DocumentOptions } from "../report/frame.js";
import { drawingAsSvg } from "../report/render/drawing-svg.js";
import { reportOfRead } from "../report/report-document.js";
import { scheduleDocument } from "../report/schedule-document.js";
import type { Style } from "./style.js";
import { writeDocument } from "./write-document.js";

/** Writes a result of the library: as JSON what it is, else its document. */
function writer<Answer>(documentOf: (answer: Answer, options: DocumentOptions) => Document) {
  return (answer: Answer, style: Style): string =>
    style.format === "json"
      ? JSON.stringify(answer, null, 2)
      : writeDocument(documentOf(answer, style.options), style);
}

/** Writes a check. */
export const writeCheck = writer<Check>(checkDocument);

/** Writes a comparison. */
export const writeComparison = writer<InstallationComparison>(comparisonDocument);

const writeOnlySchedule = writer(scheduleDocument);

/** Writes the schedule of an installation; as a page it is the report. */
export function writeSchedule(installation: Installation, style: Style): string {
  return style.format === "html"
    ? writeReport(installation, "html", style.options)
    : writeOnlySchedule(scheduleOfRead(installation), style);
}

/** Writes the report on an installation; as SVG it is the picture alone. */
export function writeReport(installation: Installation, format: string, options: DocumentOptions): string {
  return format === "svg"
    ? drawingAsSvg(drawingOfRead(installation, scheduleOfRead(installation)))
    : writeDocument(reportOfRead(installation, options), { format, width: undefined });
}
