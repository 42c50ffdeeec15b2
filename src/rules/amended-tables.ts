import { areaOf, isConductorSize } from "../conductor/index.js";
import {
  amendmentsInForce,
  type CellAmendment,
  type Citation,
  type Code,
  citeAmendment,
  type RatingTable,
  type SupplyAreaTable,
  type SupplyAreaTableId,
} from "../edition/index.js";

/** A table of supply areas with the cells that amendments in force change. */
export function amendedSupplyTable(
  id: SupplyAreaTableId,
  table: SupplyAreaTable,
  code: Code,
): SupplyAreaTable {
  return cellsOf(code, id).reduce(withSupplyCell, table);
}

/** A table of ratings with the cells that amendments in force change. */
export function amendedRatingTable(table: RatingTable, code: Code): RatingTable {
  return cellsOf(code, "equipment-grounding").reduce(withRatingCell, table);
}

/** Whether a cell amendment names a row of a table of supply areas. */
export function hasSupplyRow(table: SupplyAreaTable, { row }: CellAmendment): boolean {
  return row === "last" ? table.last !== null : placeOf(table, row) !== -1;
}

/** Whether a cell amendment names a row of a table of ratings. */
export function hasRatingRow(table: RatingTable, { row }: CellAmendment): boolean {
  return table.rows.some(({ through }) => through === row);
}

function cellsOf(code: Code, id: CellAmendment["table"]): readonly CellAmendment[] {
  return amendmentsInForce(code, "cell").filter(({ table }) => table === id);
}

function withSupplyCell(table: SupplyAreaTable, amendment: CellAmendment): SupplyAreaTable {
  const { row, column, size } = amendment;
  if (row === "last") {
    if (table.last === null) return table;
    return {
      ...table,
      last: { ...table.last, [column]: size },
      amended: amended(table, `last ${column}`, amendment),
    };
  }
  const place = placeOf(table, row);
  const rows = table.rows.map((one, i) => (i === place ? { ...one, [column]: size } : one));
  return { ...table, rows, amended: amended(table, `${place} ${column}`, amendment) };
}

function withRatingCell(table: RatingTable, amendment: CellAmendment): RatingTable {
  const { row, column, size } = amendment;
  const rows = table.rows.map((one) => (one.through === row ? { ...one, [column]: size } : one));
  return { ...table, rows, amended: amended(table, `${row} ${column}`, amendment) };
}

function amended(
  table: { readonly amended?: Readonly<Record<string, Citation>> },
  key: string,
  amendment: CellAmendment,
): Readonly<Record<string, Citation>> {
  return { ...table.amended, [key]: { section: citeAmendment(amendment), evidence: "single" } };
}

function placeOf(table: SupplyAreaTable, row: string | number): number {
  const area = isConductorSize(row) ? areaOf(row) : Number.parseInt(String(row), 10) * 1000;
  return table.rows.findIndex(({ through }) => through.copper === area);
}
