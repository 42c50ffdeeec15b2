import { readFileSync } from "node:fs";
import { join } from "node:path";
import { unanswered, unfilledPlaces } from "./answers.js";
import { areaReader } from "./areas.js";
import {
  namedSizesByEdition,
  placementsByEdition,
  policiesByEdition,
  rolesByEdition,
  sectionsByEdition,
} from "./by-edition.js";
import { type ChannelsFile, checkChannels } from "./channels.js";
import {
  checkEntries,
  checkOrder,
  checkPlacements,
  checkPolicies,
  checkReadings,
  checkRising,
  checkTable,
  checkTopics,
} from "./checks.js";
import type { Collected } from "./collected.js";
import { type CopiesFile, checkCopies, type PrintedTable, withCopies } from "./copies.js";
import type { DebtsFile } from "./debts.js";
import { checkWithstand } from "./emit-withstand.js";
import { checkExtracts, levelsOf, passagesOf, readExtracts } from "./extracts.js";
import type {
  FromEdition,
  NamedSizesFile,
  PlacementsFile,
  PoliciesFile,
  ReadingsFile,
  RolesFile,
  SectionsFile,
  TableFile,
} from "./model.js";
import { plainTables } from "./plain-tables.js";
import { readSchemas } from "./schemas.js";
import { statementsOf } from "./statements.js";
import type { WithstandFile } from "./withstand-file.js";
import { withstandLevels } from "./withstand-levels.js";
import { checkWitness, readWitnesses, withWitnesses } from "./witnesses.js";

/** What the files of a folder of tables hold, after every check. */
export interface Gathered {
  readonly collected: Collected;
  /** The tables without what witnesses confirmed, in the same order. */
  readonly unwitnessed: readonly TableFile[];
  /** Ids of the tables that no rule of their own reads. */
  readonly plain: readonly string[];
  readonly allowed: DebtsFile;
}

/** Reads and checks a folder of tables. It throws with every fault, a line each. */
export function collect(folder: string): Gathered {
  const schemaFaults = readSchemas(folder);
  const faults: string[] = [];
  const toFill: string[] = [];
  const note = (name: string, found: readonly string[]): void => {
    faults.push(...found.map((fault) => `${name}: ${fault}`));
  };
  const parse = <T>(name: string): T => JSON.parse(readFileSync(join(folder, `${name}.json`), "utf8")) as T;
  const read = <T>(name: string): T => {
    const data = parse<T & { readonly $schema: string }>(name);
    const { $schema, ...content } = data;
    toFill.push(...unfilledPlaces(content, name));
    note(name, [...schemaFaults($schema, data), ...unanswered(content)]);
    return data;
  };
  const sources = parse<Readonly<Record<string, unknown>>>("sources");
  /** A table, held against the copies beside it. */
  const readTable = (name: string): TableFile => {
    const printed = read<PrintedTable>(name);
    const copies = parse<CopiesFile>(`copies/${name}`);
    note(`copies/${name}`, [
      ...schemaFaults("copies.schema.json", copies),
      ...checkCopies(printed, copies, sources),
    ]);
    return withCopies(printed, copies);
  };

  const conductors = readTable("conductor-properties");
  const supplyAreaTables = ["electrode-conductor", "bonding-conductor"].map(readTable);
  const ampacity = readTable("raceway-ampacity");
  const ratings = readTable("equipment-grounding");
  const trays = readTable("tray-as-conductor");
  const plain = plainTables(folder).map(readTable);
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
  const witnesses = readWitnesses(folder);
  const extracts = readExtracts(folder);
  for (const [name, file] of extracts) note(name, schemaFaults("extracts.schema.json", file));
  // What a scaffold left open breaks the schemas too; the list of what to fill says it shorter.
  if (toFill.length > 0) throw new Error(`to be read in the edition and filled:\n${toFill.join("\n")}`);
  stopAt(faults);

  const areaOf = areaReader(conductors);
  const cellArea = (cell: string | number): number => areaOf(String(cell));
  const tables = [...supplyAreaTables, ratings, trays, ampacity, conductors, ...plain];
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
  for (const table of plain) note(table.id, checkOrder(table, areaOf));

  note("policies", checkEntries(policies.policies));
  note("rating-policies", checkEntries(ratingPolicies.policies));
  note("sections", checkEntries(entriesOf(sections.topics, ({ sections: own }) => own)));
  note("sections", checkTopics(sections, tables));
  note("named-sizes", checkEntries(entriesOf(namedSizes.sizes, ({ values }) => values)));
  note("placements", checkEntries(entriesOf(placements.facts, ({ values }) => values)));
  note("roles", checkEntries(entriesOf(roles.roles, ({ names }) => names)));
  note("placements", checkPlacements(placements, sections));
  note("short-time-withstand", checkWithstand(withstand));
  note("channels", checkChannels(channels, sources));
  for (const [name, witness] of witnesses) {
    note(name, schemaFaults("witness.schema.json", witness));
    faults.push(...checkWitness(name, witness, tables));
  }
  stopAt(faults);

  const statements = statementsOf({
    policies,
    "rating-policies": ratingPolicies,
    sections,
    placements,
    "named-sizes": namedSizes,
    "short-time-withstand": withstand,
  });
  for (const [name, file] of extracts) note(name, checkExtracts(file, statements, sources, channels));
  stopAt(faults);
  const levels = levelsOf(statements, extracts.values());
  const witnessed = tables.map((table) => withWitnesses(table, [...witnesses.values()], channels));
  const collected: Collected = {
    tables: witnessed,
    policies: policiesByEdition("policies", policies, levels, witnessed),
    ratingPolicies: policiesByEdition("rating-policies", ratingPolicies, levels, witnessed),
    sections: sectionsByEdition(sections, placements, levels, witnessed),
    namedSizes: namedSizesByEdition(namedSizes, levels),
    placements: placementsByEdition(placements, sections, levels),
    passages: passagesOf(extracts.values()),
    readings,
    roles: rolesByEdition(roles),
    withstand,
    withstandLevels: withstandLevels(withstand, levels, conductors),
    channels,
  };
  note("policies", checkPolicies(collected.policies, supplyAreaTables));
  note("readings", checkReadings(readings, { ...collected.policies, ...collected.ratingPolicies }));
  stopAt(faults);
  return { collected, unwitnessed: tables, plain: plain.map(({ id }) => id), allowed };
}

function stopAt(faults: readonly string[]): void {
  if (faults.length > 0) throw new Error(faults.join("\n"));
}

function entriesOf<T>(
  record: Readonly<Record<string, T>>,
  own: (one: T) => readonly FromEdition[],
): Readonly<Record<string, readonly FromEdition[]>> {
  return Object.fromEntries(Object.entries(record).map(([name, one]) => [name, own(one)]));
}
