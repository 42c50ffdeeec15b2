import { member, type Reader, readAll, refuse } from "../input/reader.js";

/** What a cell of a row may be; nothing and `null` are empty cells. */
export type CsvCell = string | number | boolean | null | undefined;

/**
 * Writes flat rows as CSV (RFC 4180): a line of column names, then one line for each row, ended by CR LF; cells with a comma, a quote or a
 * line break are quoted. The columns are those of all rows, in the order in which they appear.
 *
 * A spreadsheet computes a text whose first visible character is `=`, `+`, `-` or `@`, in whatever width; such a text, also a column's
 * name, gets an apostrophe before it. Numbers stay numbers. To read texts back, take one apostrophe away where one stands first and
 * nothing but apostrophes and what is not seen lies between it and such a character: a text that itself begins so got a further one.
 *
 * @param rows - flat objects, for example of {@link sweepSupplyArea}
 * @returns the text; empty for no rows
 * @throws {@link InputError} for anything but a list of objects whose members are texts, finite numbers, true, false or nothing
 *
 * @example
 * ```ts
 * import { rowsToCsv } from "bondmil";
 * rowsToCsv([{ size: "4/0 AWG", note: 'says "four aught", spoken' }]);
 * // => 'size,note\r\n4/0 AWG,"says ""four aught"", spoken"\r\n'
 * rowsToCsv([{ id: "-D1", reserve: -6130 }]); // => "id,reserve\r\n'-D1,-6130\r\n"
 * ```
 */
export function rowsToCsv<Row extends { readonly [Column in keyof Row]: CsvCell }>(
  rows: readonly Row[],
): string {
  readAll(rows, (at) => (areRows(at) ? true : undefined));
  const columns = [...new Set(rows.flatMap((row) => Object.keys(row)))] as (keyof Row & string)[];
  if (columns.length === 0) return "";
  const lines = rows.map((row) => columns.map((column) => cellOf(row[column])));
  return [columns.map(cellOf), ...lines].map((cells) => `${cells.join(",")}\r\n`).join("");
}

/** A text that a spreadsheet would compute: spaces, controls and characters without a shape of their own do not stop it. */
const formula =
  /^['\s\p{Z}\p{Cc}\p{Cf}\p{Default_Ignorable_Code_Point}]*[=+\-@\u2212\ufe62\ufe63\ufe66\ufe6b\uff0b\uff0d\uff1d\uff20]/u;
/** Issues that are listed of rows; further ones wait until these are mended. */
const mostIssues = 100;

function areRows(at: Reader): boolean {
  if (!Array.isArray(at.value)) {
    refuse(
      at,
      at.value === undefined ? "missing" : "wrong-type",
      "a list of rows",
      "give a list, even of one row",
    );
    return false;
  }
  for (const [i, row] of at.value.entries()) {
    const place: Reader = { ...at, value: row, path: `[${i}]` };
    if (typeof row !== "object" || row === null || Array.isArray(row)) {
      refuse(place, "wrong-type", "an object", "give each row as an object of cells");
    } else {
      for (const key of Object.keys(row)) isCell(member(place, key));
    }
    if (at.issues.length >= mostIssues) return false;
  }
  return at.issues.length === 0;
}

function isCell(at: Reader): void {
  const { value } = at;
  if (value === null || value === undefined || typeof value === "string" || typeof value === "boolean")
    return;
  if (Number.isFinite(value)) return;
  refuse(at, "wrong-type", "a text, a finite number, true, false or nothing", "write it as one of these");
}

function cellOf(value: CsvCell): string {
  const text = typeof value === "string" && formula.test(value) ? `'${value}` : String(value ?? "");
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
