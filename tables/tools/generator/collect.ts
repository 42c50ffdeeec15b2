import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Evidence } from "../../../src/edition/evidence.js";
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
  checkEvidence,
  checkOrder,
  checkParts,
  checkPlacements,
  checkPolicies,
  checkReadings,
  checkRising,
  checkTable,
} from "./checks.js";
import type { Collected } from "./collected.js";
import { type CopiesFile, checkCopies, type PrintedTable, withCopies } from "./copies.js";
import type { DebtsFile } from "./debts.js";
import { checkWithstand } from "./emit-withstand.js";
import type {
  EvidenceByPart,
  EvidenceFile,
  FromEdition,
  NamedSizesFile,
  PlacementsFile,
  PoliciesFile,
  ReadingsFile,
  RolesFile,
  SectionEvidenceFile,
  SectionsFile,
  TableFile,
} from "./model.js";
import { plainTables } from "./plain-tables.js";
import { readSchemas } from "./schemas.js";
import type { WithstandFile } from "./withstand-file.js";
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
  const policyFiles = ["policies", "rating-policies"].map((name) => ({
    name,
    file: read<PoliciesFile>(name),
    evidence: read<EvidenceFile<EvidenceByPart>>(`evidence/${name}`),
  }));
  const roles = read<RolesFile>("roles");
  const readings = read<ReadingsFile>("readings");
  const sections = read<SectionsFile>("sections");
  const sectionEvidence = read<SectionEvidenceFile>("evidence/sections");
  const placements = read<PlacementsFile>("placements");
  const namedSizes = read<NamedSizesFile>("named-sizes");
  const sizeEvidence = read<EvidenceFile<Evidence>>("evidence/named-sizes");
  const withstand = read<WithstandFile>("short-time-withstand");
  const channels = read<ChannelsFile>("channels");
  const allowed = read<DebtsFile>("debts");
  const witnesses = readWitnesses(folder);
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

  for (const { name, file, evidence } of policyFiles) {
    note(name, checkEntries(file.policies));
    note(`evidence/${name}`, [...checkEvidence(file.policies, evidence), ...checkParts(file, evidence)]);
  }
  note("sections", checkEntries(entriesOf(sections.topics, ({ sections: own }) => own)));
  note("evidence/sections", checkEvidence(sections.topics, sectionEvidence));
  note("named-sizes", checkEntries(entriesOf(namedSizes.sizes, ({ values }) => values)));
  note("evidence/named-sizes", checkEvidence(namedSizes.sizes, sizeEvidence));
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

  const [policies = {}, ratingPolicies = {}] = policyFiles.map(({ file, evidence }) =>
    policiesByEdition(file, evidence),
  );
  note("policies", checkPolicies(policies, supplyAreaTables));
  note("readings", checkReadings(readings, { ...policies, ...ratingPolicies }));
  stopAt(faults);
  const collected: Collected = {
    tables: tables.map((table) => withWitnesses(table, [...witnesses.values()], channels)),
    policies,
    ratingPolicies,
    sections: sectionsByEdition(sections, sectionEvidence),
    readThrough: sectionEvidence.readThrough,
    namedSizes: namedSizesByEdition(namedSizes, sizeEvidence),
    placements: placementsByEdition(placements),
    readings,
    roles: rolesByEdition(roles),
    withstand,
    channels,
  };
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
