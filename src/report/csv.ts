/** What a cell of a row may be; nothing and `null` are empty cells. */
export type CsvCell = string | number | boolean | null | undefined;

/**
 * Writes flat rows as CSV (RFC 4180): a line of column names, then one line for each row, ended by CR LF; cells with a comma, a quote or a
 * line break are quoted. The columns are those of all rows, in the order in which they appear.
 *
 * @param rows - flat objects, for example of {@link sweepSupplyArea}
 * @returns the text; empty for no rows
 *
 * @example
 * ```ts
 * import { rowsToCsv } from "bondmil";
 * rowsToCsv([{ size: "4/0 AWG", note: 'says "four aught", spoken' }]);
 * // => 'size,note\r\n4/0 AWG,"says ""four aught"", spoken"\r\n'
 * ```
 */
export function rowsToCsv<Row extends { readonly [Column in keyof Row]: CsvCell }>(
  rows: readonly Row[],
): string {
  const columns = [...new Set(rows.flatMap((row) => Object.keys(row)))] as (keyof Row & string)[];
  if (columns.length === 0) return "";
  const lines = rows.map((row) => columns.map((column) => cellOf(row[column])));
  return [columns.map(cellOf), ...lines].map((cells) => `${cells.join(",")}\r\n`).join("");
}

function cellOf(value: CsvCell): string {
  const text = value === null || value === undefined ? "" : String(value);
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
