import type { EditionYear, Role } from "../../../src/index.js";
import type { Entry, Standing } from "./model.js";

/** What a run is narrowed to; nothing named, everything runs. */
export interface Filter {
  /** What the conductor is there for. */
  readonly role?: Role | undefined;
  /** An id in the register of sources. */
  readonly source?: string | undefined;
  /** A key of a file's dictionary of flags. */
  readonly flag?: string | undefined;
  /** How it stands, by a closed set of words. */
  readonly standing?: Standing | undefined;
  /** Leaves the checks that hold under this edition, and asks them under it alone. */
  readonly edition?: EditionYear | undefined;
}

/** The checks that a filter leaves, each only under the editions that it leaves. */
export function select(entries: readonly Entry[], filter: Filter): readonly Entry[] {
  const { role, source, flag, standing, edition } = filter;
  return entries
    .filter((entry) => role === undefined || entry.role === role)
    .filter((entry) => source === undefined || entry.source === source)
    .filter(({ check }) => flag === undefined || check.flags.includes(flag))
    .filter(({ check }) => standing === undefined || check.standing === standing)
    .map((entry) => {
      const { check } = entry;
      const holds = check.holds.filter((year) => edition === undefined || year === edition);
      return holds.length === check.holds.length ? entry : { ...entry, check: { ...check, holds } };
    })
    .filter(({ check }) => check.holds.length > 0);
}
