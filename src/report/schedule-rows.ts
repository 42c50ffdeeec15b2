import type { Check } from "../installation/check.js";
import { endWords } from "../installation/conductor-words.js";
import type { Schedule, ScheduledConductor } from "../installation/schedule.js";

/** A conductor of a schedule as one flat row. */
export type ScheduleRow = {
  readonly id: string;
  readonly role: string;
  readonly purpose: string;
  readonly from: string;
  readonly to: string;
  readonly quantity: number;
  /** `null` where no standard size is large enough, or nothing is required. */
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
  /** Section that says where it goes, where one beside `section` is known. */
  readonly placement: string | null;
  /** What may bond in its place. */
  readonly insteadPermitted: string | null;
  readonly evidence: string;
  /** Codes, with spaces between. */
  readonly cautions: string;
  readonly edition: string;
  readonly fingerprint: string;
};

/** A verdict of a check as one flat row. */
export type CheckRow = {
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
};

/** A schedule as flat rows, one for each conductor; areas in circular mils, lengths in feet. */
export function rowsOfSchedule({ conductors, edition, fingerprint }: Schedule): readonly ScheduleRow[] {
  return conductors.map((one) => ({ ...rowOf(one), edition, fingerprint }));
}

/** A check as flat rows, one for each verdict; areas in circular mils. */
export function rowsOfCheck({ schedule, conductors, fingerprint }: Check): readonly CheckRow[] {
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
    from: endWords(from),
    to: endWords(to),
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
    placement: one.placement?.section ?? null,
    insteadPermitted: one.insteadPermitted?.by ?? null,
    evidence,
    cautions: cautions.map(({ code }) => code).join(" "),
  };
}
