import { readdirSync, readFileSync } from "node:fs";
import { parse } from "csv-parse/sync";
import initSqlJs, { type Database, type SqlValue } from "sql.js";

const folder = new URL("./", import.meta.url);
const tables = new URL("../../../tables/csv/", import.meta.url);

/** A row of an answer, in the order in which the query names its columns. */
export type SqlRow = readonly SqlValue[];

/** One phase of one set of a listed supply: which supply, which set, how many such sets, which phase, its size and metal. */
export type PhaseOfSet = readonly [number, number, number, number, string, "copper" | "aluminum"];

/** A database in memory with the CSV tables as they are, all text, the listed supplies, and the views of this folder upon them. */
export async function openDatabase(phases: readonly PhaseOfSet[]): Promise<Database> {
  const { Database } = await initSqlJs();
  const database = new Database();
  for (const name of readdirSync(tables).sort()) loadTable(database, name);
  fill(database, "phase_of_set", ["supply", "setNumber", "count", "phase", "size", "metal"], phases);
  for (const name of sqlFiles()) database.exec(readFileSync(new URL(name, folder), "utf8"));
  return database;
}

/** Every row that a query gives, one after the other. */
export function* rowsOf(database: Database, sql: string): Generator<SqlRow> {
  const statement = database.prepare(sql);
  try {
    while (statement.step()) yield statement.get();
  } finally {
    statement.free();
  }
}

/** Writes rows into a new table. */
function fill(database: Database, table: string, columns: readonly string[], rows: readonly SqlRow[]): void {
  database.exec(`create table ${table} (${columns.join(", ")})`);
  const statement = database.prepare(`insert into ${table} values (${columns.map(() => "?").join(", ")})`);
  database.exec("begin");
  for (const row of rows) statement.run([...row]);
  database.exec("commit");
  statement.free();
}

function sqlFiles(): readonly string[] {
  return readdirSync(folder)
    .filter((name) => name.endsWith(".sql"))
    .sort();
}

/** An empty cell is nothing; everything else stays text until a view says what it is. */
function loadTable(database: Database, name: string): void {
  const [columns = [], ...rows] = parse(readFileSync(new URL(name, tables), "utf8")) as string[][];
  const table = name.replace(".csv", "").replaceAll("-", "_");
  const quoted = columns.map((column) => `"${column}" text`);
  fill(
    database,
    table,
    quoted,
    rows.map((cells) => cells.map((cell) => (cell === "" ? null : cell))),
  );
}
