import { editionYears } from "../../../src/edition/edition-year.js";
import type { NamedSizes, Placements, Policies, Policy, Roles, Sections } from "./by-edition.js";
import { blockFor } from "./checks.js";
import { isLimit } from "./limit.js";
import type { Cell, Cited, ReadingsFile, TableFile } from "./model.js";
import { supplyCells } from "./supply-cells.js";

/** First lines of every generated module. */
export const head = (from: string): string =>
  `// Generated from tables/${from}.json by "npm run generate"; do not edit.\n`;

/** Conductor sizes: a literal list and their areas. */
export function emitConductors(table: TableFile): string {
  const rows = table.blocks[0]?.rows ?? [];
  const lines = rows.map((row) => `  [${row.map(literal).join(", ")}],`);
  return `${head(table.id)}/** Every conductor size with its area in circular mils, smallest first. */\nexport const sizeRows = [\n${lines.join("\n")}\n] as const;\n`;
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
      `const thresholdFrom${block.from} = ${threshold};`,
      `const lastFrom${block.from}: SupplyAreaTable["last"] = ${lastRow};`,
    ].join("\n");
  });
  const entries = editionYears.map((year) => {
    const number = table.number[year];
    const from = blockFor(table, year)?.from;
    if (number === null || from === undefined) return `  "${year}": null,`;
    const cells = JSON.stringify(supplyCells(table, seen, year));
    const own = cells === "{}" ? "" : `, cells: ${cells}`;
    const end = `threshold: thresholdFrom${from}, last: lastFrom${from}`;
    return `  "${year}": { number: ${literal(number)}, rows: rowsFrom${from}, ${end}${own} },`;
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
export function emitPolicies(policies: Policies): string {
  return [
    `${head("policies")}import type { PolicySet } from "../policy.js";\n`,
    ...policySets(policies, "PolicySet"),
  ].join("\n");
}

/** One constant per set, so that a consumer gets only those of the functions it imports. */
export function policySets(policies: Policies, type: string): readonly string[] {
  return Object.entries(policies).map(([set, byYear]) => {
    const entries = editionYears.map((year) => `    "${year}": ${emitPolicy(byYear[year])},`);
    return `export const ${camel(set)}Policies: ${type} = {\n  id: ${literal(set)},\n  byEdition: {\n${entries.join("\n")}\n  },\n};\n`;
  });
}

/** Names and purposes of the roles, each as a constant of its own, so that a bundle holds those of the roles that it uses. */
export function emitRoles(roles: Roles): string {
  const ids = Object.keys(roles);
  const facts = Object.entries(roles).map(([role, { purpose, name }]) => {
    const names = editionYears.map((year) => `"${year}": ${literal(name[year])}`);
    return `export const ${camel(role)}Facts: RoleFacts<${literal(role)}> = { role: ${literal(role)}, purpose: ${literal(purpose)}, name: { ${names.join(", ")} } };\n`;
  });
  return [
    `${head("roles")}import type { RoleFacts } from "../role.js";\n`,
    `/**
 * The id of every role, in the order in which a fault meets them.
 *
 * @example
 * \`\`\`ts
 * import { roleIds } from "bondmil";
 * roleIds.includes("main-bonding-jumper"); // => true
 * \`\`\`
 */`,
    `export const roleIds = [${ids.map(literal).join(", ")}] as const;\n`,
    `/** What a conductor is there for: one of the kinds of conductor that the library sizes. */`,
    `export type Role = (typeof roleIds)[number];\n`,
    ...facts,
  ].join("\n");
}

/** The files of published checks, one for each role. */
export function emitCheckFiles(roles: Roles): string {
  const ids = Object.keys(roles);
  return [
    `${head("roles")}${ids.map((id) => `import ${camel(id)} from "../${id}.json" with { type: "json" };`).join("\n")}`,
    `\n/** The file of every role, as JSON gives it. */`,
    `export const files = {\n${ids.map((id) => `  ${literal(id)}: ${camel(id)},`).join("\n")}\n};\n`,
  ].join("\n");
}

/** The register of roles: the value of every role, by its id. */
export function emitRegister(roles: Roles): string {
  const ids = Object.keys(roles);
  return [
    `${head("roles")}import type { Role } from "../edition/index.js";`,
    `import type { AnyRole } from "./definition.js";`,
    ...ids.map((id) => `import { ${camel(id)} } from "./${id}/index.js";`),
    `\nexport { ${ids.map(camel).join(", ")} };\n`,
    `/**
 * Every role that the library sizes, by its id, in the order in which a fault meets them. Whatever goes over all roles takes them from here; to
 * size one role, import its value alone, and a bundle holds no other.
 *
 * @example
 * \`\`\`ts
 * import { roles } from "bondmil";
 * Object.values(roles).filter(({ facts }) => facts.purpose === "electrode-system").map(({ id }) => id);
 * // => ["grounding-electrode-conductor", "electrode-bonding-jumper", "electrode-raceway-bonding-jumper"]
 * \`\`\`
 */`,
    `export const roles = {\n${ids.map((id) => `  ${literal(id)}: ${camel(id)},`).join("\n")}\n} as const satisfies { readonly [R in Role]: AnyRole<R> };\n`,
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
export function emitSections(topics: Sections): string {
  const parts = Object.entries(topics).map(([topic, { says, sections }]) => {
    const entries = editionYears.map((year) => `  "${year}": ${citation(sections[year])},`);
    return `/** ${says} */\nexport const ${camel(topic)}: ByEdition<Citation> = /* @__PURE__ */ frozen({\n${entries.join("\n")}\n});\n`;
  });
  return [
    `${head("sections")}import type { Citation } from "../citation.js";`,
    `import { frozen } from "../frozen.js";`,
    `import type { ByEdition } from "../supply-area-table.js";\n`,
    ...parts,
  ].join("\n");
}

/** Facts of placement: one constant each, typed by the words it uses. */
export function emitPlacements(facts: Placements): string {
  const parts = Object.entries(facts).map(([fact, { says, values }]) => {
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
export function emitNamedSizes(sizes: NamedSizes): string {
  const parts = Object.entries(sizes).map(([name, { says, values }]) => {
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

function emitPolicy({ fields, basis, limits }: Policy): string {
  const parts = Object.entries(fields).map(([field, value]) => {
    const place = limits[field];
    if (!isLimit(value) || place === undefined) return `${field}: ${JSON.stringify(value)}`;
    const { copper, aluminum } = value;
    return `${field}: { copper: ${literal(copper)}, aluminum: ${literal(aluminum)}, citation: ${citation(place)} }`;
  });
  const places = Object.entries(basis).map(([part, place]) => `${part}: ${citation(place)}`);
  return `{ ${parts.join(", ")}, basis: { ${places.join(", ")} } }`;
}

/** A citation of a generated module. */
export function citation([section, evidence]: Cited): string {
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
