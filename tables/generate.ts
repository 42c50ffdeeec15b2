/**
 * Reads the code's numbers from the JSON files of this folder, refuses what breaks their schema or their order, and writes
 * the typed modules that the library imports. With `--check` it writes nothing and fails if a module is stale.
 */
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import { Ajv2020 } from "ajv/dist/2020.js";
import { unanswered, unfilledPlaces } from "./generator/answers.js";
import { areaReader } from "./generator/areas.js";
import { type ChannelsFile, checkChannels } from "./generator/channels.js";
import {
  checkAnswers,
  checkPlacements,
  checkPolicies,
  checkReadings,
  checkRising,
  checkTable,
} from "./generator/checks.js";
import type { Collected } from "./generator/collected.js";
import { type CopiesFile, checkCopies, type PrintedTable, withCopies } from "./generator/copies.js";
import { csvFiles } from "./generator/csv.js";
import { checkDebts, collectDebts, type DebtsFile } from "./generator/debts.js";
import * as emit from "./generator/emit.js";
import { emitRatingPolicies, emitRatingTable, emitTrayTable } from "./generator/emit-rating.js";
import { checkWithstand, emitWithstand } from "./generator/emit-withstand.js";
import { formatted } from "./generator/format.js";
import type {
  NamedSizesFile,
  PlacementsFile,
  PoliciesFile,
  ReadingsFile,
  RolesFile,
  SectionsFile,
  TableFile,
  WithstandFile,
} from "./generator/model.js";
import { debtsPage } from "./generator/page-debts.js";
import { editionsPage } from "./generator/page-editions.js";
import { tablesPage } from "./generator/page-tables.js";
import { readingsPage } from "./generator/pages.js";
import { checkWitness, readWitnesses, withWitnesses } from "./generator/witnesses.js";

const here = fileURLToPath(new URL(".", import.meta.url));
const modules = join(here, "../src/edition/tables");
const csv = join(here, "csv");
const faults: string[] = [];
const toFill: string[] = [];

function read<T>(name: string): T {
  const data = JSON.parse(readFileSync(join(here, `${name}.json`), "utf8")) as T & { $schema: string };
  const { $schema, ...content } = data;
  toFill.push(...unfilledPlaces(content, name));
  note(name, [...schemaFaults($schema, data), ...unanswered(content)]);
  return data;
}

/** A table, held against the copies beside it. */
function readTable(name: string): TableFile {
  const printed = read<PrintedTable>(name);
  const file = `copies/${name}`;
  const copies = JSON.parse(readFileSync(join(here, `${file}.json`), "utf8")) as CopiesFile;
  note(file, [
    ...schemaFaults("schema/copies.schema.json", copies),
    ...checkCopies(printed, copies, sources),
  ]);
  return withCopies(printed, copies);
}

function schemaFaults(path: string, data: unknown): readonly string[] {
  const schema = JSON.parse(readFileSync(join(here, path), "utf8")) as object;
  const ajv = new Ajv2020({ allErrors: true, allowUnionTypes: true });
  return ajv.validate(schema, data)
    ? []
    : (ajv.errors ?? []).map(({ instancePath, message }) => `${instancePath}: ${message}`);
}

function note(name: string, found: readonly string[]): void {
  faults.push(...found.map((fault) => `${name}: ${fault}`));
}

const sources = JSON.parse(readFileSync(join(here, "sources.json"), "utf8")) as Readonly<
  Record<string, unknown>
>;
const conductors = readTable("conductor-properties");
const supplyAreaTables = ["electrode-conductor", "bonding-conductor"].map(readTable);
const ampacity = readTable("raceway-ampacity");
const ratings = readTable("equipment-grounding");
const trays = readTable("tray-as-conductor");
const policies = read<PoliciesFile>("policies");
const ratingPolicies = read<PoliciesFile>("rating-policies");
const roles = read<RolesFile>("roles");
const readings = read<ReadingsFile>("readings");
const sections = read<SectionsFile>("sections");
const placements = read<PlacementsFile>("placements");
const namedSizes = read<NamedSizesFile>("named-sizes");
const withstand = read<WithstandFile>("short-time-withstand");
const channels = read<ChannelsFile>("channels");
const allowed = read<DebtsFile>("debts");
const witnesses = readWitnesses(here);
stopAtUnfilled();

const areaOf = areaReader(conductors);
const cellArea = (cell: string | number): number => areaOf(String(cell));

const tables = [...supplyAreaTables, ratings, trays, ampacity, conductors];
for (const table of tables) note(table.id, checkTable(table));
note(conductors.id, checkRising(conductors, 1, Number));
for (const table of supplyAreaTables) {
  for (const column of [0, 1, 2, 3]) note(table.id, checkRising(table, column, cellArea));
}
note(ampacity.id, checkRising(ampacity, 0, cellArea));
for (const column of [1, 2, 3, 4, 5, 6]) note(ampacity.id, checkRising(ampacity, column, Number));
for (const table of [ratings, trays]) note(table.id, checkRising(table, 0, Number));
note(ratings.id, checkRising(ratings, 1, cellArea));
note(ratings.id, checkRising(ratings, 2, cellArea, "may-be-alike"));
for (const column of [1, 2, 3, 4]) note(trays.id, checkRising(trays, column, Number, "may-be-alike"));
note("policies", checkPolicies(policies, supplyAreaTables));
note("rating-policies", checkAnswers(ratingPolicies));
note(
  "readings",
  checkReadings(readings, {
    policies: { ...policies.policies, ...ratingPolicies.policies },
  }),
);
note("placements", checkPlacements(placements, sections));
note("short-time-withstand", checkWithstand(withstand));
note("channels", checkChannels(channels, sources));
for (const [name, witness] of witnesses) {
  note(name, schemaFaults("schema/witness.schema.json", witness));
  faults.push(...checkWitness(name, witness, tables));
}

if (faults.length > 0) {
  console.error(faults.join("\n"));
  process.exit(1);
}

const seen = (table: TableFile): TableFile => withWitnesses(table, [...witnesses.values()], channels);
const collected: Collected = {
  tables: tables.map(seen),
  policies,
  ratingPolicies,
  sections,
  namedSizes,
  placements,
  readings,
  roles,
  withstand,
  channels,
};
const debts = collectDebts(collected);

const files = new Map([
  [join(here, "../src/conductor/sizes.generated.ts"), emit.emitConductors(conductors)],
  ...supplyAreaTables.map(
    (table) =>
      [
        join(modules, `${table.id}.generated.ts`),
        emit.emitSupplyAreaTable(table, areaOf, seen(table)),
      ] as const,
  ),
  [join(modules, `${ampacity.id}.generated.ts`), emit.emitAmpacityTable(seen(ampacity))],
  [join(modules, `${ratings.id}.generated.ts`), emitRatingTable(seen(ratings))],
  [join(modules, `${trays.id}.generated.ts`), emitTrayTable(seen(trays))],
  [join(modules, "policies.generated.ts"), emit.emitPolicies(policies)],
  [join(modules, "rating-policies.generated.ts"), emitRatingPolicies(ratingPolicies)],
  [join(modules, "roles.generated.ts"), emit.emitRoles(roles)],
  [join(modules, "sections.generated.ts"), emit.emitSections(sections)],
  [join(modules, "named-sizes.generated.ts"), emit.emitNamedSizes(namedSizes)],
  [join(modules, "placements.generated.ts"), emit.emitPlacements(placements)],
  [join(modules, "short-time-withstand.generated.ts"), emitWithstand(withstand)],
  [join(here, "../docs/readings.md"), readingsPage(readings)],
  [join(here, "../docs/tables.md"), tablesPage(collected.tables)],
  [join(here, "../docs/editions.md"), editionsPage(collected)],
  [join(here, "unconfirmed.md"), debtsPage(debts, channels)],
  [join(modules, "readings.generated.ts"), emit.emitReadings(readings)],
  ...[...csvFiles(collected)].map(([name, text]) => [join(csv, name), text] as const),
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
const written = [modules, csv].flatMap((folder) => readdirSync(folder).map((name) => join(folder, name)));
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
const grown = checkDebts(debts, allowed);
if (grown.length > 0) {
  console.error(grown.join("\n"));
  if (check) process.exit(1);
}

/** What a scaffold left open breaks the schemas too; the list of what to fill says it shorter. */
function stopAtUnfilled(): void {
  if (toFill.length === 0) return;
  console.error(`to be read in the edition and filled:\n${toFill.join("\n")}`);
  process.exit(1);
}

function readIfThere(path: string): string | undefined {
  try {
    return readFileSync(path, "utf8");
  } catch {
    return undefined;
  }
}
