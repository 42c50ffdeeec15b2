import { useResult } from "../input/given-result.js";
import type { Check, CheckedConductor } from "../installation/check.js";
import { checkMarks } from "../installation/check.js";
import type { Schedule, ScheduledConductor } from "../installation/schedule.js";
import { scheduleMarks } from "../installation/schedule.js";
import type { Violation } from "../installation/violation.js";
import type { ReadingUsed } from "../rules/result.js";
import { formatArea } from "../units/area.js";
import {
  basisOf,
  checkCounts,
  placedCautions,
  purposeNames,
  purposes,
  servedWords,
  sizeOf,
  verdictWords,
} from "./schedule-words.js";
import { violationSentence } from "./violation-words.js";
import { cautionWords, standingCautions } from "./words.js";

/**
 * Writes a schedule of conductors as plain text for reading: every conductor by the system that it belongs to, with its places,
 * quantity and size, what decides it, the sections and the evidence; then what to be careful of, open readings, what is not sized,
 * the metal by size, and the fingerprint.
 *
 * @param schedule - a schedule
 * @returns lines of text, none of them wrapped
 * @throws {@link InputError} for anything but what buildSchedule gives
 *
 * @example
 * ```ts
 * import { buildSchedule, writeSchedule } from "bondmil";
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
 * writeSchedule(schedule).split("\n").slice(5, 7);
 * // => ["equipment-grounding-conductor C1", "  1 x 8 AWG copper, from P1 to pump"]
 * ```
 */
export function writeSchedule(schedule: Schedule): string {
  return useResult(schedule, "buildSchedule", scheduleMarks, scheduleText);
}

function scheduleText(schedule: Schedule): string {
  const { title, edition, violations, conductors, notSized, totals, fingerprint } = schedule;
  return [
    ...headed(`${title}: bonding and grounding conductors, NFPA 70-${edition}`, "="),
    ...section("Not permitted", violations.map(violationLine)),
    ...purposes.flatMap((purpose) =>
      section(
        purposeNames[purpose],
        conductors.filter(({ result }) => result.purpose === purpose).flatMap(conductorLines),
      ),
    ),
    ...section("Cautions", cautionLines(schedule)),
    ...section("Open readings", conductors.flatMap(readingLines)),
    ...section(
      "Not sized here",
      notSized.map(({ what, see }) => `- ${what}: see ${see}`),
    ),
    ...section(
      "Metal of the conductors whose length is given",
      totals.map(({ size, material, feet }) => `- ${size} ${material}: ${Math.round(feet * 100) / 100} ft`),
    ),
    "",
    ...standingCautions,
    "",
    `Fingerprint: ${fingerprint}`,
  ].join("\n");
}

/**
 * Writes a check of installed conductors as plain text: every verdict with what is installed, what is required and by how much it
 * misses, and how many there are of each.
 *
 * @param check - a check
 * @returns lines of text, none of them wrapped
 * @throws {@link InputError} for anything but what checkInstalled gives
 *
 * @example
 * ```ts
 * import { checkInstalled, writeCheck } from "bondmil";
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
 * writeCheck(check).split("\n")[3];
 * // => "SHORT: equipment-grounding-conductor C1, 1 x 10 AWG copper; 6,130 cmil less than the 16,510 cmil of 250.122(A)"
 * ```
 */
export function writeCheck(check: Check): string {
  return useResult(check, "checkInstalled", checkMarks, checkText);
}

function checkText(check: Check): string {
  const { schedule, conductors } = check;
  return [
    ...headed(`${schedule.title}: check of installed conductors, NFPA 70-${schedule.edition}`, "="),
    "",
    ...schedule.violations.map((one) => `NOT PERMITTED: ${violationSentence(one)}`),
    ...conductors.map(checkLine),
    "",
    `${checkCounts(check)}.`,
    ...standingCautions,
    "",
    `Fingerprint of the schedule: ${schedule.fingerprint}`,
    `Fingerprint of this check: ${check.fingerprint}`,
  ].join("\n");
}

function violationLine(violation: Violation): string {
  return `- ${violationSentence(violation)}`;
}

function headed(heading: string, line: string): readonly string[] {
  return [heading, line.repeat(heading.length)];
}

function section(heading: string, lines: readonly string[]): readonly string[] {
  return lines.length === 0 ? [] : ["", ...headed(heading, "-"), ...lines];
}

function conductorLines(one: ScheduledConductor): readonly string[] {
  const { id, from, to, result, alternative, lengthFeet } = one;
  const length = lengthFeet === undefined ? "" : `, ${lengthFeet} ft`;
  const isSaid = alternative === undefined || id.endsWith(`(${alternative})`);
  const instead = isSaid ? "" : ` (${alternative})`;
  return [
    `${id}${instead}`,
    `  ${sizeOf(one)}, from ${from} to ${to}${length}`,
    `  ${[result.name, servedWords(one), basisOf(result)].filter((part) => part !== "").join("; ")}; evidence: ${result.evidence}`,
  ];
}

function cautionLines(schedule: Schedule): readonly string[] {
  return placedCautions(schedule).flatMap(({ code, section: where, at }) => [
    `- ${cautionWords[code]}${where === null ? "" : ` [${where}]`}`,
    `    ${at.join("; ")}`,
  ]);
}

function readingLines({ id, result }: ScheduledConductor): readonly string[] {
  return result.readings.map(
    (reading) => `- ${id}: ${reading.id} is read as ${reading.chosen}; ${othersOf(reading)}`,
  );
}

function othersOf({ otherwise }: ReadingUsed): string {
  return otherwise
    .map(({ alternative, requiredArea }) => `${alternative} asks for ${formatArea(requiredArea)}`)
    .join("; ");
}

function checkLine(one: CheckedConductor): string {
  const { id, verdict, installed, alternative, requiredArea, reserve, citation } = one;
  const found =
    installed === null ? "" : `, ${installed.quantity ?? 1} x ${installed.size} ${installed.material}`;
  const place = installed?.at === undefined ? "" : ` at ${installed.at}`;
  const at = citation === null ? "" : ` of ${citation.section}`;
  const required = requiredArea === 0 ? "" : ` the ${formatArea(requiredArea)}${at}`;
  const isSaid = alternative === undefined || id.endsWith(`(${alternative})`);
  const name = isSaid ? id : `${id} (${alternative})`;
  const head = `${verdictWords[verdict]}: ${name}${found}${place}`;
  if (reserve !== null && requiredArea > 0) {
    if (reserve === 0) return `${head}; exactly${required}`;
    const difference = formatArea(Math.abs(reserve));
    return `${head}; ${difference} ${reserve < 0 ? "less" : "more"} than${required}`;
  }
  if (requiredArea > 0) return `${head}; required:${required}`;
  return citation === null ? head : `${head} [${citation.section}]`;
}
