import { shortMaterials, writeSize } from "../drawing/write.js";
import { conductorWords, endWords } from "../installation/conductor-words.js";
import { type Numbered, purposes } from "../installation/numbered.js";
import type { DocumentCell, DocumentPart } from "./document.js";
import { type CalculationSheet, sheetMark } from "./report-calculations.js";
import { basisWords } from "./words/basis-words.js";
import { evidenceLetter } from "./words/evidence-words.js";
import { purposeNames } from "./words/schedule-words.js";

const head = ["No.", "Conductor", "From", "To", "Basis", "Minimum size", "Section", "Evidence"];

/** The conductors that are required as one table, by the system that they belong to; each leads to its calculation. */
export function scheduleTable(sheets: readonly CalculationSheet[]): readonly DocumentPart[] {
  const required = sheets
    .flatMap((sheet) => sheet.of.map((one) => ({ one, sheet: sheetMark(sheet) })))
    .sort((a, b) => a.one.mark - b.one.mark);
  const rows = purposes.flatMap((purpose) => {
    const own = required.filter(({ one }) => one.conductor.result.purpose === purpose);
    return own.length === 0
      ? []
      : [[purposeNames[purpose]], ...own.map(({ one, sheet }) => cellsOf(one, sheet))];
  });
  if (rows.length === 0) return [{ kind: "text", text: "No conductor is required." }];
  return [{ kind: "table", of: "records", head, rows }];
}

function cellsOf({ conductor, mark }: Numbered, sheet: string): readonly DocumentCell[] {
  const { from, to, result } = conductor;
  return [
    `${mark}`,
    { text: conductorWords(conductor), to: sheet },
    endWords(from),
    endWords(to),
    basisWords(result),
    shortMaterials(writeSize(conductor)),
    result.citation.section,
    evidenceLetter(result.evidence),
  ];
}
