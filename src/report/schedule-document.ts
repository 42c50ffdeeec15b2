import { useResult } from "../input/given-result.js";
import { conductorWords, endWords, roleName } from "../installation/conductor-words.js";
import { purposes } from "../installation/numbered.js";
import type { Schedule, ScheduledConductor } from "../installation/schedule.js";
import { scheduleMarks } from "../installation/schedule.js";
import type { Document, DocumentPart } from "./document.js";
import { type DocumentOptions, framed, listed, readOptions } from "./frame.js";
import { cautionParts, openParts, scheduleFacts } from "./schedule-parts.js";
import { rowsOfSchedule } from "./schedule-rows.js";
import { coveringWords } from "./words/covering-words.js";
import { evidenceWords } from "./words/evidence-words.js";
import { poundsOf, poundsWords } from "./words/metal-words.js";
import { basisOf, purposeNames, sectionsBeside, servedWords, sizeOf } from "./words/schedule-words.js";
import { violationSentence } from "./words/violation-words.js";

/**
 * Makes a document of a schedule: what is not permitted, what the installation leaves open, the open readings that change a size, a table for
 * each of the systems that the conductors belong to, then cautions, what is not sized, and the metal by size. The fingerprint stands in its
 * title block.
 *
 * @param schedule - what {@link scheduleOf} gives
 * @param options - another title, who prepared it, the date
 * @returns a document for {@link render}; its rows are the conductors, areas in circular mils, lengths in feet
 * @throws {@link InputError} for anything but what scheduleOf gives, and for wrong options
 *
 * @example
 * ```ts
 * import { scheduleOf, render, scheduleDocument } from "bondmil";
 * const schedule = scheduleOf({
 *   format: 1,
 *   title: "Pump house",
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
 * const document = scheduleDocument(schedule);
 * render(document, { as: "text" }).split("\n").find((line) => line.includes("C1"));
 * // => "equipment grounding conductor C1: 1 x 8 AWG copper"
 * document.rows.map(({ id, size, requiredArea }) => [id, size, requiredArea]);
 * // => [["equipment-grounding-conductor C1", "8 AWG", 16510]]
 * ```
 */
export function scheduleDocument(schedule: Schedule, options: DocumentOptions = {}): Document {
  const own = readOptions(options);
  return useResult(schedule, "scheduleOf", scheduleMarks, (given) =>
    framed(
      {
        title: `${given.title}: bonding and grounding conductors`,
        editions: [given.edition],
        facts: scheduleFacts(given),
        parts: partsOf(given),
        rows: rowsOfSchedule(given),
      },
      own,
    ),
  );
}

function partsOf(schedule: Schedule): readonly DocumentPart[] {
  const { violations, conductors, notSized, totals } = schedule;
  return [
    ...listed("Not permitted", violations.map(violationSentence)),
    ...openParts(schedule),
    ...purposes.flatMap((purpose) =>
      table(
        purposeNames[purpose],
        "records",
        [
          "conductor",
          "required",
          "from",
          "to",
          "length",
          "name in this edition",
          "basis",
          "insulation",
          "evidence",
        ],
        conductors.filter(({ result }) => result.purpose === purpose).map(cellsOf),
      ),
    ),
    ...cautionParts(schedule),
    ...listed(
      "Not sized here",
      notSized.map(({ what, see }) => `${what}: see ${see}`),
    ),
    ...table(
      "Metal of the conductors whose length is given",
      "grid",
      ["size", "material", "feet", "pounds"],
      totals.map((one) => {
        const pounds = poundsOf([one]);
        const feet = `${Math.round(one.feet * 100) / 100}`;
        return [one.size, one.material, feet, pounds === null ? "not known" : poundsWords(pounds)];
      }),
    ),
  ];
}

function cellsOf(one: ScheduledConductor): readonly string[] {
  const { from, to, lengthFeet, result } = one;
  return [
    conductorWords(one),
    sizeOf(one),
    endWords(from),
    endWords(to),
    lengthFeet === undefined ? "" : `${lengthFeet} ft`,
    result.name === roleName(result.role) ? "" : result.name,
    [servedWords(one), basisOf(result), ...sectionsBeside(one)].filter((part) => part !== "").join("; "),
    one.covering === undefined
      ? ""
      : `${coveringWords[one.covering.kind]} [${one.covering.citation.section}, ${evidenceWords(one.covering.citation.evidence)}]`,
    evidenceWords(result.evidence),
  ];
}

/** A table under its heading, without columns in which nothing stands. */
function table(
  heading: string,
  of: "grid" | "records",
  head: readonly string[],
  rows: readonly (readonly string[])[],
): readonly DocumentPart[] {
  if (rows.length === 0) return [];
  const filled = head.map((_, i) => rows.some((cells) => cells[i] !== ""));
  const kept = (cells: readonly string[]): readonly string[] => cells.filter((_, i) => filled[i]);
  return [
    { kind: "heading", level: 2, text: heading },
    { kind: "table", of, head: kept(head), rows: rows.map(kept) },
  ];
}
