import { type EditionYear, editionYears } from "../../../src/edition/edition-year.js";
import type { Policies } from "./by-edition.js";
import { blockFor } from "./checks.js";
import { camel, head, literal, policySets } from "./emit.js";
import type { Cell, TableFile } from "./model.js";

/** Policies that go by the overcurrent device. */
export function emitRatingPolicies(policies: Policies): string {
  return [
    `${head("rating-policies")}import type { PolicySet } from "../policy.js";`,
    `import type { RatingPolicy } from "../rating-policy.js";\n`,
    ...policySets(policies, "PolicySet<RatingPolicy>"),
  ].join("\n");
}

/** A table entered by the rating of the overcurrent device: rows in order, evidence codes by edition and cell. */
export function emitRatingTable(table: TableFile): string {
  const rows = ([through, copper, aluminum]: readonly Cell[]): string =>
    `  { through: ${literal(through)}, copper: ${literal(copper)}, aluminum: ${literal(aluminum)} },`;
  const entries = editionYears.map((year) => {
    const cells = (table.cells ?? []).filter((cell) => cell.edition === year);
    const weaker = cells.map((cell) => `${literal(`${cell.row} ${cell.column}`)}: ${literal(cell.level)}`);
    return `  "${year}": { ${tableHead(table, year)}, cells: { ${weaker.join(", ")} } },`;
  });
  return [
    `${head(table.id)}import type { RatingRow, RatingTable } from "../rating-table.js";`,
    `import type { ByEdition } from "../supply-area-table.js";\n`,
    `${rowsByBlock(table, "RatingRow", rows)}\n`,
    `export const ${camel(table.id)}: ByEdition<RatingTable> = {\n${entries.join("\n")}\n};\n`,
  ].join("\n");
}

/** The metal area of cable trays by the rating of the overcurrent device, in the units that are printed. */
export function emitTrayTable(table: TableFile): string {
  const area = (inches: Cell | undefined, millimeters: Cell | undefined): string =>
    inches == null
      ? "null"
      : `{ squareInches: ${literal(inches)}, squareMillimeters: ${literal(millimeters)} }`;
  const rows = ([through, steelInches, steelMillimeters, inches, millimeters]: readonly Cell[]): string =>
    `  { through: ${literal(through)}, steel: ${area(steelInches, steelMillimeters)}, aluminum: ${area(inches, millimeters)} },`;
  const entries = editionYears.map((year) => `  "${year}": { ${tableHead(table, year)} },`);
  return [
    `${head(table.id)}import type { ByEdition } from "../supply-area-table.js";`,
    `import type { TrayRow, TrayTable } from "../tray-table.js";\n`,
    `${rowsByBlock(table, "TrayRow", rows)}\n`,
    `export const ${camel(table.id)}: ByEdition<TrayTable> = {\n${entries.join("\n")}\n};\n`,
  ].join("\n");
}

function rowsByBlock(table: TableFile, type: string, row: (cells: readonly Cell[]) => string): string {
  return table.blocks
    .map(
      (block) => `const rowsFrom${block.from}: readonly ${type}[] = [\n${block.rows.map(row).join("\n")}\n];`,
    )
    .join("\n");
}

function tableHead(table: TableFile, year: EditionYear): string {
  const rows = `rowsFrom${blockFor(table, year)?.from}`;
  return `number: ${literal(table.number[year])}, rows: ${rows}, evidence: ${literal(table.evidence[year]?.level)}`;
}
