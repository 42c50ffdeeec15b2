import { type EditionYear, editionYears } from "../../src/edition/edition-year.js";
import { type Marks, useResult } from "../../src/input/given-result.js";
import { member, readAll, readOneOf } from "../../src/input/reader.js";
import type { PrintedTable } from "./generator/copies.js";
import type { Cell } from "./generator/model.js";
import { withOneError } from "./one-error.js";

/** One row of a table: its cells by the ids of the columns. */
export type TableRow = Readonly<Record<string, Cell>>;

/**
 * The rows of a table that are in force in an edition: those of its newest block that is not younger.
 *
 * @param table - a table with columns and blocks
 * @param edition - year of the edition
 * @returns rows in book order, cells by column id in the unit that the column names; none where the edition has no such table
 * @throws `InputError` of `bondmil` for anything but a table and an edition
 *
 * @example
 * ```ts
 * import { bondingConductor, rowsIn } from "bondmil/tables";
 * rowsIn(bondingConductor, "2023")[0];
 * // => { supplyCopperThrough: "2 AWG", supplyAluminumThrough: "1/0 AWG", copper: "8 AWG", aluminum: "6 AWG" }
 * rowsIn(bondingConductor, "2011").length; // => 0
 * ```
 */
export function rowsIn(table: PrintedTable, edition: EditionYear): readonly TableRow[] {
  return withOneError(() => {
    const year = readAll({ edition }, (at) => readOneOf(member(at, "edition"), editionYears));
    return useResult(table, "this entry, a table", tableMarks, (given) => rowsOf(given, year));
  });
}

const tableMarks: Marks<PrintedTable> = { columns: "list", blocks: "list", number: "object" };

function rowsOf({ columns, blocks, number }: PrintedTable, edition: EditionYear): readonly TableRow[] {
  if (number[edition] === null) return [];
  // Years are texts of four digits, so that their order is that of texts.
  const block = blocks.filter(({ from }) => from <= edition).at(-1);
  return (block?.rows ?? []).map((row) =>
    Object.fromEntries(columns.map(({ id }, index) => [id, row[index] ?? null])),
  );
}
