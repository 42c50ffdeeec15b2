/**
 * Reads the code's numbers from the JSON files of the folder above, refuses what breaks their schema or their order, and writes
 * the typed modules that the library imports. With `--check` it writes nothing and fails if a module is stale.
 */
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import { areaReader } from "./generator/areas.js";
import { collect, type Gathered } from "./generator/collect.js";
import { csvFiles } from "./generator/csv.js";
import { checkDebts, collectDebts } from "./generator/debts.js";
import * as emit from "./generator/emit.js";
import { emitPlainTable } from "./generator/emit-plain.js";
import { emitRatingPolicies, emitRatingTable, emitTrayTable } from "./generator/emit-rating.js";
import { emitWithstand } from "./generator/emit-withstand.js";
import { evidenceFiles } from "./generator/evidence-files.js";
import { formatted } from "./generator/format.js";
import type { TableFile } from "./generator/model.js";
import { debtsPage } from "./generator/page-debts.js";

const tables = fileURLToPath(new URL("..", import.meta.url));
const root = join(tables, "..");
const modules = join(root, "src/edition/tables");
const csv = join(tables, "csv");
const evidence = join(tables, "evidence");

try {
  main(process.argv.includes("--check"));
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}

function main(check: boolean): void {
  const gathered = collect(tables);
  const debts = collectDebts(gathered.collected);
  const files = filesOf(gathered, debtsPage(debts, gathered.collected.channels));
  const stale = [...files].filter(([path, text]) => readIfThere(path) !== text).map(([path]) => path);
  if (!check) for (const path of stale) writeFileSync(path, files.get(path) ?? "");
  const behindNothing = [modules, csv, evidence]
    .flatMap((folder) => readdirSync(folder).map((name) => join(folder, name)))
    .filter((path) => !files.has(path));
  const left = [
    ...(check ? stale : []).map((path) => relative(root, path)),
    ...behindNothing.map((path) => `${relative(root, path)} (no table behind it)`),
  ];
  if (left.length > 0) throw new Error(`stale, run "npm run generate":\n${left.join("\n")}`);
  console.log(`${files.size} files ${check ? "are fresh" : "written"}`);
  const grown = checkDebts(debts, gathered.allowed);
  if (grown.length > 0) console.error(grown.join("\n"));
  if (check && grown.length > 0) process.exitCode = 1;
}

/** Everything that is generated, as it is to be, by path. */
function filesOf(
  { collected, unwitnessed, plain }: Gathered,
  unconfirmed: string,
): ReadonlyMap<string, string> {
  const {
    policies,
    ratingPolicies,
    roles,
    sections,
    namedSizes,
    placements,
    withstand,
    withstandLevels,
    readings,
  } = collected;
  const seen = (id: string): TableFile => tableOf(collected.tables, id);
  const conductors = tableOf(unwitnessed, "conductor-properties");
  const areaOf = areaReader(conductors);
  const ofTables = [
    ...["electrode-conductor", "bonding-conductor"].map(
      (id) => [id, emit.emitSupplyAreaTable(tableOf(unwitnessed, id), areaOf, seen(id))] as const,
    ),
    ["raceway-ampacity", emit.emitAmpacityTable(seen("raceway-ampacity"))],
    ["equipment-grounding", emitRatingTable(seen("equipment-grounding"))],
    ["tray-as-conductor", emitTrayTable(seen("tray-as-conductor"))],
    ...plain.map((id) => [id, emitPlainTable(seen(id))] as const),
    ["policies", emit.emitPolicies(policies)],
    ["rating-policies", emitRatingPolicies(ratingPolicies)],
    ["roles", emit.emitRoles(roles)],
    ["sections", emit.emitSections(sections)],
    ["named-sizes", emit.emitNamedSizes(namedSizes)],
    ["placements", emit.emitPlacements(placements)],
    ["short-time-withstand", emitWithstand(withstand, withstandLevels)],
    ["readings", emit.emitReadings(readings)],
  ] as const;
  const texts = [
    [join(root, "src/conductor/sizes.generated.ts"), emit.emitConductors(conductors)],
    [join(root, "src/roles/register.generated.ts"), emit.emitRegister(roles)],
    [join(root, "corpus/tools/files.generated.ts"), emit.emitCheckFiles(roles)],
    ...ofTables.map(([id, text]) => [join(modules, `${id}.generated.ts`), text] as const),
    ...[...csvFiles(collected)].map(([name, text]) => [join(csv, name), text] as const),
    ...[...evidenceFiles(collected)].map(([name, text]) => [join(evidence, name), text] as const),
    [join(tables, "unconfirmed.md"), unconfirmed],
  ] as const;
  return new Map(texts.map(([path, text]) => [path, formatted(path, text)]));
}

function tableOf(all: readonly TableFile[], id: string): TableFile {
  const found = all.find((table) => table.id === id);
  if (found === undefined) throw new Error(`there is no table ${id}`);
  return found;
}

function readIfThere(path: string): string | undefined {
  try {
    return readFileSync(path, "utf8");
  } catch {
    return undefined;
  }
}
