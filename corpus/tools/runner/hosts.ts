import type { Source, Sources } from "../../../tables/tools/source.js";

/** The bank, host or author that a source belongs to; a copy belongs to that of what it repeats. */
export function hostOf(id: string, sources: Sources): string {
  const source = sources[sources[id]?.copies ?? id];
  return source?.host ?? source?.publisher ?? id;
}

/** Number of different banks, hosts and authors among some checks. */
export function countHosts(entries: readonly { readonly source: string }[], sources: Sources): number {
  return new Set(entries.map(({ source }) => hostOf(source, sources))).size;
}

/** Kinds of sources of which nobody is known to stand behind what they say. */
const namelessKinds: readonly Source["kind"][] = ["question-bank", "homework", "unsigned"];

/** Whether a source is a site of questions, a homework site or a file without author. */
export function isNameless(id: string, sources: Sources): boolean {
  const kind = sources[id]?.kind;
  return kind !== undefined && namelessKinds.includes(kind);
}

/** Whether an address leads to a place, and not only to a site. */
export function isAddress(url: string | null): boolean {
  return url !== null && /^https?:\/\/[^/]+\/./.test(url);
}
