import { writeFileSync } from "node:fs";
import { parseArgs } from "node:util";
import { editionYears } from "../../../src/edition/edition-year.js";
import { readAnswer, readTables, type Said } from "./answer.js";
import { sheetOf } from "./sheet.js";

const usage = [
  "npm run witness -- --table <id> --edition <year> --out <file>   writes a sheet to fill in beside the book",
  "npm run witness -- --read <file>                                holds an answer beside the table",
  "npm run witness -- --read <file> --accept                       and stores it, if it contradicts nothing",
];

/** Runs the command on a folder of tables. */
export function witness(folder: string, args: readonly string[]): Said {
  const { values } = parseArgs({
    args: [...args],
    options: {
      table: { type: "string" },
      edition: { type: "string" },
      out: { type: "string" },
      read: { type: "string" },
      accept: { type: "boolean", default: false },
    },
  });
  const { table, edition, out, read, accept } = values;
  if (read !== undefined && table === undefined && out === undefined) return readAnswer(folder, read, accept);
  if (read !== undefined || table === undefined || edition === undefined || out === undefined)
    return { lines: usage, ok: false };
  const year = editionYears.find((one) => one === edition);
  const found = readTables(folder).find(({ id }) => id === table);
  if (year === undefined || found === undefined || found.number[year] == null)
    return { lines: [`there is no table ${table} in the ${edition} edition`, ...usage], ok: false };
  writeFileSync(out, sheetOf(found, year));
  return { lines: [`written: ${out}`], ok: true };
}
