import { type EditionYear, editionYears } from "../../../src/edition/edition-year.js";
import type { Evidence } from "../../../src/edition/evidence.js";
import { cellKey, cellsOf, rowLabel, type TableCell } from "./cells.js";
import { blockFor } from "./checks.js";
import { areaByDefinition, isDefined } from "./definitions.js";
import { known, type Seen, type Witness } from "./ladder.js";
import type { Cell, CellEvidence, TableEvidence, TableFile } from "./model.js";

/** A table as its file holds it: values, and remarks that no copy makes. How sure each cell is comes from the copies. */
export interface PrintedTable extends Omit<TableFile, "evidence" | "cells"> {
  /** What each edition says under the table. */
  readonly notes?: readonly Remark[];
  /** Remarks on single cells. */
  readonly cellNotes?: readonly (Remark & {
    /** The cells. */
    readonly cells: readonly string[];
  })[];
  /** What the values follow from outside the code, and where that stands. */
  readonly definitions?: readonly {
    /** What it says, in our own words. */
    readonly says: string;
    /** Ids of the sources, as in tables/sources.json. */
    readonly sources?: readonly string[];
  }[];
}

/** A remark on an edition of a table, or on some of its cells. */
export interface Remark {
  /** Edition of NFPA 70, by its year. */
  readonly edition: EditionYear;
  /** Stable code of a remark; its words are rendered from it. */
  readonly note: string;
  /** Ids of the sources, as in tables/sources.json. */
  readonly sources?: readonly string[];
}

/** One publication that prints the table, or a part of it, with what it prints. */
export interface Copy extends Witness {
  readonly columns: readonly string[];
  /** Label first; `null` where a cell was not seen, `-` where the copy prints nothing. */
  readonly rows: readonly (readonly (string | number | null)[])[];
  /** Cells in which the copy is known to be wrong, or to differ on purpose. */
  readonly judgments?: readonly { readonly row: string; readonly column: string; readonly why: string }[];
}

/** The copies of one table. */
export interface CopiesFile {
  readonly table: string;
  readonly copies: readonly Copy[];
}

/** What a copy says of one cell of ours. */
type Says = "agrees" | "differs" | "judged" | "not-seen";

/** A table with its evidence: of every cell under every edition, from the copies that print it, by the rule of `known`. */
export function withCopies(printed: PrintedTable, { copies }: CopiesFile): TableFile {
  const { notes = [], cellNotes = [], definitions, ...table } = printed;
  const years = editionYears.filter((year) => table.number[year] !== null);
  const byYear = years.map((year) => ({
    year,
    cells: cellsOf(bare(table), year).map((cell) =>
      evidenceOf(cell, year, copies, definitions !== undefined && isDefined(cell)),
    ),
  }));
  const evidence = byYear.map(({ year, cells }): readonly [EditionYear, TableEvidence] => {
    const level = mostCommon(cells.map((cell) => cell.level));
    const remark = notes.find(({ edition }) => edition === year);
    const used = cells.filter((cell) => cell.level === level).flatMap(({ sources = [] }) => sources);
    const sources = [...new Set([...used, ...(remark?.sources ?? [])])];
    return [year, { level, sources, ...(remark && { note: remark.note }) }];
  });
  const levels = new Map(evidence.map(([year, { level }]) => [year, level]));
  const apart = byYear.flatMap(({ year, cells }) =>
    cells
      .map((cell) => {
        const remark = cellNotes.find((one) => one.edition === year && one.cells.includes(cellKey(cell)));
        const sources = [...new Set([...(cell.sources ?? []), ...(remark?.sources ?? [])])];
        return { ...cell, sources, ...(remark && { note: remark.note }) };
      })
      .filter((cell) => cell.level !== levels.get(year) || cell.note !== undefined),
  );
  return { ...table, evidence: Object.fromEntries(evidence), ...(apart.length > 0 && { cells: apart }) };
}

/** Faults of copies: rows, columns and notes that name nothing, and every cell that differs from ours without a judgment. */
export function checkCopies(
  printed: PrintedTable,
  { table, copies }: CopiesFile,
  sources: Readonly<Record<string, unknown>>,
): readonly string[] {
  if (table !== printed.id) return [`the copies of ${printed.id} name the table ${table}`];
  const keys = new Set(editionYears.flatMap((year) => cellsOf(bare(printed), year).map(cellKey)));
  const unknownNotes = (printed.cellNotes ?? [])
    .flatMap(({ cells }) => cells)
    .filter((key) => !keys.has(key))
    .map((key) => `a note names the unknown cell ${key}`);
  return [...unknownNotes, ...copies.flatMap((copy) => faultsOfCopy(printed, copy, sources))];
}

function faultsOfCopy(
  printed: PrintedTable,
  copy: Copy,
  sources: Readonly<Record<string, unknown>>,
): readonly string[] {
  const at = `${copy.source}:`;
  const unknown = [
    ...[copy.source, ...(copy.datedBy === undefined ? [] : [copy.datedBy])]
      .filter((source) => sources[source] === undefined)
      .map((source) => `${source}: is not in the register of sources`),
    ...copy.columns
      .filter((id) => !printed.columns.some((column) => column.id === id))
      .map((id) => `${at} prints the unknown column ${id}`),
    ...copy.rows
      .filter((row) => row.length !== copy.columns.length)
      .map(([label]) => `${at} row ${label} has ${copy.columns.length} columns`),
  ];
  const beside = editionsBeside(printed, copy);
  const compared = beside.flatMap((year) =>
    cellsOf(bare(printed), year).map((cell) => ({ year, cell, says: saysOf(copy, cell) })),
  );
  const differing = compared
    .filter(({ says }) => says === "differs")
    .map(
      ({ year, cell }) =>
        `${at} contradicts ${printed.id} of ${year} at ${cellKey(cell)}; judge which is right`,
    );
  const labels = new Set(beside.flatMap((year) => (blockFor(bare(printed), year)?.rows ?? []).map(rowLabel)));
  const strangers =
    beside.length === 0
      ? []
      : copy.rows.map(([label]) => String(label)).filter((label) => !labels.has(label));
  const idle = (copy.judgments ?? [])
    .filter(
      (judged) => !compared.some(({ cell, says }) => says === "judged" && cellKey(cell) === cellKey(judged)),
    )
    .filter(() => beside.length > 0)
    .map((judged) => `${at} a judgment on ${cellKey(judged)}, where it prints what we have`);
  return [
    ...unknown,
    ...differing,
    ...strangers.map((label) => `${at} prints the unknown row ${label}`),
    ...idle,
  ];
}

/** The editions of ours beside which a copy is held; none for one from before them, or from before the table had its place. */
function editionsBeside({ number }: PrintedTable, { edition, holds = [] }: Copy): readonly EditionYear[] {
  return editionYears.filter((year) => number[year] !== null && (year === edition || holds.includes(year)));
}

function evidenceOf(
  cell: TableCell,
  year: EditionYear,
  copies: readonly Copy[],
  isDefined: boolean,
): CellEvidence {
  const { row, column } = cell;
  const seen = copies.flatMap((of): readonly Seen[] => {
    const says = saysOf(of, cell);
    return says === "agrees" || says === "differs" ? [{ of, says }] : [];
  });
  return { edition: year, row, column, ...known(seen, year, isDefined) };
}

function saysOf(copy: Copy, cell: TableCell): Says {
  const at = copy.columns.indexOf(cell.column);
  const printed = copy.rows.find(([label]) => String(label) === cell.row)?.[at] ?? null;
  if (at < 0 || printed === null) return "not-seen";
  if (isSame(cell.isLabel ? cell.row : cell.value, printed) || (printed === "-" && isNamedArea(cell)))
    return "agrees";
  const judged = copy.judgments?.some(({ row, column }) => row === cell.row && column === cell.column);
  return judged === true ? "judged" : "differs";
}

function isSame(value: Cell, printed: string | number): boolean {
  return value === null ? printed === "-" : String(value) === String(printed);
}

/** The book prints a dash for an area that is the name of its size. */
function isNamedArea({ row, value, unit }: TableCell): boolean {
  return unit === "circular mils" && row.endsWith(" kcmil") && areaByDefinition(row) === value;
}

function mostCommon(levels: readonly Evidence[]): Evidence {
  const counts = new Map<Evidence, number>();
  for (const level of levels) counts.set(level, (counts.get(level) ?? 0) + 1);
  const [first] = [...counts].sort(([, one], [, other]) => other - one);
  return first?.[0] ?? "memory";
}

/** The table without evidence, for what reads values only. */
function bare(table: PrintedTable | Omit<TableFile, "evidence">): TableFile {
  return { ...table, evidence: {} } as TableFile;
}
