import type { Entry } from "./model.js";

/** What a run is narrowed to; nothing named, everything runs. */
export interface Filter {
  readonly role?: string | undefined;
  readonly source?: string | undefined;
  readonly flag?: string | undefined;
  readonly edition?: string | undefined;
}

/** The checks that a filter leaves, each only under the editions that it leaves. */
export function select(entries: readonly Entry[], filter: Filter): readonly Entry[] {
  const { role, source, flag, edition } = filter;
  return entries
    .filter((entry) => role === undefined || entry.role === role)
    .filter((entry) => source === undefined || entry.source === source)
    .filter((entry) => flag === undefined || entry.check.flags.includes(flag))
    .map(({ check, ...place }) => {
      const holds = check.holds.filter((year) => edition === undefined || year === edition);
      return { ...place, check: { ...check, holds } };
    })
    .filter(({ check }) => check.holds.length > 0);
}
