import { areaOf, columnOf } from "../conductor/index.js";
import { type Citation, evidenceLevels } from "../edition/index.js";
import { serviceLoadSide, systemJumperPlace } from "../edition/tables/sections.generated.js";
import type { Marks } from "../input/given-result.js";
import { buildSchedule } from "./build-schedule.js";
import type { Drawing } from "./document.js";
import { readDrawing } from "./read-drawing.js";
import type { Schedule, ScheduledConductor } from "./schedule.js";

/** What a comparison of an installed conductor with the schedule comes to. */
export type CheckVerdict =
  | "sufficient"
  | "sufficient-on-unconfirmed-values"
  | "short"
  | "too-few"
  | "missing"
  | "larger-than-needed"
  | "wrong-material"
  | "wrong-place"
  | "not-in-schedule"
  | "not-required";

/** A conductor as the drawing says that it is installed. */
export type FoundConductor = NonNullable<Drawing["installed"]>[number];

/** One conductor of the schedule, or one found besides, with its verdict. */
export interface CheckedConductor {
  /** Id in the schedule, or the name under which it was found. */
  readonly id: string;
  readonly verdict: CheckVerdict;
  readonly installed: FoundConductor | null;
  /** Circular mils that are required of one conductor; 0 where none is. */
  readonly requiredArea: number;
  /** Circular mils installed less those required, of one conductor; `null` where the two cannot be compared. */
  readonly reserve: number | null;
  /** Where the requirement, or the fault, stands; `null` for something that the schedule does not know. */
  readonly citation: Citation | null;
}

/** What is installed, held against what the drawing asks for. */
export interface Check {
  readonly schedule: Schedule;
  readonly conductors: readonly CheckedConductor[];
}

/**
 * Holds the installed conductors of a drawing against its schedule: sufficient, sufficient only on values that are not confirmed, short
 * and by how much, too few, missing, larger than needed, of another material than drawn, at the wrong place, or not asked for at all,
 * as a second jumper beyond the one that the system may have.
 *
 * @param source - a drawing with `installed`, its JSON text, or the value that it would parse to
 * @returns a verdict for every conductor of the schedule that is required, and for everything installed
 * @throws {@link InputError} listing everything that is wrong in the drawing
 *
 * @example
 * ```ts
 * import { checkInstalled } from "bondmil";
 * const check = checkInstalled({
 *   format: 1,
 *   title: "Kiosk",
 *   code: { year: "2020" },
 *   materials: {
 *     bondingJumpers: "copper",
 *     groundedConductors: "copper",
 *     electrodeConductors: "copper",
 *     equipmentGrounding: "copper",
 *   },
 *   existing: [{ id: "P1" }],
 *   circuits: [{ id: "C1", from: "P1", to: "pump", device: { amperes: 100 }, wiring: "raceway" }],
 *   piping: [{ id: "gas pipe", kind: "other", deviceAmperes: 20 }],
 *   installed: [{ conductor: "equipment-grounding-conductor C1", size: "10 AWG", material: "copper" }],
 * });
 * check.conductors.map(({ id, verdict, reserve }) => [id, verdict, reserve]);
 * // => [
 * //   ["equipment-grounding-conductor C1", "short", -6130],
 * //   ["other-piping-bonding-jumper gas pipe", "missing", null],
 * // ]
 * ```
 */
export function checkInstalled(source: unknown): Check {
  const drawing = readDrawing(source);
  const schedule = buildSchedule(drawing);
  const found = new Map<string, FoundConductor[]>();
  for (const one of drawing.installed ?? []) {
    const alike = found.get(one.conductor);
    if (alike === undefined) found.set(one.conductor, [one]);
    else alike.push(one);
  }
  const known = new Set(schedule.conductors.map(({ id }) => id));
  const chosen = schedule.conductors.find(({ id, alternative }) => alternative && found.has(id))?.alternative;
  const checked = schedule.conductors.flatMap((scheduled) => {
    const installed = found.get(scheduled.id);
    const isOther = scheduled.alternative !== undefined && scheduled.alternative !== chosen;
    if (installed !== undefined) return installed.map((one) => checkOne(scheduled, one, installed, isOther));
    return scheduled.quantity === 0 || isOther ? [] : [missing(scheduled)];
  });
  const besides = (drawing.installed ?? [])
    .filter(({ conductor }) => !known.has(conductor))
    .map((one) => unasked(schedule, one));
  return { schedule, conductors: [...checked, ...besides] };
}

/** A conductor of an arrangement other than the one that was begun is at the wrong place: the two exclude each other. */
function checkOne(
  scheduled: ScheduledConductor,
  installed: FoundConductor,
  alike: readonly FoundConductor[],
  isOther: boolean,
): CheckedConductor {
  const { id, quantity, result } = scheduled;
  const { requiredArea, citation, material, edition } = result;
  const isComparable = quantity > 0 && columnOf(installed.material) === columnOf(material);
  return {
    id,
    verdict: isOther ? "wrong-place" : verdictOf(scheduled, installed, alike),
    installed,
    requiredArea,
    reserve: isComparable ? areaOf(installed.size) - requiredArea : null,
    citation: isOther ? systemJumperPlace[edition] : citation,
  };
}

function verdictOf(
  { result, quantity, from, to }: ScheduledConductor,
  { size, material, at }: FoundConductor,
  alike: readonly FoundConductor[],
): CheckVerdict {
  const { outcome, requiredArea, evidence } = result;
  if (quantity === 0) return "not-required";
  if (at !== undefined && at !== to && at !== from) return "wrong-place";
  // A conductor of another metal was sized for another column: nothing can be said until the drawing names its material.
  if (columnOf(material) !== columnOf(result.material)) return "wrong-material";
  if (areaOf(size) < requiredArea) return "short";
  const together = alike.reduce((sum, one) => sum + (one.quantity ?? 1), 0);
  if (together < quantity) return "too-few";
  if (outcome.kind === "conductor" && areaOf(size) > areaOf(outcome.size)) return "larger-than-needed";
  const isSure = evidenceLevels.indexOf(evidence) >= evidenceLevels.indexOf("single");
  return isSure ? "sufficient" : "sufficient-on-unconfirmed-values";
}

function missing({ id, result }: ScheduledConductor): CheckedConductor {
  const { requiredArea, citation } = result;
  return { id, verdict: "missing", installed: null, requiredArea, reserve: null, citation };
}

/** Something installed that the schedule does not hold; a further jumper is a fault where the system has its one. */
function unasked({ edition }: Schedule, installed: FoundConductor): CheckedConductor {
  const { conductor: id } = installed;
  return {
    id,
    verdict: "not-in-schedule",
    installed,
    requiredArea: 0,
    reserve: null,
    citation: faultOf(id)?.[edition] ?? null,
  };
}

function faultOf(id: string): typeof systemJumperPlace | undefined {
  if (id.startsWith("system-bonding-jumper ")) return systemJumperPlace;
  return id.startsWith("main-bonding-jumper ") ? serviceLoadSide : undefined;
}

/** By what a check of installed conductors is known. */
export const checkMarks: Marks<Check> = {
  schedule: "object",
  conductors: "list",
};
