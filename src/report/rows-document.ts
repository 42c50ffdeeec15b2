import { editionYears } from "../edition/index.js";
import { member, placeIn, type Reader, readAll, refuse } from "../input/reader.js";
import { writtenArea } from "../units/area.js";
import type { CsvCell, Document, DocumentRow } from "./document.js";
import { type DocumentOptions, framed, readOptions } from "./frame.js";
import { valueWords } from "./words/value-words.js";

/**
 * Makes a document of flat rows, for example of a sweep: one table, whose columns are those of all rows in the order in which they
 * appear.
 *
 * @param rows - flat objects, for example of {@link sweep}
 * @param options - the title, who prepared it, the date
 * @returns a document for {@link render}; its rows are these, untouched
 * @throws {@link InputError} for anything but a list of objects whose members are texts, finite numbers, true, false or nothing
 *
 * @example
 * ```ts
 * import { render, rowsDocument } from "bondmil";
 * const document = rowsDocument([{ size: "4/0 AWG", note: "=A1+A2", reserve: -6130 }]);
 * render(document, { as: "csv" }).split("\r\n")[1]?.startsWith("4/0 AWG,'=A1+A2,-6130,bondmil"); // => true
 * ```
 */
export function rowsDocument<Row extends { readonly [Column in keyof Row]: CsvCell }>(
  rows: readonly Row[],
  options: DocumentOptions = {},
): Document {
  const own = readOptions(options);
  readAll(rows, (at) => (areRows(at) ? true : undefined));
  const given = rows.map((row) => ({ ...row }) as DocumentRow);
  const columns = [...new Set(given.flatMap((row) => Object.keys(row)))];
  const named = new Set(given.map(({ edition }) => edition));
  const title = "Rows";
  return framed(
    {
      title,
      editions: editionYears.filter((year) => named.has(year)),
      parts: [
        {
          kind: "table",
          of: columns.length > mostColumns ? "records" : "grid",
          head: columns.map(columnWords),
          rows: given.map((row) => columns.map((column) => cellWords(column, row[column]))),
        },
      ],
      rows: given,
    },
    own,
  );
}

/** More stand one below the other where there is too little width. */
const mostColumns = 8;

/** `supplyArea` as it is read: supply area. */
function columnWords(column: string): string {
  return column.replace(/(?<=[a-z])[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
}

function cellWords(column: string, value: CsvCell): string {
  if (typeof value === "number" && /area$/i.test(column)) return writtenArea(value);
  return valueWords(column, `${value ?? ""}`);
}

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
    const place = placeIn(at, [i], row);
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
