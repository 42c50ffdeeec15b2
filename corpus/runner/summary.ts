import { editionYears } from "../../src/index.js";
import type { Entry, Sources } from "./model.js";
import type { Run } from "./run-checks.js";
import { type Row, table } from "./text.js";

/** The counts of a run, as plain text. */
export function writeSummary(runs: readonly Run[], sources: Sources): string {
  const entries = [...new Set(runs.map((run) => run.entry))];
  const parts = [
    "By role and standing",
    byRoleAndStanding(entries, runs),
    "By edition that the source states",
    byEdition(entries),
    "By kind of source",
    bySourceKind(entries, sources),
    totals(entries, runs),
  ];
  return parts.join("\n\n");
}

function byRoleAndStanding(entries: readonly Entry[], runs: readonly Run[]): string {
  const named = ({ role, check }: Entry): string => `${role} ${check.standing}`;
  const rows = groupsOf(entries, named).map(([key, group]): Row => {
    const ofGroup = runs.filter(({ entry }) => named(entry) === key);
    return [...key.split(" "), group.length, ofGroup.length, countMissed(ofGroup)];
  });
  const total: Row = ["all", "", entries.length, runs.length, countMissed(runs)];
  return table(["role", "standing", "checks", "runs", "missed"], [...rows, total]);
}

function byEdition(entries: readonly Entry[]): string {
  const rows = [...editionYears, null].map((edition): Row => {
    const stated = entries.filter(({ check }) => check.stated === edition);
    return [edition ?? "unstated", stated.length, countDisputed(stated)];
  });
  return table(["edition", "checks", "disputed"], rows);
}

function bySourceKind(entries: readonly Entry[], sources: Sources): string {
  const groups = groupsOf(entries, ({ source }) => sources[source]?.kind ?? "unknown");
  const rows = groups.map(([kind, group]): Row => {
    const disputed = countDisputed(group);
    const share = `${Math.round((100 * disputed) / group.length)} %`;
    return [kind, new Set(group.map(({ source }) => source)).size, group.length, disputed, share];
  });
  return table(["kind", "sources", "checks", "disputed", "share"], rows);
}

function totals(entries: readonly Entry[], runs: readonly Run[]): string {
  const places = new Set(entries.map(({ source, check }) => JSON.stringify([source, check.locator])));
  const sources = new Set(entries.map(({ source }) => source));
  return [
    `${entries.length} checks from ${sources.size} sources, ${places.size} distinct pairs of source and locator;`,
    `${runs.length} runs, ${countMissed(runs)} missed.`,
  ].join("\n");
}

function groupsOf(
  entries: readonly Entry[],
  keyOf: (entry: Entry) => string,
): readonly (readonly [string, readonly Entry[]])[] {
  return [...new Set(entries.map(keyOf))].map(
    (key) => [key, entries.filter((entry) => keyOf(entry) === key)] as const,
  );
}

function countMissed(runs: readonly Run[]): number {
  return runs.filter(({ verdict }) => verdict !== "met").length;
}

function countDisputed(entries: readonly Entry[]): number {
  return entries.filter(({ check }) => check.standing === "disputed").length;
}
