import { type EditionYear, editionYears } from "../../../src/index.js";
import { cellsOf, type TableCell } from "../../../tables/tools/generator/cells.js";
import type { CopiesFile } from "../../../tables/tools/generator/copies.js";
import type { Cell, TableFile } from "../../../tables/tools/generator/model.js";
import type { Sources } from "../../../tables/tools/source.js";
import type { Implementation } from "../runner/answer.js";
import type { Check, Entry } from "../runner/model.js";
import { runChecks } from "../runner/run-checks.js";
import type { SupplyEntry } from "../supply/model.js";
import { runSupplies } from "../supply/run.js";
import { liveTables, writesOf } from "./live-tables.js";
import { sourcesOfCell } from "./own-sources.js";
import { oneSizeOff } from "./steps.js";
import { placeKey, watched, withValue } from "./watch.js";

/** A change of a cell: noticed by an answer whose source states the edition, by one whose source does not, only by a chart, only by what follows from a rule, or not at all. */
export interface Change {
  readonly to: Cell;
  readonly noticed: "by its edition" | "by another edition" | "by a chart" | "by arithmetic" | "not";
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
  /** Checks of what leads to supply conductors; only the table of ampacities is of interest to them. */
  readonly supplies?: readonly SupplyEntry[];
  readonly sources: Sources;
  readonly library: Implementation;
}

/**
 * Every cell of the tables of sizes and ampacities, each edition by itself, changed by one size in the running library. It is
 * noticed only by a check that is met without the change and whose source prints no copy of that cell. An answer that is the source's own, neither disputed nor worked out from a rule, goes before any other.
 * Nothing else is tried: no snapshot, hash, order of rows or generated page.
 */
export function mutateCells(ground: Ground): readonly MutatedCell[] {
  return ground.tables
    .filter(({ table }) => liveTables[table.id] !== undefined)
    .flatMap(({ table, copies }) =>
      editionYears.flatMap((year) => mutateEdition(ground, table, copies, year)),
    );
}

/** A check under one edition, by what it may notice a cell. */
interface Judge {
  readonly source: string;
  /** What a change is noticed by where this check fails. */
  readonly by: Change["noticed"];
  isMet(): boolean;
}

function mutateEdition(
  ground: Ground,
  table: TableFile,
  copies: CopiesFile,
  year: EditionYear,
): readonly MutatedCell[] {
  const live = liveTables[table.id]?.[year];
  if (live == null) return [];
  const judges = judgesOf(ground, year);
  const readers = readersOf(judges, table.id, year);
  return cellsOf(table, year)
    .filter((cell) => isMutable(table, cell))
    .map((cell) => {
      const { row, column, value } = cell;
      const own = sourcesOfCell(cell, copies, ground.sources);
      const places = writesOf(table, year, cell, value).map(({ place }) => placeKey(place));
      const reading = judges.filter(
        (judge) => !own.has(judge.source) && places.some((place) => readers.get(judge)?.has(place)),
      );
      const changes = oneSizeOff(table, year, cell).map((to): Change => {
        const failing = withWrites(live, writesOf(table, year, cell, to), () =>
          reading.find((judge) => !judge.isMet()),
        );
        return { to, noticed: failing?.by ?? "not" };
      });
      return { table: table.id, year, row, column, value, changes, readBy: reading.length };
    });
}

/** The size of a row of ampacities is its name, by which it is found; a cell with nothing in it has no next size. */
export function isMutable(table: TableFile, { isLabel, value }: TableCell): boolean {
  return value !== null && !(isLabel && table.id === "raceway-ampacity");
}

/** The checks that hold under an edition, each for that edition alone, those first that count most. What comes from memory counts nothing. */
function judgesOf({ entries, supplies = [], sources, library }: Ground, year: EditionYear): readonly Judge[] {
  const isOf = ({ check }: Entry | SupplyEntry) => check.holds.includes(year) && check.standing !== "memory";
  const judges = [
    ...entries.filter(isOf).map((entry) => {
      const alone = [{ ...entry, check: { ...entry.check, holds: [year] } }];
      const isMet = () => runChecks(alone, library).every(({ verdict }) => verdict === "met");
      return { source: entry.source, by: noticeOf(entry, year, sources), isMet };
    }),
    ...supplies.filter(isOf).map((entry) => {
      const alone = [{ ...entry, check: { ...entry.check, holds: [year] } }];
      const isMet = () => runSupplies(alone).every(({ verdict }) => verdict === "met");
      return { source: entry.source, by: noticeOf(entry, year, sources), isMet };
    }),
  ];
  return ranks.flatMap((rank) => judges.filter(({ by }) => by === rank));
}

const ranks = ["by its edition", "by another edition", "by a chart", "by arithmetic"] as const;

/** A disputed answer is not the source's own any more, and what follows from the cells themselves is no answer beside them. A chart is the table once more, whoever prints it. */
function noticeOf(
  {
    source,
    check: { standing, stated },
  }: Pick<Entry, "source"> & { readonly check: Pick<Check, "standing" | "stated"> },
  year: EditionYear,
  sources: Sources,
): Change["noticed"] {
  if (standing !== "cited" && standing !== "common-practice") return "by arithmetic";
  if (sources[source]?.chart === true) return "by a chart";
  return stated === year ? "by its edition" : "by another edition";
}

/** Which places of a table each check reads, for those that are met. */
function readersOf(
  judges: readonly Judge[],
  id: string,
  year: EditionYear,
): ReadonlyMap<Judge, ReadonlySet<string>> {
  const byEdition = liveTables[id] ?? {};
  const pairs = judges.flatMap((judge): readonly [Judge, Set<string>][] => {
    const read = new Set<string>();
    const view = watched(byEdition[year], (place) => read.add(place));
    return withValue(byEdition, [year], view, () => judge.isMet()) ? [[judge, read]] : [];
  });
  return new Map(pairs);
}

/** Runs something while some values of the library are others. */
export function withWrites<R>(data: object, writes: ReturnType<typeof writesOf>, run: () => R): R {
  const [first, ...rest] = writes;
  if (first === undefined) return run();
  return withValue(data, first.place, first.value, () => withWrites(data, rest, run));
}
