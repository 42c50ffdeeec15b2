import { areaOf, type ConductorColumn, type ConductorSize } from "../conductor/index.js";
import { placeIn, type Reader, refuse } from "../input/reader.js";
import { endOfRow, ratingTableUnder, supplyTableUnder } from "./amended-tables.js";
import type { EditionYear } from "./edition-year.js";
import type { Amendment, CellAmendment } from "./shape.generated.js";

/** An amended cell with its place in the list of amendments. */
interface ListedCell {
  readonly cell: CellAmendment;
  readonly place: number;
}

/** A row of a column as printed. */
interface PrintedRow {
  readonly end: number | "last";
  readonly size: ConductorSize;
}

/**
 * Refuses amended cells that the edition has no row for, and the first pair of rows in each column of which the larger could require
 * less: with any of the conditions met and any not.
 */
export function refuseCells(list: Reader, year: EditionYear, amendments: readonly Amendment[]): void {
  const listed = amendments.flatMap((cell, place): ListedCell[] =>
    cell.kind === "cell" ? [{ cell, place }] : [],
  );
  const isInTable = ({ cell }: ListedCell): boolean =>
    printedRows(year, cell).some(({ end }) => end === endOfRow(cell.row));
  const columns = new Map<string, ListedCell[]>();
  for (const one of listed) {
    const key = `${one.cell.table} ${one.cell.column}`;
    columns.set(key, [...(columns.get(key) ?? []), one]);
  }
  const clashes = new Set([...columns.values()].map((cells) => clashIn(year, cells)));
  for (const one of listed) {
    if (!isInTable(one)) {
      const expected = `a row of the ${one.cell.table} table of ${year}`;
      refuse(readerOf(list, one, "row"), "unknown-value", expected, "name the row as the table does");
    } else if (clashes.has(one)) {
      const expected = "a size that keeps the table rising";
      refuse(readerOf(list, one, "size"), "out-of-order", expected, "a larger row never requires less");
    }
  }
}

/** The first amended cell of a column that lets a larger row require less. */
function clashIn(year: EditionYear, cells: readonly ListedCell[]): ListedCell | undefined {
  const [first] = cells;
  if (first === undefined) return undefined;
  const rows = printedRows(year, first.cell).map(({ end, size }) => {
    return possibleSizes(
      size,
      cells.filter(({ cell }) => endOfRow(cell.row) === end),
    );
  });
  return rows.map((row, i) => clashBetween(row, rows[i + 1] ?? [])).find((clash) => clash !== undefined);
}

/** What a row may require, and under which conditions it does: one that holds, and those that do not. */
interface PossibleSize {
  readonly area: number;
  readonly by: ListedCell | null;
  readonly when: string;
  readonly unless: readonly string[];
}

const always = "{}";

/** The cells of a row from the last backwards: a later one replaces an earlier one, and one without a condition all before it. */
function possibleSizes(printed: ConductorSize, cells: readonly ListedCell[]): readonly PossibleSize[] {
  const found: PossibleSize[] = [];
  const unless = new Set<string>();
  for (const by of [...cells].reverse()) {
    const when = conditionOf(by.cell);
    if (unless.has(when)) continue;
    found.push({ area: areaOf(by.cell.size), by, when, unless: [...unless] });
    if (when === always) return found;
    unless.add(when);
  }
  return [...found, { area: areaOf(printed), by: null, when: always, unless: [...unless] }];
}

/** The first amended cell of two sizes in neighboring rows that can stand together and do not rise. */
function clashBetween(
  smaller: readonly PossibleSize[],
  larger: readonly PossibleSize[],
): ListedCell | undefined {
  for (const one of smaller) {
    for (const other of larger) {
      const together = !one.unless.includes(other.when) && !other.unless.includes(one.when);
      if (!together || one.area <= other.area) continue;
      const cells = [one.by, other.by].filter((by) => by !== null);
      return cells.reduce((so, by) => (by.place < so.place ? by : so));
    }
  }
  return undefined;
}

function conditionOf({ when = {} }: CellAmendment): string {
  return JSON.stringify(Object.fromEntries(Object.entries(when).sort()));
}

function printedRows(year: EditionYear, { table, column }: CellAmendment): readonly PrintedRow[] {
  if (table === "equipment-grounding") {
    return ratingTableUnder({ year }).rows.map((row) => ({ end: row.through, size: row[column] }));
  }
  const printed = supplyTableUnder(table, { year });
  if (printed === null) return [];
  return [
    ...printed.rows.map((row) => ({ end: row.through.copper, size: row[column] })),
    ...lastRow(printed.last, column),
  ];
}

function lastRow(
  last: Readonly<Record<ConductorColumn, ConductorSize>> | null,
  column: ConductorColumn,
): readonly PrintedRow[] {
  return last === null ? [] : [{ end: "last", size: last[column] }];
}

function readerOf(list: Reader, { cell, place }: ListedCell, key: "row" | "size"): Reader {
  return placeIn(list, [place, key], cell[key]);
}
