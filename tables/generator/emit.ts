import { editionYears } from "../../src/edition/edition-year.js";
import { blockFor } from "./checks.js";
import type {
  BasisPair,
  Cell,
  LimitBlock,
  NamedSizesFile,
  PlacementsFile,
  PoliciesFile,
  PolicyBlock,
  ReadingsFile,
  RolesFile,
  SectionsFile,
  TableFile,
} from "./model.js";
import { supplyCells } from "./supply-cells.js";

/** First lines of every generated module. */
export const head = (from: string): string =>
  `// Generated from tables/${from}.json by "npm run generate"; do not edit.\n`;

/** Conductor sizes: a literal list and their areas. */
export function emitConductors(table: TableFile): string {
  const rows = table.blocks[0]?.rows ?? [];
  const lines = rows.map((row) => `  [${row.map(literal).join(", ")}],`);
  return `${head(table.id)}export const sizeRows = [\n${lines.join("\n")}\n] as const;\n`;
}

/** A table entered by supply area: bounded rows, the last row apart, areas as integers; `seen` is the table with what witnesses confirmed. */
export function emitSupplyAreaTable(
  table: TableFile,
  areaOf: (size: string) => number,
  seen: TableFile = table,
): string {
  const name = camel(table.id);
  const blocks = table.blocks.map((block) => {
    const bounded = block.rows.filter((row) => row[0] !== null);
    const last = block.rows.find((row) => row[0] === null);
    const rows = bounded.map((row) => {
      const [copper, aluminum] = [areaOf(String(row[0])), areaOf(String(row[1]))];
      return `  { through: { copper: ${copper}, aluminum: ${aluminum} }, copper: ${literal(row[2])}, aluminum: ${literal(row[3])} },`;
    });
    const lastRow =
      last?.[2] == null ? "null" : `{ copper: ${literal(last[2])}, aluminum: ${literal(last[3])} }`;
    const end = bounded.at(-1);
    const threshold = `{ copper: ${areaOf(String(end?.[0]))}, aluminum: ${areaOf(String(end?.[1]))} }`;
    return [
      `const rowsFrom${block.from}: readonly SupplyAreaRow[] = [\n${rows.join("\n")}\n];`,
      `const endFrom${block.from} = { threshold: ${threshold}, last: ${lastRow} } as const;`,
    ].join("\n");
  });
  const entries = editionYears.map((year) => {
    const number = table.number[year];
    const from = blockFor(table, year)?.from;
    if (number === null || from === undefined) return `  "${year}": null,`;
    const cells = JSON.stringify(supplyCells(table, seen, year));
    const own = cells === "{}" ? "" : `, cells: ${cells}`;
    return `  "${year}": { number: ${literal(number)}, rows: rowsFrom${from}, ...endFrom${from}${own} },`;
  });
  return [
    `${head(table.id)}import type { ByEdition, SupplyAreaRow, SupplyAreaTable } from "../supply-area-table.js";\n`,
    `${blocks.join("\n")}\n`,
    `export const ${name}: ByEdition<SupplyAreaTable | null> = {\n${entries.join("\n")}\n};\n`,
  ].join("\n");
}

/** An ampacity table: six columns by size, evidence codes by edition. */
export function emitAmpacityTable(table: TableFile): string {
  const name = camel(table.id);
  const blocks = table.blocks.map((block) => {
    const rows = block.rows.map(
      ([size, ...amperes]) => `  ${literal(size)}: [${amperes.map(literal).join(", ")}],`,
    );
    return `const from${block.from}: AmpacityRows = {\n${rows.join("\n")}\n};`;
  });
  const entries = editionYears.map((year) => {
    const cells = (table.cells ?? []).filter((cell) => cell.edition === year);
    const weaker = cells.map((cell) => `${literal(`${cell.row} ${cell.column}`)}: ${literal(cell.level)}`);
    const evidence = literal(table.evidence[year]?.level);
    const number = literal(table.number[year]);
    const block = `from${blockFor(table, year)?.from}`;
    return `  "${year}": { number: ${number}, rows: ${block}, evidence: ${evidence}, cells: { ${weaker.join(", ")} } },`;
  });
  return [
    `${head(table.id)}import type { AmpacityRows, AmpacityTable } from "../ampacity-table.js";`,
    `import type { ByEdition } from "../supply-area-table.js";\n`,
    `${blocks.join("\n")}\n`,
    `export const ${name}: ByEdition<AmpacityTable> = {\n${entries.join("\n")}\n};\n`,
  ].join("\n");
}

/** Policies that go by the supply. */
export function emitPolicies(file: PoliciesFile): string {
  return [
    `${head("policies")}import type { PolicySet } from "../policy.js";\n`,
    ...policySets(file, "PolicySet"),
  ].join("\n");
}

/** One constant per set, so that a consumer gets only those of the functions it imports. */
export function policySets(file: PoliciesFile, type: string): readonly string[] {
  return Object.entries(file.policies).map(([set, blocks]) => {
    const entries = editionYears.map((year) => {
      const policy = blocks.find((one) => one.editions.includes(year));
      return `    "${year}": ${policy === undefined ? "null" : emitPolicy(policy)},`;
    });
    return `export const ${camel(set)}Policies: ${type} = {\n  id: ${literal(set)},\n  byEdition: {\n${entries.join("\n")}\n  },\n};\n`;
  });
}

/** Names and purposes of the roles. */
export function emitRoles(file: RolesFile): string {
  const entries = Object.entries(file.roles).map(([role, { purpose, name }]) => {
    const names = editionYears.map((year) => `"${year}": ${literal(name[year])}`);
    return `  ${literal(role)}: { purpose: ${literal(purpose)}, name: { ${names.join(", ")} } },`;
  });
  return [
    `${head("roles")}import type { Purpose, Role } from "../role.js";`,
    `import type { ByEdition } from "../supply-area-table.js";\n`,
    `export const roleFacts: Readonly<Record<Role, { readonly purpose: Purpose; readonly name: ByEdition<string> }>> = {\n${entries.join("\n")}\n};\n`,
  ].join("\n");
}

/** Readings: the type of what can be chosen, the defaults, and what each choice changes. */
export function emitReadings(file: ReadingsFile): string {
  const members = file.readings.map((reading) => {
    const words = reading.alternatives.map((alternative) => literal(alternative.id)).join(" | ");
    return `  /** ${reading.question} (${reading.sections.join(", ")}) */\n  readonly ${literal(reading.id)}: ${words};`;
  });
  const defaults = file.readings.map((reading) => `  ${literal(reading.id)}: ${literal(reading.default)},`);
  const entries = file.readings.map((reading) => {
    const patches = reading.alternatives.map(
      (alternative) => `${literal(alternative.id)}: ${JSON.stringify(alternative.policy ?? {})}`,
    );
    return [
      `  ${literal(reading.id)}: {`,
      `    policies: ${JSON.stringify(reading.policies)},`,
      `    editions: ${JSON.stringify(reading.editions)},`,
      `    policy: { ${patches.join(", ")} },`,
      "  },",
    ].join("\n");
  });
  return [
    `${head("readings")}import type { ReadingFacts } from "../reading.js";\n`,
    "/** Every open question of the text that a caller can decide, with the answers to choose from. */",
    `export interface Readings {\n${members.join("\n")}\n}\n`,
    `export const defaultReadings: Readings = {\n${defaults.join("\n")}\n};\n`,
    `export const readingFacts: { readonly [K in keyof Readings]: ReadingFacts<Readings[K]> } = {\n${entries.join("\n")}\n};\n`,
  ].join("\n");
}

/** Sections: one constant per topic. */
export function emitSections(file: SectionsFile): string {
  const parts = Object.entries(file.topics).map(([topic, { says, sections }]) => {
    const entries = editionYears.map((year) => `  "${year}": ${citation(sections[year])},`);
    return `/** ${says} */\nexport const ${camel(topic)}: ByEdition<Citation> = {\n${entries.join("\n")}\n};\n`;
  });
  return [
    `${head("sections")}import type { Citation } from "../citation.js";`,
    `import type { ByEdition } from "../supply-area-table.js";\n`,
    ...parts,
  ].join("\n");
}

/** Facts of placement: one constant each, typed by the words it uses. */
export function emitPlacements(file: PlacementsFile): string {
  const parts = Object.entries(file.facts).map(([fact, { says, values }]) => {
    const words = [...new Set(editionYears.map((year) => values[year]))];
    const type = words.every((word) => typeof word === "boolean")
      ? "boolean"
      : words.map(literal).join(" | ");
    const entries = editionYears.map((year) => `  "${year}": ${literal(values[year])},`);
    return `/** ${says} */\nexport const ${camel(fact)}: ByEdition<${type}> = {\n${entries.join("\n")}\n};\n`;
  });
  return [`${head("placements")}import type { ByEdition } from "../supply-area-table.js";\n`, ...parts].join(
    "\n",
  );
}

/** Sizes that sections name: one constant each. */
export function emitNamedSizes(file: NamedSizesFile): string {
  const parts = Object.entries(file.sizes).map(([name, { says, values }]) => {
    const entries = editionYears.map((year) => {
      const { copper, aluminum, citation: pair } = values[year];
      return `  "${year}": { copper: ${literal(copper)}, aluminum: ${literal(aluminum)}, citation: ${citation(pair)} },`;
    });
    return `/** ${says} */\nexport const ${camel(name)}: ByEdition<NamedSize> = {\n${entries.join("\n")}\n};\n`;
  });
  return [
    `${head("named-sizes")}import type { NamedSize } from "../policy.js";`,
    `import type { ByEdition } from "../supply-area-table.js";\n`,
    ...parts,
  ].join("\n");
}

function emitPolicy(policy: PolicyBlock): string {
  const fields = Object.entries(policy)
    .filter(([key]) => !["editions", "basis", "sources", "note"].includes(key))
    .map(([key, value]) => `${key}: ${isLimit(value) ? emitLimit(value) : JSON.stringify(value)}`);
  const basis = Object.entries(policy.basis).map(([key, pair]) => `${key}: ${citation(pair)}`);
  return `{ ${fields.join(", ")}, basis: { ${basis.join(", ")} } }`;
}

/** Whether a field of a policy is a size with a place of its own. */
export function isLimit(value: unknown): value is LimitBlock {
  return typeof value === "object" && value !== null && "citation" in value;
}

function emitLimit({ copper, aluminum, citation: pair }: LimitBlock): string {
  return `{ copper: ${literal(copper)}, aluminum: ${literal(aluminum)}, citation: ${citation(pair)} }`;
}

/** A citation of a generated module. */
export function citation([section, evidence]: BasisPair): string {
  return `{ section: ${literal(section)}, evidence: ${literal(evidence)} }`;
}

/** A cell as a literal. */
export function literal(cell: Cell | undefined): string {
  return JSON.stringify(cell ?? null);
}

/** Word id to a TypeScript name. */
export function camel(id: string): string {
  return id.replace(/-(\w)/g, (_, letter: string) => letter.toUpperCase());
}
