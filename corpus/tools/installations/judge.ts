import type { ConductorEnd, Installation, Schedule, ScheduledConductor } from "../../../src/index.js";
import { expectedOf, type InstallationCheck, type LineStatement, type Statement } from "./model.js";

/** What of a document tells where its buildings are supplied. */
type Document = Pick<Installation, "buildings" | "circuits">;

/** `changed-side`: of a disputed check, what the source says is met and what the text requires is not. */
export type InstallationVerdict = "met" | "missed" | "changed-side";

/** A verdict with the statements that are not met. */
export interface InstallationJudgement {
  readonly verdict: InstallationVerdict;
  readonly unmet: readonly Statement[];
}

/** Holds a schedule against what is expected of it, and of the document of which it is. */
export function judgeSchedule(
  check: InstallationCheck,
  schedule: Schedule,
  document: Document,
): InstallationJudgement {
  const unmetOf = (statements: readonly Statement[]): readonly Statement[] =>
    statements.filter((one) => !isMet(one, schedule, document));
  const unmet = unmetOf(expectedOf(check));
  if (unmet.length === 0) return { verdict: "met", unmet };
  const sourceIsMet = check.dispute !== undefined && unmetOf(check.expect).length === 0;
  return { verdict: sourceIsMet ? "changed-side" : "missed", unmet };
}

function isMet(statement: Statement, { conductors, violations }: Schedule, document: Document): boolean {
  if ("noViolation" in statement) return violations.every(({ code }) => code !== statement.noViolation);
  if ("violation" in statement)
    return violations.some(
      ({ code, at, conductors: forbidden = [], section }) =>
        code === statement.violation &&
        [at, forbidden.map(({ subject }) => subject)].some((places) =>
          hasSameMembers(places, statement.at),
        ) &&
        isIn(section, statement.section ?? section),
    );
  const { role, subject, required } = statement;
  const lines = conductors.filter((one) => one.role === role && one.subject === subject);
  return required === false
    ? isNotRequired(lines, statement)
    : lines.some((one) => isAs(one, statement, document));
}

/** That nothing is required is met by silence; a reason or a section has to be given. */
function isNotRequired(lines: readonly ScheduledConductor[], { why, placement }: LineStatement): boolean {
  if (lines.some(({ quantity }) => quantity > 0)) return false;
  if (why === undefined && placement === undefined) return true;
  return lines.some(
    ({ result: { outcome } }) =>
      outcome.kind === "not-required" &&
      outcome.why === (why ?? outcome.why) &&
      isIn(outcome.citation.section, placement ?? outcome.citation.section),
  );
}

function isAs(line: ScheduledConductor, wanted: LineStatement, document: Document): boolean {
  const { outcome } = line.result;
  const size = outcome.kind === "conductor" ? outcome.size : undefined;
  return (
    line.quantity > 0 &&
    (wanted.size === undefined || wanted.size === size) &&
    (wanted.quantity === undefined || wanted.quantity === line.quantity) &&
    (wanted.from === undefined || isEndAt(line.from, wanted.from, document)) &&
    (wanted.to === undefined || isEndAt(line.to, wanted.to, document)) &&
    (wanted.placement === undefined || isIn(line.placement?.section ?? "", wanted.placement))
  );
}

/** Whether an end is at a place, belongs to what has this id, or is of this kind. A building is the place of its disconnect. */
function isEndAt(end: ConductorEnd, place: string, { buildings = [], circuits = [] }: Document): boolean {
  const building = buildings.find(({ id }) => id === place);
  const inBuilding = building?.disconnect ?? circuits.find(({ id }) => id === building?.circuit)?.to;
  if ("id" in end) return end.id === place || end.id === inBuilding;
  return "of" in end ? end.of === place : end.kind === place;
}

/** A section that a source names is met by itself and by its own parts. */
function isIn(section: string, named: string): boolean {
  return section === named || section.startsWith(`${named}(`) || section.startsWith(`${named} `);
}

function hasSameMembers(some: readonly string[], others: readonly string[]): boolean {
  return some.length === others.length && some.every((one) => others.includes(one));
}
