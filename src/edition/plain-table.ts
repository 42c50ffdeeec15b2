import type { Evidence } from "./evidence.js";

/** A table of one edition that is only looked up: its rows in the order of the book. */
export interface PlainTable<Row> {
  readonly number: string;
  readonly rows: readonly Row[];
  readonly evidence: Evidence;
  /** Evidence of single cells, by "first cell of the row, column", where it differs. */
  readonly cells: Readonly<Record<string, Evidence>>;
}

/** How surely one cell is known. */
export function evidenceOfCell(
  table: Pick<PlainTable<unknown>, "evidence" | "cells">,
  row: string | number,
  column: string,
): Evidence {
  return table.cells[`${row} ${column}`] ?? table.evidence;
}
