import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { cellKey } from "../generator/cells.js";
import type { TableFile } from "../generator/model.js";
import { readPrinted, readTable } from "../generator/read-tables.js";
import { readSchemas } from "../generator/schemas.js";
import { checkWitness, type Verdict, verdictsOf, type WitnessFile } from "../generator/witnesses.js";
import { hashOf } from "./canonical.js";

/** What a command says, and whether it succeeded. */
export interface Said {
  readonly lines: readonly string[];
  readonly ok: boolean;
}

/** Every table of the folder. */
export function readTables(folder: string): readonly TableFile[] {
  return readdirSync(folder)
    .filter((name) => name.endsWith(".json"))
    .map((name) => name.replace(".json", ""))
    .filter((id) => "columns" in readPrinted(folder, id))
    .map((id) => readTable(folder, id));
}

/** Reads an answer, holds it beside the table and says what it found; stores it if it is accepted. */
export function readAnswer(folder: string, file: string, accept: boolean): Said {
  const data: unknown = JSON.parse(readFileSync(file, "utf8"));
  const faults = readSchemas(folder)("witness.schema.json", data);
  if (faults.length > 0) return { lines: faults, ok: false };
  const witness = data as WitnessFile;
  const tables = readTables(folder);
  const table = tables.find(({ id }) => id === witness.table);
  const refused = checkWitness(file, witness, tables);
  if (table === undefined || table.number[witness.edition] == null) return { lines: refused, ok: false };
  const verdicts = verdictsOf(table, witness).filter(({ cell }) => !cell.isLabel);
  const lines = [
    ...verdicts.map(say),
    summary(verdicts),
    ...hashLine(table, witness),
    ...noteLine(witness),
    ...refused,
  ];
  if (!accept || refused.length > 0) return { lines, ok: refused.length === 0 };
  const stored = store(folder, witness);
  return { lines: [...lines, stored.line], ok: stored.ok };
}

function say({ cell, says, read }: Verdict): string {
  const found = says === "confirms" || says === "contradicts" ? `: ${read}` : "";
  const ours = says === "contradicts" ? `, the table has ${cell.value ?? "nothing"}` : "";
  return `${says} ${cellKey(cell)}${found}${ours}`;
}

function summary(verdicts: readonly Verdict[]): string {
  const count = (says: Verdict["says"]): number => verdicts.filter((one) => one.says === says).length;
  return `${count("confirms")} confirmed, ${count("contradicts")} contradicted, ${count("unreadable")} unreadable, ${count("not-given")} not given`;
}

function hashLine(table: TableFile, { edition, hash }: WitnessFile): readonly string[] {
  return hash === hashOf(table, edition)
    ? []
    : ["our values were others when the sheet was made; it was compared with those of today"];
}

function noteLine({ note }: WitnessFile): readonly string[] {
  return note === undefined ? [] : [`note of the witness: ${note}`];
}

function store(folder: string, witness: WitnessFile): { readonly line: string; readonly ok: boolean } {
  const { table, edition, channel, witness: by, date } = witness;
  const id = [table, edition, channel, by, date]
    .join("-")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-");
  const path = join(folder, "witnessed", `${id}.json`);
  if (existsSync(path))
    return { line: `tables/witnessed/${id}.json is already there; nothing was written`, ok: false };
  mkdirSync(join(folder, "witnessed"), { recursive: true });
  writeFileSync(path, `${JSON.stringify(witness, null, 2)}\n`);
  return { line: `stored as tables/witnessed/${id}.json; now run "npm run generate"`, ok: true };
}
