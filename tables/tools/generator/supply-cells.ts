import type { EditionYear } from "../../../src/edition/edition-year.js";
import { type Evidence, weakestEvidence } from "../../../src/edition/evidence.js";
import { levelOfCell, rowLabel } from "./cells.js";
import { blockFor } from "./checks.js";
import type { Cell, TableFile } from "./model.js";

const bounds = ["supplyCopperThrough", "supplyAluminumThrough"] as const;

/**
 * Evidence of the cells of a table of supply areas, by "place of the row, column", where it differs from that of the table as its
 * file holds it. A row is as sure as the size that it requires and the ends of itself and of the row before, between which it holds.
 */
export function supplyCells(
  table: TableFile,
  seen: TableFile,
  year: EditionYear,
): Readonly<Record<string, Evidence>> {
  const rows = blockFor(table, year)?.rows ?? [];
  const cells = rows.flatMap((row, i) =>
    ["copper", "aluminum"].flatMap((column): readonly [string, Evidence][] => {
      if (row[table.columns.findIndex(({ id }) => id === column)] == null) return [];
      const ends = [rows[i - 1], row[0] === null ? undefined : row];
      const level = weakestEvidence([
        levelOfCell(seen, year, { row: rowLabel(row), column }),
        ...ends.flatMap((end) => endLevels(seen, year, end)),
      ]);
      return [[`${row[0] === null ? "last" : i} ${column}`, level]];
    }),
  );
  return Object.fromEntries(cells.filter(([, level]) => level !== table.evidence[year]?.level));
}

function endLevels(
  seen: TableFile,
  year: EditionYear,
  end: readonly Cell[] | undefined,
): readonly Evidence[] {
  if (end === undefined) return [];
  return bounds.map((column) => levelOfCell(seen, year, { row: rowLabel(end), column }));
}
