/**
 * Runs the corpus against this library and prints what it found: npm run corpus -- --role main-bonding-jumper.
 * It exits with 1 on any miss and on any fault in the files.
 */
import { parseArgs } from "node:util";
import { library } from "./runner/library.js";
import { writeMisses } from "./runner/misses.js";
import { entriesOf } from "./runner/model.js";
import { readDocuments } from "./runner/read.js";
import { runChecks } from "./runner/run-checks.js";
import { type Filter, select } from "./runner/select.js";
import { writeSummary } from "./runner/summary.js";
import { validate } from "./runner/validate.js";

process.exitCode = main();

function main(): number {
  const filter = readFilter();
  if (filter === null) return 2;
  const { corpus, faults } = validate(readDocuments());
  if (faults.length > 0) console.error(`The corpus is not valid:\n${faults.join("\n")}\n`);
  if (corpus === null) return 1;
  const runs = runChecks(select(entriesOf(corpus), filter), library);
  if (runs.length === 0) {
    console.error("No check matches the filter.");
    return 1;
  }
  console.log(writeSummary(runs, corpus.sources));
  const misses = writeMisses(runs, corpus.sources);
  if (misses !== "") console.log(`\n${misses}`);
  return misses === "" && faults.length === 0 ? 0 : 1;
}

function readFilter(): Filter | null {
  const text = { type: "string" } as const;
  try {
    return parseArgs({ options: { role: text, source: text, flag: text, edition: text } }).values;
  } catch (error) {
    console.error(`${error instanceof Error ? error.message : error}
usage: npm run corpus -- [--role ROLE] [--source ID] [--flag FLAG] [--edition YEAR]`);
    return null;
  }
}
