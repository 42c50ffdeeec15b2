import type { EditionYear, Role } from "../../../src/index.js";
import type { Check, Entry, Standing, Voice } from "./model.js";

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
  /** Who says it. */
  readonly voice?: Voice | undefined;
  /** Leaves the checks of which the source gives the whole input (`none`), or the others (`some`). */
  readonly assumed?: Assumed | undefined;
  /** Leaves the checks that hold under this edition, and asks them under it alone. */
  readonly edition?: EditionYear | undefined;
}

/** Whether anything in an input is ours. */
export const assumedKinds = ["none", "some"] as const;

/** One member of {@link assumedKinds}. */
export type Assumed = (typeof assumedKinds)[number];

/** Whether a check speaks in this voice, and has something of ours or nothing. */
export function isSaid(
  check: Pick<Check, "voice" | "assumed">,
  { voice, assumed }: Pick<Filter, "voice" | "assumed">,
): boolean {
  const own: Assumed = check.assumed.length === 0 ? "none" : "some";
  return (voice === undefined || check.voice === voice) && (assumed === undefined || own === assumed);
}

/** The checks that a filter leaves, each only under the editions that it leaves. */
export function select(entries: readonly Entry[], filter: Filter): readonly Entry[] {
  const { role, source, flag, standing, edition } = filter;
  return entries
    .filter((entry) => role === undefined || entry.role === role)
    .filter((entry) => source === undefined || entry.source === source)
    .filter(({ check }) => flag === undefined || check.flags.includes(flag))
    .filter(({ check }) => standing === undefined || check.standing === standing)
    .filter(({ check }) => isSaid(check, filter))
    .map((entry) => {
      const { check } = entry;
      const holds = check.holds.filter((year) => edition === undefined || year === edition);
      return holds.length === check.holds.length ? entry : { ...entry, check: { ...check, holds } };
    })
    .filter(({ check }) => check.holds.length > 0);
}
