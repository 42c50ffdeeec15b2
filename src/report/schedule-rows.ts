import { useResult } from "../input/given-result.js";
import type { Check } from "../installation/check.js";
import { checkMarks } from "../installation/check.js";
import type { Schedule, ScheduledConductor } from "../installation/schedule.js";
import { scheduleMarks } from "../installation/schedule.js";

/** A conductor of a schedule as one flat row. */
export interface ScheduleRow {
  readonly id: string;
  readonly role: string;
  readonly purpose: string;
  readonly from: string;
  readonly to: string;
  readonly quantity: number;
  /** `null` where no standard size answers, or nothing is required. */
  readonly size: string | null;
  readonly material: string;
  /** Circular mils of one conductor. */
  readonly requiredArea: number;
  /** The reason why none is required. */
  readonly notRequired: string | null;
  readonly lengthFeet: number | null;
  readonly alternative: string | null;
  /** Ids of the runs by whose conductors it is sized, with semicolons between. */
  readonly by: string;
  /** The step that decides. */
  readonly governs: string | null;
  readonly section: string;
  readonly evidence: string;
  /** Codes, with spaces between. */
  readonly cautions: string;
  readonly edition: string;
  readonly fingerprint: string;
}

/** A verdict of a check as one flat row. */
export interface CheckRow {
  readonly id: string;
  readonly verdict: string;
  /** Where arrangements are compared and none is begun, the one that it belongs to. */
  readonly alternative: string | null;
  readonly installedQuantity: number | null;
  readonly installedSize: string | null;
  readonly installedMaterial: string | null;
  readonly installedAt: string | null;
  /** Circular mils of one conductor. */
  readonly requiredArea: number;
  /** Circular mils of one conductor; negative where it is short. */
  readonly reserve: number | null;
  readonly section: string | null;
  readonly evidence: string | null;
  readonly edition: string;
  readonly fingerprint: string;
}

/**
 * Turns a schedule into flat rows, one for each conductor, for CSV or a data frame.
 *
 * @param schedule - what {@link buildSchedule} gives
 * @returns rows with the same columns each; areas in circular mils, lengths in feet
 * @throws {@link InputError} for anything but what buildSchedule gives
 *
 * @example
 * ```ts
 * import { buildSchedule, scheduleRows } from "bondmil";
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
 * scheduleRows(schedule).map(({ id, quantity, size, section }) => [id, quantity, size, section]);
 * // => [["equipment-grounding-conductor C1", 1, "8 AWG", "250.122(A)"]]
 * ```
 */
export function scheduleRows(schedule: Schedule): readonly ScheduleRow[] {
  return useResult(schedule, "buildSchedule", scheduleMarks, rowsOfSchedule);
}

function rowsOfSchedule({ conductors, edition, fingerprint }: Schedule): readonly ScheduleRow[] {
  return conductors.map((one) => ({ ...rowOf(one), edition, fingerprint }));
}

/**
 * Turns a check of installed conductors into flat rows, one for each verdict.
 *
 * @param check - what {@link checkInstalled} gives
 * @returns rows with the same columns each; areas in circular mils
 * @throws {@link InputError} for anything but what checkInstalled gives
 *
 * @example
 * ```ts
 * import { checkInstalled, checkRows } from "bondmil";
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
 * checkRows(check).map(({ verdict, reserve }) => [verdict, reserve]); // => [["short", -6130]]
 * ```
 */
export function checkRows(check: Check): readonly CheckRow[] {
  return useResult(check, "checkInstalled", checkMarks, rowsOfCheck);
}

function rowsOfCheck({ schedule, conductors, fingerprint }: Check): readonly CheckRow[] {
  const { edition } = schedule;
  return conductors.map(({ id, alternative, verdict, installed, requiredArea, reserve, citation }) => ({
    id,
    verdict,
    alternative: alternative ?? null,
    installedQuantity: installed === null ? null : (installed.quantity ?? 1),
    installedSize: installed?.size ?? null,
    installedMaterial: installed?.material ?? null,
    installedAt: installed?.at ?? null,
    requiredArea,
    reserve,
    section: citation?.section ?? null,
    evidence: citation?.evidence ?? null,
    edition,
    fingerprint,
  }));
}

function rowOf(one: ScheduledConductor): Omit<ScheduleRow, "edition" | "fingerprint"> {
  const { id, role, from, to, quantity, lengthFeet, alternative, by, result } = one;
  const { purpose, outcome, material, requiredArea, governs, citation, evidence, cautions } = result;
  return {
    id,
    role,
    purpose,
    from,
    to,
    quantity,
    size: outcome.kind === "conductor" ? outcome.size : null,
    material,
    requiredArea,
    notRequired: outcome.kind === "not-required" ? outcome.why : null,
    lengthFeet: lengthFeet ?? null,
    alternative: alternative ?? null,
    by: by.join("; "),
    governs,
    section: citation.section,
    evidence,
    cautions: cautions.map(({ code }) => code).join(" "),
  };
}
