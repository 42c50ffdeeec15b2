import { type EditionYear, InputError, readInstallation, scheduleOf } from "../../../src/index.js";
import { type Filter, isSaid } from "../runner/select.js";
import { type InstallationJudgement, judgeSchedule } from "./judge.js";
import { expectedOf, type InstallationEntry } from "./model.js";

/** A check under one edition, judged. */
export interface InstallationRow extends InstallationEntry, InstallationJudgement {
  readonly edition: EditionYear;
  /** Why the library refused the document; absent where it did not. */
  readonly refused?: readonly string[];
}

/** The checks that a filter leaves; one of a role or a flag leaves none, for they have neither. */
export function selectInstallations(
  entries: readonly InstallationEntry[],
  filter: Filter,
): readonly InstallationEntry[] {
  const { role, flag, source, standing, edition } = filter;
  if (role !== undefined || flag !== undefined) return [];
  return entries
    .filter((entry) => source === undefined || entry.source === source)
    .filter(({ check }) => standing === undefined || check.standing === standing)
    .filter(({ check }) => isSaid(check, filter))
    .map((entry) => {
      const holds = entry.check.holds.filter((year) => edition === undefined || year === edition);
      return { ...entry, check: { ...entry.check, holds } };
    });
}

/** Schedules the document of every check under every edition in which it holds, and judges the schedule. */
export function runInstallations(entries: readonly InstallationEntry[]): readonly InstallationRow[] {
  return entries.flatMap((entry) =>
    entry.check.holds.map((edition) => ({ ...entry, edition, ...judged(entry, edition) })),
  );
}

function judged(
  { file, check }: InstallationEntry,
  edition: EditionYear,
): Pick<InstallationRow, "verdict" | "unmet" | "refused"> {
  const { amendments = [] } = check;
  const document = { ...file.installations[check.installation], code: { year: edition, amendments } };
  try {
    const installation = readInstallation(document);
    return judgeSchedule(check, scheduleOf(installation), installation);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    const refused = error.issues.map(({ path, message }) => `${path}: ${message}`);
    return { verdict: "missed", unmet: expectedOf(check), refused };
  }
}
