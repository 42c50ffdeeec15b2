import { createHash } from "node:crypto";
import type { EditionYear } from "../../../src/edition/edition-year.js";
import { cellKey, cellsOf } from "../generator/cells.js";
import type { TableFile } from "../generator/model.js";

/** The values of a table in an edition as text: keys in order, no blanks, so that the same values always give the same text. */
export function canonicalJson(table: TableFile, edition: EditionYear): string {
  const cells = cellsOf(table, edition).map((cell) => [cellKey(cell), cell.value] as const);
  const sorted = [...cells].sort(([one], [other]) => (one < other ? -1 : 1));
  return JSON.stringify({ cells: Object.fromEntries(sorted), edition, table: table.id });
}

/** SHA-256 of the values: a sheet carries it in place of the values. */
export function hashOf(table: TableFile, edition: EditionYear): string {
  return createHash("sha256").update(canonicalJson(table, edition)).digest("hex");
}
