import type { CsvCell, Document } from "../document.js";

/**
 * A document as CSV: its rows, each followed by the lines of the title block that it does not have as columns of its own, so that
 * one table says what it is.
 */
export function asCsv({ facts, rows }: Document): string {
  const block = Object.fromEntries(facts.map(({ name, text }) => [columnName(name), text]));
  return rowsToCsv(rows.map((row) => ({ ...row, ...block, ...row })));
}

/** The name of a line as the rows name their columns. */
function columnName(name: string): string {
  const [first = "", ...rest] = name.toLowerCase().split(" ");
  return [first, ...rest.map((word) => `${word.charAt(0).toUpperCase()}${word.slice(1)}`)].join("");
}

/**
 * Writes flat rows as CSV (RFC 4180): a line of column names, then one line for each row, ended by CR LF; cells with a comma, a quote or a
 * line break are quoted. The columns are those of all rows, in the order in which they appear.
 *
 * A spreadsheet computes a text whose first visible character is `=`, `+`, `-` or `@`, in whatever width; such a text, also a column's
 * name, gets an apostrophe before it. Numbers stay numbers. To read texts back, take one apostrophe away where one stands first and
 * nothing but apostrophes and what is not seen lies between it and such a character: a text that itself begins so got a further one.
 */
export function rowsToCsv<Row extends { readonly [Column in keyof Row]: CsvCell }>(
  rows: readonly Row[],
): string {
  const columns = [...new Set(rows.flatMap((row) => Object.keys(row)))] as (keyof Row & string)[];
  if (columns.length === 0) return "";
  const lines = rows.map((row) => columns.map((column) => cellOf(row[column])));
  return [columns.map(cellOf), ...lines].map((cells) => `${cells.join(",")}\r\n`).join("");
}

/** A text that a spreadsheet would compute: spaces, controls and characters without a shape of their own do not stop it. */
const formula =
  /^['\s\p{Z}\p{Cc}\p{Cf}\p{Default_Ignorable_Code_Point}]*[=+\-@\u2212\ufe62\ufe63\ufe66\ufe6b\uff0b\uff0d\uff1d\uff20]/u;
function cellOf(value: CsvCell): string {
  const text = typeof value === "string" && formula.test(value) ? `'${value}` : String(value ?? "");
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
