import { areaOf } from "../conductor/index.js";
import { type Citation, evidenceLevels, type Role } from "../edition/index.js";
import { serviceLoadSide, systemJumperPlace } from "../edition/tables/sections.generated.js";
import type { Marks } from "../input/given-result.js";
import type { NotRequiredReason, SizingResult } from "../rules/result.js";
import { type Alternative, type ConductorIdentity, identityOf } from "./conductor-identity.js";
import { isCalled } from "./conductor-words.js";
import type { Installation } from "./document.js";
import { fingerprintOf } from "./fingerprint.js";
import { requiredAt } from "./lawful-places.js";
import { readInstallation } from "./read-installation.js";
import { requirementsIn } from "./requirement.js";
import type { Schedule, ScheduledConductor } from "./schedule.js";
import { scheduleOfRead } from "./schedule-of.js";

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
  | "not-permitted"
  | "not-in-schedule"
  | "not-required";

/** Verdicts of which something has to be done. */
export const findings: readonly CheckVerdict[] = [
  "short",
  "too-few",
  "missing",
  "wrong-material",
  "wrong-place",
  "not-permitted",
  "not-in-schedule",
];

/** A conductor as the installation says that it is installed. */
export type FoundConductor = NonNullable<Installation["installed"]>[number];

/** One conductor of the schedule, or one found besides, with its verdict. */
export interface CheckedConductor {
  /** Id in the schedule, or the name under which it was found. */
  readonly id: string;
  /** Which conductor of the schedule it is; `null` for one found besides. */
  readonly identity: ConductorIdentity | null;
  /** What the comparison came to. */
  readonly verdict: CheckVerdict;
  /** What was found; `null` where nothing was. */
  readonly installed: FoundConductor | null;
  /** Where several arrangements are compared and none is begun, the one that it belongs to. */
  readonly alternative?: Alternative;
  /** Circular mils that are required of one conductor of this material at this place; 0 where none is. */
  readonly requiredArea: number;
  /** Circular mils installed less those required, of one conductor; `null` where the two cannot be compared. */
  readonly reserve: number | null;
  /** Where the requirement, or the fault, stands; `null` for something that the schedule does not know. */
  readonly citation: Citation | null;
}

/** What is installed, held against what is required in the installation. */
export interface Check {
  /** The schedule that it is checked against. */
  readonly schedule: Schedule;
  /** Each conductor with its verdict. */
  readonly conductors: readonly CheckedConductor[];
  /** Short mark of the schedule, of what is installed and of every verdict. */
  readonly fingerprint: string;
}

/**
 * Holds the installed conductors of an installation against its schedule: sufficient, sufficient only on values that are not confirmed, short
 * and by how much, too few, missing, larger than needed, of a material that may not be, at the wrong place, not permitted, or not required
 * at all, as a second jumper beyond the one that the system may have. A conductor of another material than drawn, or an electrode conductor
 * at another lawful place, is judged by what is required there. What is forbidden in the installation itself stands in the schedule's
 * violations, and is found too.
 *
 * @param installation - the installation, with `installed`; {@link readInstallation} reads one from text
 * @returns a verdict for every conductor of the schedule that is required, and for everything installed
 * @throws {@link InputError} listing everything that is wrong in the installation
 *
 * @example
 * ```ts
 * import { checkOf } from "bondmil";
 * const check = checkOf({
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
export function checkOf(installation: Installation): Check {
  return checkOfRead(readInstallation(installation));
}

/** The check of an installation that was read. */
export function checkOfRead(installation: Installation): Check {
  const schedule = scheduleOfRead(installation);
  const { installed = [] } = installation;
  const found = byName(installed);
  const known = new Set(schedule.conductors.map(({ id }) => id));
  const begun = arrangementsBegun(schedule, found);
  const judge = judgeOf(installation, schedule);
  const checked = schedule.conductors.flatMap((conductor): readonly CheckedConductor[] => {
    const alike = found.get(conductor.id);
    const isOther = isOfOtherArrangement(conductor, begun);
    if (alike !== undefined) return alike.map((one) => judge(conductor, one, alike, isOther));
    return conductor.quantity === 0 || isOther ? [] : [missing(conductor, begun)];
  });
  const besides = installed
    .filter(({ conductor }) => !known.has(conductor))
    .map((one) => unasked(schedule, one));
  const conductors = [...checked, ...besides];
  const fingerprint = fingerprintOf({ schedule: schedule.fingerprint, installed, conductors });
  return { schedule, conductors, fingerprint };
}

type FoundByName = ReadonlyMap<string, readonly FoundConductor[]>;

function byName(installed: readonly FoundConductor[]): FoundByName {
  const found = new Map<string, FoundConductor[]>();
  for (const one of installed) {
    const alike = found.get(one.conductor);
    if (alike === undefined) found.set(one.conductor, [one]);
    else alike.push(one);
  }
  return found;
}

/** Of each system whose arrangements are compared, the first of which anything is installed. */
function arrangementsBegun({ conductors }: Schedule, found: FoundByName): ReadonlyMap<string, Alternative> {
  const begun = new Map<string, Alternative>();
  for (const { id, system, alternative } of conductors) {
    if (system !== undefined && alternative !== undefined && found.has(id) && !begun.has(system))
      begun.set(system, alternative);
  }
  return begun;
}

/** Arrangements exclude each other: what belongs to another than the one that was begun is at the wrong place. */
function isOfOtherArrangement(
  { system, alternative }: ScheduledConductor,
  begun: ReadonlyMap<string, Alternative>,
): boolean {
  const chosen = begun.get(system ?? "");
  return alternative !== undefined && chosen !== undefined && chosen !== alternative;
}

type Judge = (
  conductor: ScheduledConductor,
  one: FoundConductor,
  alike: readonly FoundConductor[],
  isOther: boolean,
) => CheckedConductor;

function judgeOf(installation: Installation, schedule: Schedule): Judge {
  const requirementOf = requirementsIn(installation, schedule);
  const forbidden = forbiddenPlaces(schedule);
  return (conductor, installed, alike, isOther) => {
    const { id, from, to, quantity, result } = conductor;
    const identity = identityOf(conductor);
    const requirement = requirementOf(conductor, installed.material);
    const required =
      requirement === null || installed.at === undefined
        ? (requirement?.conductor.result ?? null)
        : requiredAt(requirement.installation, schedule.code, requirement.conductor, installed.at);
    const judged = (
      verdict: CheckVerdict,
      citation: Citation,
      by: SizingResult | null = required,
    ): CheckedConductor => ({
      id,
      identity,
      verdict,
      installed,
      requiredArea: (by ?? result).requiredArea,
      reserve: by === null || quantity === 0 ? null : areaOf(installed.size) - by.requiredArea,
      citation,
    });
    if (quantity === 0) {
      const isForbidden =
        result.outcome.kind === "not-required" && forbiddenWhere.includes(result.outcome.why);
      return judged(isForbidden ? "not-permitted" : "not-required", result.citation);
    }
    if (isOther) return judged("wrong-place", systemJumperPlace[schedule.edition]);
    const { at } = installed;
    const isWhereDrawn = at === undefined || isCalled(from, at) || isCalled(to, at);
    const notHere = isWhereDrawn ? forbidden(conductor) : undefined;
    if (notHere !== undefined) return judged(...notHere);
    if (requirement === null) return judged("wrong-material", result.citation);
    const refusal = requirement.conductor.result.cautions.find(({ code }) => code === "material-forbidden");
    if (refusal !== undefined) {
      const { evidence } = result.citation;
      return judged("wrong-material", { section: refusal.section ?? result.citation.section, evidence });
    }
    if (required === null) return judged("wrong-place", result.citation, requirement.conductor.result);
    return judged(verdictOf(required, quantity, installed, alike), required.citation);
  };
}

/** Systems that have no jumper of their own to be found. */
const forbiddenWhere: readonly NotRequiredReason[] = ["ungrounded-system", "impedance-grounded"];

/** Conductors that stand in the schedule as drawn, though they may not be where they are drawn. */
function forbiddenPlaces({
  violations,
}: Schedule): (conductor: ScheduledConductor) => readonly [CheckVerdict, Citation] | undefined {
  const of = (code: Schedule["violations"][number]["code"]): ReadonlyMap<string, string> =>
    new Map(
      violations
        .filter((one) => one.code === code)
        .flatMap(({ at, section }) => at.map((id) => [id, section])),
    );
  const jumpers = of("jumper-not-permitted-here");
  const electrodes = of("electrode-conductor-not-at-jumper");
  return ({ role, subject, result: { citation } }) => {
    const jumper = role === "system-bonding-jumper" ? jumpers.get(subject) : undefined;
    if (jumper !== undefined) return ["not-permitted", { section: jumper, evidence: citation.evidence }];
    const electrode = role === "grounding-electrode-conductor" ? electrodes.get(subject) : undefined;
    return electrode === undefined
      ? undefined
      : ["wrong-place", { section: electrode, evidence: citation.evidence }];
  };
}

function verdictOf(
  { outcome, requiredArea, evidence }: SizingResult,
  quantity: number,
  { size }: FoundConductor,
  alike: readonly FoundConductor[],
): CheckVerdict {
  if (areaOf(size) < requiredArea) return "short";
  const together = alike.reduce((sum, one) => sum + (one.quantity ?? 1), 0);
  if (together < quantity) return "too-few";
  if (outcome.kind === "conductor" && areaOf(size) > areaOf(outcome.size)) return "larger-than-needed";
  const isSure = evidenceLevels.indexOf(evidence) >= evidenceLevels.indexOf("single");
  return isSure ? "sufficient" : "sufficient-on-unconfirmed-values";
}

/** A conductor that is not there. Where arrangements are compared and none is begun, each of them misses its own. */
function missing(conductor: ScheduledConductor, begun: ReadonlyMap<string, Alternative>): CheckedConductor {
  const { id, system, alternative, result } = conductor;
  const { requiredArea, citation } = result;
  const isOpen = alternative !== undefined && !begun.has(system ?? "");
  return {
    id,
    identity: identityOf(conductor),
    verdict: "missing",
    installed: null,
    ...(isOpen && { alternative }),
    requiredArea,
    reserve: null,
    citation,
  };
}

/** Something installed that the schedule does not hold; a further jumper is a fault where the system has its one. */
function unasked({ edition }: Schedule, installed: FoundConductor): CheckedConductor {
  const { conductor: id, role } = installed;
  return {
    id,
    identity: null,
    verdict: "not-in-schedule",
    installed,
    requiredArea: 0,
    reserve: null,
    citation: faultOf(role)?.[edition] ?? null,
  };
}

function faultOf(role: Role | undefined): typeof systemJumperPlace | undefined {
  if (role === "system-bonding-jumper") return systemJumperPlace;
  return role === "main-bonding-jumper" ? serviceLoadSide : undefined;
}

/** By what a check of installed conductors is known. */
export const checkMarks: Marks<Check> = {
  schedule: "object",
  conductors: "list",
};
