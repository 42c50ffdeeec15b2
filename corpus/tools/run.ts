/**
 * Runs the corpus against this library and prints what it found: npm run corpus -- --role main-bonding-jumper.
 * It exits with 1 on any miss and on any fault in the files, with 2 on a filter that it does not know.
 */
import { installationEntriesOf } from "./installations/model.js";
import { readInstallationChecks, validateInstallationChecks } from "./installations/read.js";
import { writeInstallationMisses, writeInstallationSummary } from "./installations/report.js";
import { runInstallations, selectInstallations } from "./installations/run.js";
import { library } from "./runner/library.js";
import { writeMisses } from "./runner/misses.js";
import { type Corpus, entriesOf } from "./runner/model.js";
import { readDocuments } from "./runner/read.js";
import { readFilter, usage } from "./runner/read-filter.js";
import { runChecks } from "./runner/run-checks.js";
import { type Filter, select } from "./runner/select.js";
import { writeSummary } from "./runner/summary.js";
import { validate } from "./runner/validate.js";
import { supplyEntriesOf } from "./supply/model.js";
import { readSupplyChecks, validateSupplyChecks } from "./supply/read.js";
import { writeSupplyMisses, writeSupplySummary } from "./supply/report.js";
import { runSupplies, selectSupplies } from "./supply/run.js";

process.exitCode = main();

function main(): number {
  const { corpus, faults: ofRoles } = validate(readDocuments());
  const { files, faults: ofInstallations } = validateInstallationChecks(readInstallationChecks());
  const supplies = validateSupplyChecks(readSupplyChecks());
  const faults = [...ofRoles, ...ofInstallations, ...supplies.faults];
  if (faults.length > 0) console.error(`The corpus is not valid:\n${faults.join("\n")}\n`);
  if (corpus === null) return 1;
  const filter = filterFor(corpus);
  if (filter === null) return 2;
  const { sources } = corpus;
  const runs = runChecks(select(entriesOf(corpus), filter), library);
  const rows = runInstallations(selectInstallations(installationEntriesOf(files), filter));
  const chosen = runSupplies(selectSupplies(supplyEntriesOf(supplies.files), filter));
  if (runs.length + rows.length + chosen.length === 0) {
    console.error("No check matches the filter.");
    return 1;
  }
  const misses = [
    writeMisses(runs, sources),
    writeInstallationMisses(rows, sources),
    writeSupplyMisses(chosen, sources),
  ].filter(isText);
  const counts = [
    runs.length === 0 ? "" : writeSummary(runs, sources),
    rows.length === 0 ? "" : writeInstallationSummary(rows),
    chosen.length === 0 ? "" : writeSupplySummary(chosen),
  ].filter(isText);
  console.log([...counts, ...misses].join("\n\n"));
  return misses.length === 0 && faults.length === 0 ? 0 : 1;
}

function isText(text: string): boolean {
  return text !== "";
}

function filterFor(corpus: Corpus): Filter | null {
  try {
    return readFilter(process.argv.slice(2), corpus);
  } catch (error) {
    console.error(`${error instanceof Error ? error.message : error}\n${usage}`);
    return null;
  }
}
