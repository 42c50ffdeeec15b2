import type { TableCell } from "../../../tables/tools/generator/cells.js";
import type { CopiesFile } from "../../../tables/tools/generator/copies.js";
import type { Sources } from "../../../tables/tools/source.js";

/** The sources that print a cell in a copy of its table, of whatever edition, and every source that repeats or is repeated by one of them. */
export function sourcesOfCell(
  { row, column }: Pick<TableCell, "row" | "column">,
  { copies }: CopiesFile,
  sources: Sources,
): ReadonlySet<string> {
  const printing = copies
    .filter(({ columns, rows }) => {
      const at = columns.indexOf(column);
      const cell = rows.find(([label]) => String(label) === row)?.[at];
      return at >= 0 && cell != null;
    })
    .map(({ source }) => source);
  const originals = printing.flatMap((source) => sources[source]?.copies ?? []);
  const known = new Set([...printing, ...originals]);
  const repeating = Object.entries(sources).filter(([, { copies: of }]) => of !== null && known.has(of));
  return new Set([...known, ...repeating.map(([source]) => source)]);
}
