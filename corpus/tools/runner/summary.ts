import { editionYears, roleIds } from "../../../src/index.js";
import { useResult } from "../../../src/input/given-result.js";
import { withOneError } from "../../../tables/tools/one-error.js";
import type { Sources } from "../../../tables/tools/source.js";
import { countHosts } from "./hosts.js";
import { type Entry, standings, voices } from "./model.js";
import type { Row } from "./run-checks.js";
import { type Line, table } from "./text.js";

/**
 * The counts of a run: by role and standing, by edition, by voice, by kind of source with the share of disputed checks.
 *
 * @param rows - of {@link runCorpus}
 * @param sources - the register of sources
 * @returns plain text
 * @throws `InputError` of `bondmil` for anything but rows and a register of sources
 *
 * @example
 * ```ts
 * import { runCorpus, sources, writeSummary } from "bondmil/corpus";
 *
 * const rows = runCorpus(() => null, { role: "intersystem-bonding-conductor" });
 * writeSummary(rows, sources).split("\n")[0]; // => "By role and standing"
 * ```
 */
export function writeSummary(rows: readonly Row[], sources: Sources): string {
  return withOneError(() =>
    useResult(
      { rows, sources },
      "runCorpus with the register of sources",
      { rows: "list", sources: "object" },
      (given) => summaryOf(given.rows, given.sources),
    ),
  );
}

function summaryOf(rows: readonly Row[], sources: Sources): string {
  const entries = entriesOfRows(rows);
  const parts = [
    "By role and standing",
    byRoleAndStanding(entries, rows),
    "Breadth by role",
    byBreadth(entries, sources),
    "By edition that the source states",
    byEdition(entries),
    "By voice",
    byVoice(entries),
    "By kind of source",
    bySourceKind(entries, sources),
    totals(entries, rows),
  ];
  return parts.join("\n\n");
}

/** Each check once, however many editions it ran under. */
function entriesOfRows(rows: readonly Row[]): readonly Entry[] {
  return [...new Map(rows.map((row) => [row.check.id, row])).values()];
}

/** Columns for the standings that occur, so that the table stays within its width. */
function byRoleAndStanding(entries: readonly Entry[], rows: readonly Row[]): string {
  const columns = standings.filter((standing) => entries.some(({ check }) => check.standing === standing));
  const line = (name: string, ofRole: readonly Entry[], ran: readonly Row[]): Line => [
    name,
    ...columns.map((standing) => ofRole.filter(({ check }) => check.standing === standing).length),
    ran.length,
    countMissed(ran),
  ];
  const lines = groupsByRole(entries).map(([role, group]) =>
    line(
      role,
      group,
      rows.filter((row) => row.role === role),
    ),
  );
  return table(["role", ...columns, "runs", "missed"], [...lines, line("all", entries, rows)]);
}

function byBreadth(entries: readonly Entry[], sources: Sources): string {
  const line = (name: string, group: readonly Entry[]): Line => [
    name,
    group.length,
    countHosts(group, sources),
    countSources(group),
    countPairs(group),
  ];
  const lines = groupsByRole(entries).map(([role, group]) => line(role, group));
  return table(["role", "checks", "hosts", "sources", "pairs"], [...lines, line("all", entries)]);
}

function byEdition(entries: readonly Entry[]): string {
  const lines = [...editionYears, null].map((edition): Line => {
    const stated = entries.filter(({ check }) => check.stated === edition);
    return [edition ?? "unstated", stated.length, countDisputed(stated)];
  });
  return table(["edition", "checks", "disputed"], lines);
}

function byVoice(entries: readonly Entry[]): string {
  const lines = voices
    .map((voice) => [voice, entries.filter(({ check }) => check.voice === voice)] as const)
    .filter(([, group]) => group.length > 0)
    .map(([voice, group]): Line => {
      const given = group.filter(({ check }) => check.assumed.length === 0).length;
      return [voice, group.length, given, countDisputed(group)];
    });
  return table(["voice", "checks", "nothing assumed", "disputed"], lines);
}

function bySourceKind(entries: readonly Entry[], sources: Sources): string {
  const kindOf = ({ source }: Entry): string => sources[source]?.kind ?? "unknown";
  const lines = [...new Set(entries.map(kindOf))].map((kind): Line => {
    const group = entries.filter((entry) => kindOf(entry) === kind);
    const disputed = countDisputed(group);
    const share = `${Math.round((100 * disputed) / group.length)} %`;
    return [kind, countHosts(group, sources), countSources(group), group.length, disputed, share];
  });
  return table(["kind", "hosts", "sources", "checks", "disputed", "share"], lines);
}

function totals(entries: readonly Entry[], rows: readonly Row[]): string {
  return [
    `${entries.length} checks from ${countSources(entries)} sources, ${countPairs(entries)} distinct pairs of source and locator;`,
    `${rows.length} runs, ${countMissed(rows)} missed.`,
  ].join("\n");
}

function groupsByRole(entries: readonly Entry[]): readonly (readonly [string, readonly Entry[]])[] {
  return roleIds
    .map((role) => [role, entries.filter((entry) => entry.role === role)] as const)
    .filter(([, group]) => group.length > 0);
}

function countMissed(rows: readonly Row[]): number {
  return rows.filter(({ verdict }) => verdict !== "met").length;
}

function countDisputed(entries: readonly Entry[]): number {
  return entries.filter(({ check }) => check.standing === "disputed").length;
}

function countSources(entries: readonly Entry[]): number {
  return new Set(entries.map(({ source }) => source)).size;
}

/** Many checks from one place are not many sources. */
function countPairs(entries: readonly Entry[]): number {
  return new Set(entries.map(({ source, check }) => JSON.stringify([source, check.locator]))).size;
}
