import { readFileSync } from "node:fs";
import { join } from "node:path";
import { type CopiesFile, type PrintedTable, withCopies } from "./copies.js";
import type { TableFile } from "./model.js";

/** A table of a folder of tables, with the evidence of its cells from the copies beside it. */
export function readTable(folder: string, id: string): TableFile {
  return withCopies(readPrinted(folder, id), readCopies(folder, id));
}

/** A table as its file holds it. */
export function readPrinted(folder: string, id: string): PrintedTable {
  return JSON.parse(readFileSync(join(folder, `${id}.json`), "utf8")) as PrintedTable;
}

/** The copies of a table. */
export function readCopies(folder: string, id: string): CopiesFile {
  return JSON.parse(readFileSync(join(folder, "copies", `${id}.json`), "utf8")) as CopiesFile;
}
