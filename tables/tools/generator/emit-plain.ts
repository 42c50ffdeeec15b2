import { editionYears } from "../../../src/edition/edition-year.js";
import { blockFor } from "./checks.js";
import { camel, head, literal } from "./emit.js";
import type { Cell, TableFile } from "./model.js";

/** A table that no rule of its own reads: its rows in order, each an object by the ids of the columns. */
export function emitPlainTable(table: TableFile): string {
  const name = camel(table.id);
  const row = `${name.slice(0, 1).toUpperCase()}${name.slice(1)}Row`;
  const everyEdition = editionYears.every((year) => table.number[year] !== null);
  const type = everyEdition ? `PlainTable<${row}>` : `PlainTable<${row}> | null`;
  const blocks = table.blocks.map((block) => {
    const rows = block.rows.map((cells) => `  { ${fields(table, cells)} },`);
    return `const rowsFrom${block.from}: readonly ${row}[] = [\n${rows.join("\n")}\n];`;
  });
  const entries = editionYears.map((year) => `  "${year}": ${entry(table, year)},`);
  const sizes = table.columns.some(({ unit }) => unit === "size");
  return [
    head(table.id),
    sizes ? 'import type { ConductorSize } from "../../conductor/index.js";\n' : "",
    'import type { PlainTable } from "../plain-table.js";\n',
    'import type { ByEdition } from "../supply-area-table.js";\n\n',
    `/** ${table.title}: one row. */\n`,
    `export interface ${row} {\n${table.columns.map((_, i) => member(table, i)).join("\n")}\n}\n\n`,
    `${blocks.join("\n")}\n\n`,
    `export const ${name}: ByEdition<${type}> = {\n${entries.join("\n")}\n};\n`,
  ].join("");
}

function member(table: TableFile, column: number): string {
  const { id, unit, says } = table.columns[column] ?? { id: "", unit: "", says: "" };
  const cells = table.blocks.flatMap(({ rows }) => rows.map((row) => row[column] ?? null));
  const types = [...new Set(cells.map((cell) => typeOf(cell, unit)))].sort();
  const said = `${says.slice(0, 1).toUpperCase()}${says.slice(1)}`;
  const inUnit = ["size", "text", "flag"].includes(unit) ? "" : ` (${unit})`;
  return `  /** ${said}${inUnit}. */\n  readonly ${id}: ${types.join(" | ")};`;
}

function typeOf(cell: Cell, unit: string): string {
  if (cell === null) return "null";
  return unit === "size" ? "ConductorSize" : typeof cell;
}

function fields(table: TableFile, cells: readonly Cell[]): string {
  return table.columns.map(({ id }, i) => `${id}: ${literal(cells[i] ?? null)}`).join(", ");
}

function entry(table: TableFile, year: (typeof editionYears)[number]): string {
  if (table.number[year] === null) return "null";
  const own = (table.cells ?? []).filter((cell) => cell.edition === year);
  const apart = own.map((cell) => `${literal(`${cell.row} ${cell.column}`)}: ${literal(cell.level)}`);
  const rows = `rowsFrom${blockFor(table, year)?.from}`;
  const evidence = literal(table.evidence[year]?.level);
  return `{ number: ${literal(table.number[year])}, rows: ${rows}, evidence: ${evidence}, cells: { ${apart.join(", ")} } }`;
}
