import { type EditionYear, editionYears } from "../../../src/index.js";
import { cellsOf } from "../../../tables/tools/generator/cells.js";
import type { TableFile } from "../../../tables/tools/generator/model.js";
import { type Decider, deciders, decidingQuestions } from "./deciding-questions.js";
import { liveTables, writesOf } from "./live-tables.js";
import { isMutable, withWrites } from "./mutate.js";
import { oneSizeOff } from "./steps.js";
import { placeKey, watched, withValue } from "./watch.js";

/** What some cell of the table of ampacities decides, by {@link cellKey}; a cell that decides nothing is left out. */
export type Deciding = ReadonlyMap<string, ReadonlySet<Decider>>;

/** A cell by its edition, row and column. */
export function cellKey(year: EditionYear, row: string, column: string): string {
  return `${year} ${row} ${column}`;
}

/**
 * Which cells of the table of ampacities decide a size: each made 5 A larger and 5 A smaller, the least step by which ampacities differ, so that the table
 * stays in order, and every question that reads it put anew.
 */
export function decidingCells(table: TableFile, years: readonly EditionYear[] = editionYears): Deciding {
  return new Map(years.flatMap((year) => decidingIn(table, year)));
}

function decidingIn(
  table: TableFile,
  year: EditionYear,
): readonly (readonly [string, ReadonlySet<Decider>])[] {
  const byEdition = liveTables[table.id] ?? {};
  const live = byEdition[year];
  if (live == null) return [];
  const asked = decidingQuestions(year).map((question) => {
    const reads = new Set<string>();
    const view = watched(live, (place) => reads.add(place));
    const ask = () => ({ before: question.ask(), hungOn: question.hangsOn?.() });
    return { question, reads, ...withValue(byEdition, [year], view, ask) };
  });
  return cellsOf(table, year)
    .filter((cell) => isMutable(table, cell))
    .flatMap((cell) => {
      const [place] = writesOf(table, year, cell, cell.value).map((write) => placeKey(write.place));
      const readers = asked.filter(({ reads }) => place !== undefined && reads.has(place));
      const found = deciders.filter((by) => {
        const own = readers.filter(({ question }) => question.by === by);
        return oneSizeOff(table, year, cell).some((to) =>
          withWrites(live, writesOf(table, year, cell, to), () =>
            own.some(
              ({ question, before, hungOn }) =>
                (hungOn === undefined || question.hangsOn?.() !== hungOn) && question.ask() !== before,
            ),
          ),
        );
      });
      return found.length === 0 ? [] : [[cellKey(year, cell.row, cell.column), new Set(found)] as const];
    });
}
