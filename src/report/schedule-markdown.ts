import { useResult } from "../input/given-result.js";
import type { Check } from "../installation/check.js";
import { checkMarks } from "../installation/check.js";
import type { Schedule, ScheduledConductor } from "../installation/schedule.js";
import { scheduleMarks } from "../installation/schedule.js";
import { formatArea } from "../units/area.js";
import { partsOfCheck } from "./check-parts.js";
import { markdownTable, plainText } from "./markdown.js";
import { partsAsMarkdown } from "./parts.js";
import { basisOf, placedCautions, purposeNames, purposes, servedWords, sizeOf } from "./schedule-words.js";
import { violationSentence } from "./violation-words.js";
import { cautionWords, standingCautions } from "./words.js";

/**
 * Writes a schedule of conductors as Markdown: a table for each of the systems that the conductors belong to, then cautions, open
 * readings, what is not sized, the metal by size, and the fingerprint. What the drawing names is escaped.
 *
 * @param schedule - what {@link buildSchedule} gives
 * @returns Markdown
 * @throws {@link InputError} for anything but what buildSchedule gives
 *
 * @example
 * ```ts
 * import { buildSchedule, writeScheduleMarkdown } from "bondmil";
 * const schedule = buildSchedule({
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
 * writeScheduleMarkdown(schedule).split("\n")[0];
 * // => "# Pump house: bonding and grounding conductors, NFPA 70-2020"
 * ```
 */
export function writeScheduleMarkdown(schedule: Schedule): string {
  return useResult(schedule, "buildSchedule", scheduleMarks, schedulePage);
}

function schedulePage(schedule: Schedule): string {
  const { title, edition, violations, conductors, notSized, totals, fingerprint } = schedule;
  return page([
    `# ${plainText(`${title}: bonding and grounding conductors, NFPA 70-${edition}`)}`,
    ...list("Not permitted", violations.map(violationSentence)),
    ...purposes.flatMap((purpose) =>
      table(
        purposeNames[purpose],
        ["conductor", "required", "from", "to", "length", "name in this edition", "basis", "evidence"],
        conductors.filter(({ result }) => result.purpose === purpose).map(conductorCells),
      ),
    ),
    ...list(
      "Cautions",
      placedCautions(schedule).map(
        ({ code, section, at }) => `${cautionWords[code]}${sectionOf(section)} At: ${at.join("; ")}`,
      ),
    ),
    ...table(
      "Open readings",
      ["conductor", "reading", "read as", "otherwise"],
      conductors.flatMap(({ id, result }) =>
        result.readings.map((reading) => [
          id,
          reading.id,
          reading.chosen,
          reading.otherwise
            .map(({ alternative, requiredArea }) => `${alternative}: ${formatArea(requiredArea)}`)
            .join("; "),
        ]),
      ),
    ),
    ...list(
      "Not sized here",
      notSized.map(({ what, see }) => `${what}: see ${see}`),
    ),
    ...table(
      "Metal of the conductors whose length is given",
      ["size", "material", "feet"],
      totals.map(({ size, material, feet }) => [size, material, `${Math.round(feet * 100) / 100}`]),
    ),
    standingCautions.map(plainText).join("\n"),
    `Fingerprint: ${fingerprint}`,
  ]);
}

/**
 * Writes a check of installed conductors as Markdown: one row for each verdict, then how many there are of each.
 *
 * @param check - what {@link checkInstalled} gives
 * @returns Markdown
 *
 * @example
 * ```ts
 * import { checkInstalled, writeCheckMarkdown } from "bondmil";
 * const check = checkInstalled({
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
 *   installed: [{ conductor: "equipment-grounding-conductor C1", size: "10 AWG", material: "copper" }],
 * });
 * writeCheckMarkdown(check).split("\n")[4];
 * // => "| SHORT | equipment-grounding-conductor C1 | 1 x 10 AWG copper |  | 16,510 cmil | -6,130 cmil | 250.122(A) |"
 * ```
 */
export function writeCheckMarkdown(check: Check): string {
  return useResult(check, "checkInstalled", checkMarks, (given) => partsAsMarkdown(partsOfCheck(given)));
}

function conductorCells(one: ScheduledConductor): readonly string[] {
  const { id, from, to, lengthFeet, alternative, result } = one;
  const isSaid = alternative === undefined || id.endsWith(`(${alternative})`);
  return [
    isSaid ? id : `${id} (${alternative})`,
    sizeOf(one),
    from,
    to,
    lengthFeet === undefined ? "" : `${lengthFeet} ft`,
    result.name,
    [servedWords(one), basisOf(result)].filter((part) => part !== "").join("; "),
    result.evidence,
  ];
}

function sectionOf(section: string | null): string {
  return section === null ? "" : ` [${section}]`;
}

function page(parts: readonly string[]): string {
  return `${parts.join("\n\n")}\n`;
}

function table(
  heading: string,
  head: readonly string[],
  rows: readonly (readonly string[])[],
): readonly string[] {
  return rows.length === 0 ? [] : [`## ${plainText(heading)}`, escapedTable(head, rows)];
}

function escapedTable(head: readonly string[], rows: readonly (readonly string[])[]): string {
  return markdownTable(
    head,
    rows.map((cells) => cells.map(plainText)),
  );
}

function list(heading: string, lines: readonly string[]): readonly string[] {
  return lines.length === 0 ? [] : [`## ${heading}`, lines.map((line) => `- ${plainText(line)}`).join("\n")];
}
