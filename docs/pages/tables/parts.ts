import { type EditionYear, editionYears } from "../../../src/edition/edition-year.js";
import type { Evidence } from "../../../src/edition/evidence.js";
import { blockFor } from "../../../tables/tools/generator/checks.js";
import type { Cell, TableFile } from "../../../tables/tools/generator/model.js";

/** A cell as a page shows it; `none` for an empty one. */
export function shown(cell: Cell | undefined): string {
  return cell == null ? "none" : String(cell);
}

/** Consecutive editions in short: `2008`, or `2011 to 2020`. */
export function span(years: readonly EditionYear[]): string {
  const runs: EditionYear[][] = [];
  for (const year of years) {
    const run = runs.at(-1);
    const last = run?.at(-1);
    if (
      run !== undefined &&
      last !== undefined &&
      editionYears.indexOf(year) === editionYears.indexOf(last) + 1
    )
      run.push(year);
    else runs.push([year]);
  }
  return runs.map((run) => (run.length === 1 ? run[0] : `${run[0]} to ${run.at(-1)}`)).join(", ");
}

/** A table of a page. */
export function markdownTable(head: readonly string[], rows: readonly (readonly string[])[]): string {
  return [head, head.map(() => "---"), ...rows].map((cells) => `| ${cells.join(" | ")} |`).join("\n");
}

/** Editions that have a table. */
export function editionsOf(table: TableFile): readonly EditionYear[] {
  return editionYears.filter((year) => table.number[year] !== null);
}

/** The rows of an edition by their labels. */
export function rowsOf(table: TableFile, year: EditionYear): readonly (readonly Cell[])[] {
  return table.number[year] === null ? [] : (blockFor(table, year)?.rows ?? []);
}

/** Evidence before and after, in short. */
export function levels(before: Evidence | undefined, after: Evidence | undefined): string {
  return `${before ?? "none"} / ${after ?? "none"}`;
}

/** One thing that differs between two editions. */
export interface Change {
  readonly what: string;
  readonly before: string;
  readonly after: string;
  readonly evidence: string;
}

/** A change, if it is one; without levels where no evidence is recorded. */
export function changeOf(
  what: string,
  before: string,
  after: string,
  evidence?: readonly [Evidence | undefined, Evidence | undefined],
): readonly Change[] {
  if (before === after) return [];
  return [{ what, before, after, evidence: evidence === undefined ? "not recorded" : levels(...evidence) }];
}
