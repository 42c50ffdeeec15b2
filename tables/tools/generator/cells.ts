import type { EditionYear } from "../../../src/edition/edition-year.js";
import type { Evidence } from "../../../src/edition/evidence.js";
import { blockFor } from "./checks.js";
import type { Cell, TableFile } from "./model.js";

/** One cell that stands in the book. */
export interface TableCell {
  readonly row: string;
  readonly column: string;
  readonly unit: string;
  readonly value: Cell;
  /** Whether it is the first of its row, by which the row is found. */
  readonly isLabel: boolean;
}

/** What a row is called: its first cell, or `last` where that is open. */
export function rowLabel(row: readonly Cell[]): string {
  return String(row[0] ?? "last");
}

/** How a cell is called in a sheet and in its answer. */
export function cellKey({ row, column }: Pick<TableCell, "row" | "column">): string {
  return `${row}|${column}`;
}

/**
 * Every cell of a table in an edition that can be held beside the book: no flags of our own, no rows that a flag says the book
 * has not, no empty cells of an open row.
 */
export function cellsOf(table: TableFile, year: EditionYear): readonly TableCell[] {
  if (table.number[year] == null) return [];
  const flag = table.columns.findIndex(({ unit }) => unit === "flag");
  const rows = (blockFor(table, year)?.rows ?? []).filter((row) => row[flag] !== false);
  return rows.flatMap((row) =>
    table.columns.flatMap(({ id, unit }, i): readonly TableCell[] => {
      const value = row[i] ?? null;
      if (unit === "flag" || (row[0] === null && value === null)) return [];
      return [{ row: rowLabel(row), column: id, unit, value, isLabel: i === 0 }];
    }),
  );
}

/** How surely one cell is known. */
export function levelOfCell(
  table: TableFile,
  year: EditionYear,
  { row, column }: Pick<TableCell, "row" | "column">,
): Evidence {
  const own = table.cells?.find((one) => one.edition === year && one.row === row && one.column === column);
  return own?.level ?? table.evidence[year]?.level ?? "memory";
}
