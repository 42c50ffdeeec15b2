import { type EditionYear, editionYears } from "../../../src/index.js";
import { cellsOf, type TableCell } from "../../../tables/tools/generator/cells.js";
import type { CopiesFile } from "../../../tables/tools/generator/copies.js";
import type { Cell, TableFile } from "../../../tables/tools/generator/model.js";
import type { Sources } from "../../../tables/tools/source.js";
import type { Implementation } from "../runner/answer.js";
import type { Entry } from "../runner/model.js";
import { runChecks } from "../runner/run-checks.js";
import { liveTables, writesOf } from "./live-tables.js";
import { sourcesOfCell } from "./own-sources.js";
import { oneSizeOff } from "./steps.js";
import { placeKey, watched, withValue } from "./watch.js";

/** A change of a cell: by a check of the edition's own date, by one that holds there too, or not noticed at all. */
export interface Change {
  readonly to: Cell;
  readonly noticed: "by its edition" | "by another edition" | "not";
}

/** What became of one cell of one edition. */
export interface MutatedCell {
  readonly table: string;
  readonly year: EditionYear;
  readonly row: string;
  readonly column: string;
  readonly value: Cell;
  readonly changes: readonly Change[];
  /** How many checks of other sources read the cell on the way to their answer. */
  readonly readBy: number;
}

/** What mutation is run over. */
export interface Ground {
  readonly tables: readonly { readonly table: TableFile; readonly copies: CopiesFile }[];
  readonly entries: readonly Entry[];
  readonly sources: Sources;
  readonly library: Implementation;
}

/**
 * Every cell of the tables of sizes and ampacities, each edition by itself, changed by one size in the running library. It is
 * noticed only by a check that is met without the change, whose source prints no copy of that cell, and whose answer is the source's own: neither disputed nor worked out from a rule.
 * Nothing else is tried: no snapshot, hash, order of rows or generated page.
 */
export function mutateCells(ground: Ground): readonly MutatedCell[] {
  return ground.tables
    .filter(({ table }) => liveTables[table.id] !== undefined)
    .flatMap(({ table, copies }) =>
      editionYears.flatMap((year) => mutateEdition(ground, table, copies, year)),
    );
}

function mutateEdition(
  { entries, sources, library }: Ground,
  table: TableFile,
  copies: CopiesFile,
  year: EditionYear,
): readonly MutatedCell[] {
  const live = liveTables[table.id]?.[year];
  if (live == null) return [];
  const judges = judgesOf(entries, year);
  const readers = readersOf(judges, library, table.id, year);
  return cellsOf(table, year)
    .filter((cell) => isMutable(table, cell))
    .map((cell) => {
      const { row, column, value } = cell;
      const own = sourcesOfCell(cell, copies, sources);
      const places = writesOf(table, year, cell, value).map(({ place }) => placeKey(place));
      const reading = judges.filter(
        (judge) => !own.has(judge.source) && places.some((place) => readers.get(judge)?.has(place)),
      );
      const changes = oneSizeOff(table, year, cell).map((to): Change => {
        const failing = withWrites(live, writesOf(table, year, cell, to), () =>
          reading.find((judge) => runChecks([judge], library).some(({ verdict }) => verdict !== "met")),
        );
        return { to, noticed: failing === undefined ? "not" : byEdition(failing, year) };
      });
      return { table: table.id, year, row, column, value, changes, readBy: reading.length };
    });
}

/** The size of a row of ampacities is its name, by which it is found; a cell with nothing in it has no next size. */
function isMutable(table: TableFile, { isLabel, value }: TableCell): boolean {
  return value !== null && !(isLabel && table.id === "raceway-ampacity");
}

/** The checks that hold under an edition, each for that edition alone; those whose source states it come first. */
function judgesOf(entries: readonly Entry[], year: EditionYear): readonly Entry[] {
  const holding = entries
    .filter(({ check }) => check.holds.includes(year) && counts(check.standing))
    .map((entry) => ({ ...entry, check: { ...entry.check, holds: [year] } }));
  const stating = holding.filter(({ check }) => check.stated === year);
  return [...stating, ...holding.filter(({ check }) => check.stated !== year)];
}

/** A disputed answer is not the source's own any more, memory is no source, and what follows from the cells themselves is no answer beside them. */
function counts(standing: Entry["check"]["standing"]): boolean {
  return standing === "cited" || standing === "common-practice";
}

/** Which places of a table each check reads, for those that are met. */
function readersOf(
  judges: readonly Entry[],
  library: Implementation,
  id: string,
  year: EditionYear,
): ReadonlyMap<Entry, ReadonlySet<string>> {
  const byEdition = liveTables[id] ?? {};
  const pairs = judges.flatMap((judge): readonly [Entry, Set<string>][] => {
    const read = new Set<string>();
    const view = watched(byEdition[year], (place) => read.add(place));
    const runs = withValue(byEdition, [year], view, () => runChecks([judge], library));
    return runs.every(({ verdict }) => verdict === "met") ? [[judge, read]] : [];
  });
  return new Map(pairs);
}

function withWrites<R>(data: object, writes: ReturnType<typeof writesOf>, run: () => R): R {
  const [first, ...rest] = writes;
  if (first === undefined) return run();
  return withValue(data, first.place, first.value, () => withWrites(data, rest, run));
}

function byEdition({ check }: Entry, year: EditionYear): Change["noticed"] {
  return check.stated === year ? "by its edition" : "by another edition";
}
