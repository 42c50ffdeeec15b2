import { readFileSync } from "node:fs";
import type { Cell, TableFile } from "../../../tables/tools/generator/model.js";

/** Type and meaning of a column, by its name. */
export type Columns = Readonly<Record<string, readonly [type: string, means: string]>>;

/** The columns of the CSV files that are no tables, and those that every table has besides its own. */
export function readColumns(): Columns {
  return JSON.parse(readFileSync(new URL("columns.json", import.meta.url), "utf8")) as Columns;
}

/** The columns of a table, as its own file explains them. */
export function columnsOf(table: TableFile): Columns {
  return Object.fromEntries(
    table.columns.map(({ id, unit, says }, i) => {
      const cells = table.blocks.flatMap(({ rows }) => rows.map((row) => row[i] ?? null));
      const inUnit = ["size", "text", "flag"].includes(unit) ? "" : `, in ${unit}`;
      return [id, [typeOf(cells), `${says.slice(0, 1).toUpperCase()}${says.slice(1)}${inUnit}.`]];
    }),
  );
}

function typeOf(cells: readonly Cell[]): string {
  const filled = cells.filter((cell) => cell !== null);
  if (filled.every((cell) => typeof cell === "boolean")) return "boolean";
  if (filled.every((cell) => Number.isInteger(cell))) return "integer";
  return filled.every((cell) => typeof cell === "number") ? "number" : "string";
}
