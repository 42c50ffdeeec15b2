import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { type EditionYear, editionYears } from "../../../src/edition/edition-year.js";
import { type Evidence, evidenceLevels, weakestEvidence } from "../../../src/edition/evidence.js";
import { cellKey, cellsOf, levelOfCell, type TableCell } from "./cells.js";
import { type ChannelKind, type ChannelsFile, kindsOf } from "./channels.js";
import type { Cell, CellEvidence, TableFile } from "./model.js";

/** What came back of a witness sheet: the cells of one table that somebody read in one copy of an edition. */
export interface WitnessFile {
  readonly format: 1;
  readonly table: string;
  readonly edition: EditionYear;
  readonly printing: string;
  readonly channel: ChannelKind;
  readonly witness: string;
  readonly date: string;
  readonly hash: string;
  /** Values by `row|column`; `null` where a cell could not be read, `-` where the book has none. */
  readonly cells: Readonly<Record<string, string | number | null>>;
  readonly note?: string;
}

/** What a sheet says of one cell. */
export interface Verdict {
  readonly cell: TableCell;
  readonly says: "confirms" | "contradicts" | "unreadable" | "not-given";
  readonly read: string | number | null;
}

/** Holds an answer beside the table, cell by cell; a row of which something was confirmed was found by its label. */
export function verdictsOf(table: TableFile, witness: WitnessFile): readonly Verdict[] {
  const cells = cellsOf(table, witness.edition);
  const verdicts = cells
    .filter(({ isLabel }) => !isLabel)
    .map((cell): Verdict => {
      const read = witness.cells[cellKey(cell)];
      if (read === undefined) return { cell, says: "not-given", read: null };
      if (read === null) return { cell, says: "unreadable", read };
      return { cell, says: isSame(cell, read) ? "confirms" : "contradicts", read };
    });
  const found = new Set(verdicts.filter(({ says }) => says === "confirms").map(({ cell }) => cell.row));
  const labels = cells
    .filter(({ isLabel, row }) => isLabel && found.has(row))
    .map((cell): Verdict => ({ cell, says: "confirms", read: cell.row }));
  return [...labels, ...verdicts];
}

/** Faults of an answer: a table or cells that are not there, and every contradiction. */
export function checkWitness(name: string, witness: WitnessFile, tables: readonly TableFile[]): string[] {
  const table = tables.find(({ id }) => id === witness.table);
  if (table === undefined) return [`${name}: no table ${witness.table}`];
  if (table.number[witness.edition] == null) return [`${name}: ${witness.edition} has no ${witness.table}`];
  const cells = cellsOf(table, witness.edition).filter(({ isLabel }) => !isLabel);
  const known = new Set(cells.map(cellKey));
  const unknown = Object.keys(witness.cells).filter((key) => !known.has(key));
  return [
    ...unknown.map((key) => `${name}: ${witness.table} of ${witness.edition} has no cell ${key}`),
    ...verdictsOf(table, witness)
      .filter(({ says }) => says === "contradicts")
      .map(
        ({ cell, read }) =>
          `${name}: contradicts ${witness.table} of ${witness.edition} at ${cellKey(cell)}: the sheet says ${read}, the table ${cell.value ?? "nothing"}; change the value first, or leave the sheet out`,
      ),
  ];
}

/**
 * A table with the evidence of exactly those cells raised that a witness confirms: what was weaker becomes `single`, and what
 * was read through one kind of channel and now through another becomes `confirmed`.
 */
export function withWitnesses(
  table: TableFile,
  witnesses: readonly WitnessFile[],
  channels: ChannelsFile,
): TableFile {
  const own = witnesses.filter((one) => one.table === table.id);
  const years = editionYears.filter((year) => own.some(({ edition }) => edition === year));
  return years.reduce((so, year) => raised(so, year, own, channels), table);
}

function raised(
  table: TableFile,
  year: EditionYear,
  witnesses: readonly WitnessFile[],
  channels: ChannelsFile,
): TableFile {
  const evidence = table.evidence[year];
  if (evidence === undefined) return table;
  const confirmedBy = new Map<string, readonly ChannelKind[]>();
  for (const witness of witnesses.filter(({ edition }) => edition === year)) {
    for (const { cell, says } of verdictsOf(table, witness)) {
      if (says !== "confirms") continue;
      confirmedBy.set(cellKey(cell), [...(confirmedBy.get(cellKey(cell)) ?? []), witness.channel]);
    }
  }
  const before = (table.cells ?? []).filter(({ edition }) => edition === year);
  const cells = cellsOf(table, year).map(({ row, column }): CellEvidence => {
    const entry = before.find((one) => one.row === row && one.column === column);
    const level = levelOfCell(table, year, { row, column });
    const known = kindsOf(channels, entry?.sources ?? evidence.sources);
    const seen = confirmedBy.get(cellKey({ row, column })) ?? [];
    return { ...entry, edition: year, row, column, level: raise(level, known, seen) };
  });
  const least = weakestEvidence(cells.map(({ level }) => level));
  const level =
    evidenceLevels.indexOf(least) > evidenceLevels.indexOf(evidence.level) ? least : evidence.level;
  return {
    ...table,
    evidence: { ...table.evidence, [year]: { ...evidence, level } },
    cells: [
      ...(table.cells ?? []).filter(({ edition }) => edition !== year),
      ...cells.filter((cell) => cell.level !== level),
    ],
  };
}

/** A level after it was seen through some kinds of channel; `known` are the kinds that a `single` value was read through before. */
export function raise(
  level: Evidence,
  known: readonly ChannelKind[],
  seen: readonly ChannelKind[],
): Evidence {
  if (seen.length === 0 || level === "confirmed") return level;
  const readBefore = level === "single" ? known : [];
  if (new Set([...readBefore, ...seen]).size > 1) return "confirmed";
  return "single";
}

/** The answers that were accepted, by the name of their file. */
export function readWitnesses(tables: string): ReadonlyMap<string, WitnessFile> {
  const folder = join(tables, "witnessed");
  if (!existsSync(folder)) return new Map();
  const names = readdirSync(folder).filter((name) => name.endsWith(".json"));
  return new Map(
    names
      .sort()
      .map((name) => [
        `witnessed/${name}`,
        JSON.parse(readFileSync(join(folder, name), "utf8")) as WitnessFile,
      ]),
  );
}

/** Whether what was read is our value. Books print sizes bare; a dash stands for a cell with nothing in it. */
function isSame({ unit, value }: TableCell, read: string | number): boolean {
  const text = String(read).trim();
  if (value === null) return text === "-";
  if (unit === "size") return sizeOf(text) === value;
  const number = Number(text.replaceAll(",", ""));
  return text !== "" && number === Number(value);
}

function sizeOf(text: string): Cell {
  const bare = /^(\d+|[1-4]\/0)$/.exec(text)?.[1];
  if (bare === undefined) return text;
  return Number(bare) >= smallestKcmil ? `${bare} kcmil` : `${bare} AWG`;
}

/** The gauge ends below it; a bare number from here on is in kcmil. */
const smallestKcmil = 100;
