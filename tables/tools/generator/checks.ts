import { type EditionYear, editionYears } from "../../../src/edition/edition-year.js";
import type { Policies } from "./by-edition.js";
import { entryFaults, inForce } from "./in-force.js";
import type { FromEdition, PlacementsFile, ReadingsFile, SectionsFile, TableFile } from "./model.js";

/** Faults that hold for every table: each edition answered, blocks in order, rows as wide as the columns. */
export function checkTable(table: TableFile, years: readonly EditionYear[] = editionYears): string[] {
  const faults: string[] = [];
  for (const year of years) {
    const numbered = table.number[year] !== null;
    if (numbered !== (table.evidence[year] !== undefined))
      faults.push(`${year}: a number and its evidence go together`);
    if (numbered && blockFor(table, year) === undefined)
      faults.push(`${year}: numbered, but no block is in force`);
  }
  const starts = table.blocks.map((block) => years.indexOf(block.from));
  if (starts.some((start, i) => i > 0 && start <= (starts[i - 1] ?? -1)))
    faults.push("blocks are not in order of edition");
  for (const block of table.blocks) {
    block.rows.forEach((row, i) => {
      if (row.length !== table.columns.length)
        faults.push(`${block.from}: row ${i + 1} has ${row.length} cells`);
    });
  }
  for (const cell of table.cells ?? []) {
    const known = table.columns.some((column) => column.id === cell.column);
    if (!known) faults.push(`cell evidence names the unknown column ${cell.column}`);
    const rows = blockFor(table, cell.edition)?.rows ?? [];
    if (!rows.some((row) => String(row[0] ?? "last") === cell.row))
      faults.push(`cell evidence names the unknown row ${cell.row}`);
  }
  return faults;
}

/** The block of values that an edition uses. */
export function blockFor(table: TableFile, year: string): TableFile["blocks"][number] | undefined {
  return table.blocks.filter((block) => block.from <= year).at(-1);
}

/**
 * Faults of a column that must rise from row to row, or at least not fall where neighboring rows may be alike; empty cells
 * are passed over.
 */
export function checkRising(
  table: TableFile,
  column: number,
  measure: (cell: string | number) => number,
  rows: "rise" | "may-be-alike" = "rise",
): string[] {
  const faults: string[] = [];
  for (const block of table.blocks) {
    let before = Number.NEGATIVE_INFINITY;
    for (const row of block.rows) {
      const cell = row[column];
      if (cell === null || cell === undefined || typeof cell === "boolean") continue;
      const value = measure(cell);
      if (rows === "rise" ? value <= before : value < before)
        faults.push(`${block.from}: column ${table.columns[column]?.id} is out of order at ${cell}`);
      before = value;
    }
  }
  return faults;
}

/** Faults of the columns that say how they go from row to row; sizes go by their area. */
export function checkOrder(table: TableFile, areaOf: (size: string) => number): readonly string[] {
  return table.columns.flatMap(({ unit, order }, column) => {
    if (order === undefined) return [];
    const measure = (cell: string | number): number =>
      (order === "falls" ? -1 : 1) * (unit === "size" ? areaOf(String(cell)) : Number(cell));
    return checkRising(table, column, measure, order === "rises" ? "rise" : "may-be-alike");
  });
}

/** Faults of entries that hold from an edition on, by name: every edition answered, in order, and each saying something new. */
export function checkEntries(
  named: Readonly<Record<string, readonly FromEdition[]>>,
  years: readonly string[] = editionYears,
): string[] {
  return Object.entries(named).flatMap(([name, entries]) =>
    entryFaults(entries, years).map((fault) => `${name}: ${fault}`),
  );
}

/** Faults of the policies: every one goes by a table that the edition has. */
export function checkPolicies(
  policies: Policies,
  tables: readonly TableFile[],
  years: readonly EditionYear[] = editionYears,
): string[] {
  return Object.entries(policies).flatMap(([set, byYear]) =>
    years.flatMap((year) => {
      const { table } = byYear[year].fields;
      return tables.some(({ id, number }) => id === table && number[year] !== null)
        ? []
        : [`${set}: ${year} has no table ${table}`];
    }),
  );
}

/** Faults of the topics that are a table: they stand where it does. */
export function checkTopics({ topics }: SectionsFile, tables: readonly TableFile[]): string[] {
  return Object.entries(topics).flatMap(([topic, { table, sections }]) => {
    if (table === undefined) return [];
    const number = tables.find(({ id }) => id === table)?.number;
    return editionYears
      .filter((year) => number?.[year] !== inForce(sections, year)?.section)
      .map((year) => `${topic}: does not stand where the table ${table} does in ${year}`);
  });
}

/** Faults of the readings: the default exists and is what the policies say. */
export function checkReadings(file: ReadingsFile, policies: Policies): string[] {
  return file.readings.flatMap((reading) => {
    const chosen = reading.alternatives.find((alternative) => alternative.id === reading.default);
    if (chosen === undefined) return [`${reading.id}: the default is not one of the alternatives`];
    return reading.policies.flatMap((set) =>
      reading.editions.flatMap((year) => {
        const fields = policies[set]?.[year].fields;
        if (fields === undefined) return [`${reading.id}: no policy ${set} for ${year}`];
        return Object.entries(chosen.policy ?? {})
          .filter(([field, value]) => fields[field] !== value)
          .map(([field]) => `${reading.id}: the default says otherwise than ${set} of ${year} on ${field}`);
      }),
    );
  });
}

/** Faults of the placement facts: each rests on a topic with sections. */
export function checkPlacements(file: PlacementsFile, sections: SectionsFile): string[] {
  return Object.entries(file.facts)
    .filter(([, { topic }]) => sections.topics[topic] === undefined)
    .map(([fact, { topic }]) => `${fact}: no topic ${topic}`);
}
