import { endWords } from "../installation/conductor-words.js";
import type { Schedule, ScheduledConductor } from "../installation/schedule.js";
import { codedCautions, codedViolations } from "./words/coded.js";

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
  /** What the installation leaves open and this line hangs on; `null` where nothing is. */
  readonly open: string | null;
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
  /** What is forbidden or missing in the whole installation, as code, section and places, with semicolons between. */
  readonly notPermitted: string;
  /** Cautions that are not of one conductor, as code, section and place, with semicolons between. */
  readonly otherCautions: string;
  readonly edition: string;
  readonly fingerprint: string;
};

/** A schedule as flat rows, one for each conductor; areas in circular mils, lengths in feet. */
export function rowsOfSchedule(schedule: Schedule): readonly ScheduleRow[] {
  const { fingerprint } = schedule;
  return plainRows(schedule).map((row) => ({ ...row, fingerprint }));
}

/** The rows of a schedule that has no fingerprint. */
export function plainRows({
  conductors,
  violations,
  cautions,
  edition,
}: Pick<Schedule, "conductors" | "violations" | "cautions" | "edition">): readonly Omit<
  ScheduleRow,
  "fingerprint"
>[] {
  const ofAll = {
    notPermitted: codedViolations(violations),
    otherCautions: codedCautions(cautions),
    edition,
  };
  return conductors.map((one) => ({ ...conductorRow(one), ...ofAll }));
}

/** A conductor alone as a flat row. */
export function conductorRow(
  one: ScheduledConductor,
): Omit<ScheduleRow, "notPermitted" | "otherCautions" | "edition" | "fingerprint"> {
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
    open: one.open?.what ?? null,
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
