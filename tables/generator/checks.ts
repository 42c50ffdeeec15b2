import { type EditionYear, editionYears } from "../../src/edition/edition-year.js";
import type { PlacementsFile, PoliciesFile, ReadingsFile, SectionsFile, TableFile } from "./model.js";

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
 * Faults of a column that must rise from row to row, or at least not fall where neighbouring rows may be alike; empty cells
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
        faults.push(`${block.from}: column ${table.columns[column]?.id} does not rise at ${cell}`);
      before = value;
    }
  }
  return faults;
}

/** Faults of policies that hold for every kind: every set answers every edition exactly once. */
export function checkAnswers(file: PoliciesFile, years: readonly EditionYear[] = editionYears): string[] {
  return Object.entries(file.policies).flatMap(([set, blocks]) =>
    years
      .filter((year) => blocks.filter((one) => one.editions.includes(year)).length !== 1)
      .map((year) => `${set}: not exactly one policy for ${year}`),
  );
}

/** Faults of the policies: every set answers every edition exactly once, from a table that the edition has. */
export function checkPolicies(
  file: PoliciesFile,
  tables: readonly TableFile[],
  years: readonly EditionYear[] = editionYears,
): string[] {
  return Object.entries(file.policies).flatMap(([set, blocks]) =>
    years.flatMap((year) => {
      const [policy, ...more] = blocks.filter((one) => one.editions.includes(year));
      if (policy === undefined || more.length > 0) return [`${set}: not exactly one policy for ${year}`];
      const evidence = tables.find((table) => table.id === policy["table"])?.evidence[year];
      if (evidence === undefined) return [`${set}: ${year} has no table ${policy["table"]}`];
      const row = policy.basis["row"]?.[1];
      return row === evidence.level
        ? []
        : [`${set}: ${year} calls its rows ${row}, the table says ${evidence.level}`];
    }),
  );
}

/** Faults of the readings: the default exists and is what the policies say. */
export function checkReadings(file: ReadingsFile, { policies }: PoliciesFile): string[] {
  return file.readings.flatMap((reading) => {
    const chosen = reading.alternatives.find((alternative) => alternative.id === reading.default);
    if (chosen === undefined) return [`${reading.id}: the default is not one of the alternatives`];
    return reading.policies.flatMap((set) =>
      reading.editions.flatMap((year) => {
        const policy = policies[set]?.find((one) => one.editions.includes(year));
        if (policy === undefined) return [`${reading.id}: no policy ${set} for ${year}`];
        return Object.entries(chosen.policy ?? {})
          .filter(([field, value]) => policy[field] !== value)
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
