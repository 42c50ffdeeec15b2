import type { EditionYear } from "../../../src/edition/edition-year.js";
import { rowLabel } from "../../../tables/tools/generator/cells.js";
import type { Cell, TableFile } from "../../../tables/tools/generator/model.js";
import { inWords } from "../in-words.js";
import { editionsOf, markdownTable, rowsOf, shown, span } from "./parts.js";

/** Every table as it stands in each edition, with how surely it is known. */
export function tablesPage(tables: readonly TableFile[]): string {
  return `${[head, ...tables.map(tablePart)].join("\n\n")}\n`;
}

const head = [
  '<!-- Generated from the files of tables/ by "npm run pages -- tables"; do not edit. -->',
  "# Tables",
  "",
  "The values that the library uses, the editions in which they hold, and how surely each edition is known: `memory` (no source), `carried`",
  "(from one neighboring edition), `bracketed` (the same in the nearest earlier and later edition seen), `single` (one channel), `confirmed`",
  "(two channels of different kind). The levels are computed from the copies that were read; [tables/README.md](../tables/README.md#evidence) has",
  "the rule, which holds for the wording behind the rules too. Where a cell differs between editions, each value has its editions beside it. `last` is the open row at",
  "the end of a table.",
].join("\n");

function tablePart(table: TableFile): string {
  const columns = table.columns.map(({ id, unit, says }) => `- \`${id}\` (${unit}): ${says}`);
  return [
    `## ${table.title}`,
    `\`${table.id}\``,
    columns.join("\n"),
    valuesOf(table),
    evidenceOf(table),
    ...cellsApart(table),
  ].join("\n\n");
}

function valuesOf(table: TableFile): string {
  const years = editionsOf(table);
  const newestFirst = [...years].reverse();
  const labels = [...new Set(newestFirst.flatMap((year) => rowsOf(table, year).map(rowLabel)))];
  const rows = labels.map((label) =>
    table.columns.map((_, i) =>
      i === 0
        ? label
        : byValue(years, (year) => rowsOf(table, year).find((row) => rowLabel(row) === label)?.[i]),
    ),
  );
  return markdownTable(
    table.columns.map(({ id }) => inWords(id)),
    rows,
  );
}

/** One value, or each value with its editions. */
function byValue(years: readonly EditionYear[], valueIn: (year: EditionYear) => Cell | undefined): string {
  const values = [...new Set(years.map((year) => shown(valueIn(year))))];
  const [only] = values;
  if (values.length === 1 && only !== undefined) return only;
  return values
    .map((value) => `${value} (${span(years.filter((year) => shown(valueIn(year)) === value))})`)
    .join(", ");
}

function evidenceOf(table: TableFile): string {
  const rows = editionsOf(table).map((year) => {
    const { level, note = "" } = table.evidence[year] ?? {};
    return [year, shown(table.number[year]), level ?? "none", note];
  });
  return markdownTable(["edition", "stands as", "evidence", "note"], rows);
}

function cellsApart(table: TableFile): readonly string[] {
  const cells = table.cells ?? [];
  if (cells.length === 0) return [];
  const rows = cells.map(({ edition, row, column, level, note = "" }) => [edition, row, column, level, note]);
  return [
    "Cells whose evidence differs:",
    markdownTable(["edition", "row", "column", "evidence", "note"], rows),
  ];
}
