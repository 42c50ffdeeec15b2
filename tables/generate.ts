/**
 * Reads the code's numbers from the JSON files of this folder, refuses what breaks their schema or their order, and writes
 * the typed modules that the library imports. With `--check` it writes nothing and fails if a module is stale.
 */
import { spawnSync } from "node:child_process";
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import { Ajv2020 } from "ajv/dist/2020.js";
import { areaReader } from "./generator/areas.js";
import {
  checkPlacements,
  checkPolicies,
  checkReadings,
  checkRising,
  checkTable,
} from "./generator/checks.js";
import * as emit from "./generator/emit.js";
import type {
  PlacementsFile,
  PoliciesFile,
  ReadingsFile,
  RolesFile,
  SectionsFile,
  TableFile,
} from "./generator/model.js";
import { readingsPage } from "./generator/pages.js";

const here = fileURLToPath(new URL(".", import.meta.url));
const modules = join(here, "../src/edition/tables");
const faults: string[] = [];

function read<T>(name: string): T {
  const data = JSON.parse(readFileSync(join(here, `${name}.json`), "utf8")) as T & { $schema: string };
  const schema = JSON.parse(readFileSync(join(here, data.$schema), "utf8")) as object;
  const ajv = new Ajv2020({ allErrors: true, allowUnionTypes: true });
  if (!ajv.validate(schema, data)) {
    faults.push(...(ajv.errors ?? []).map((error) => `${name}${error.instancePath}: ${error.message}`));
  }
  return data;
}

function note(name: string, found: readonly string[]): void {
  faults.push(...found.map((fault) => `${name}: ${fault}`));
}

const conductors = read<TableFile>("conductor-properties");
const supplyAreaTables = ["electrode-conductor", "bonding-conductor"].map((name) => read<TableFile>(name));
const ampacity = read<TableFile>("raceway-ampacity");
const policies = read<PoliciesFile>("policies");
const roles = read<RolesFile>("roles");
const readings = read<ReadingsFile>("readings");
const sections = read<SectionsFile>("sections");
const placements = read<PlacementsFile>("placements");
const areaOf = areaReader(conductors);
const cellArea = (cell: string | number): number => areaOf(String(cell));

for (const table of [conductors, ...supplyAreaTables, ampacity]) note(table.id, checkTable(table));
note(conductors.id, checkRising(conductors, 1, Number));
for (const table of supplyAreaTables) {
  for (const column of [0, 1, 2, 3]) note(table.id, checkRising(table, column, cellArea));
}
note(ampacity.id, checkRising(ampacity, 0, cellArea));
for (const column of [1, 2, 3, 4, 5, 6]) note(ampacity.id, checkRising(ampacity, column, Number));
note("policies", checkPolicies(policies, supplyAreaTables));
note("readings", checkReadings(readings, policies));
note("placements", checkPlacements(placements, sections));

if (faults.length > 0) {
  console.error(faults.join("\n"));
  process.exit(1);
}

const files = new Map([
  [join(here, "../src/conductor/sizes.generated.ts"), emit.emitConductors(conductors)],
  ...supplyAreaTables.map(
    (table) => [join(modules, `${table.id}.generated.ts`), emit.emitSupplyAreaTable(table, areaOf)] as const,
  ),
  [join(modules, `${ampacity.id}.generated.ts`), emit.emitAmpacityTable(ampacity)],
  [join(modules, "policies.generated.ts"), emit.emitPolicies(policies)],
  [join(modules, "roles.generated.ts"), emit.emitRoles(roles)],
  [join(modules, "sections.generated.ts"), emit.emitSections(sections)],
  [join(modules, "placements.generated.ts"), emit.emitPlacements(placements)],
  [join(here, "../docs/readings.md"), readingsPage(readings)],
  [join(modules, "readings.generated.ts"), emit.emitReadings(readings)],
]);

const check = process.argv.includes("--check");
const stale: string[] = [];
for (const [path, text] of files) {
  const wanted = formatted(path, text);
  if (check) {
    if (readIfThere(path) !== wanted) stale.push(relative(join(here, ".."), path));
  } else {
    writeFileSync(path, wanted);
  }
}
const written = readdirSync(modules).map((name) => join(modules, name));
stale.push(
  ...written
    .filter((path) => !files.has(path))
    .map((path) => `${relative(join(here, ".."), path)} (no table behind it)`),
);
if (stale.length > 0) {
  console.error(`stale, run "npm run generate":\n${stale.join("\n")}`);
  process.exit(1);
}
console.log(`${files.size} files ${check ? "are fresh" : "written"}`);

function readIfThere(path: string): string | undefined {
  try {
    return readFileSync(path, "utf8");
  } catch {
    return undefined;
  }
}

function formatted(path: string, text: string): string {
  if (path.endsWith(".md")) return text;
  const biome = join(here, "../node_modules/@biomejs/biome/bin/biome");
  const run = spawnSync(process.execPath, [biome, "format", `--stdin-file-path=${path}`], {
    input: text,
    encoding: "utf8",
  });
  if (run.status !== 0) throw new Error(`formatting failed: ${run.stderr}`);
  return run.stdout;
}
