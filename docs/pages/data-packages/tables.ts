import { parse } from "csv-parse/sync";
import type { TableFile } from "../../../tables/tools/generator/model.js";
import { type Columns, columnsOf } from "./columns.js";
import { type DataPackage, license, type Resource } from "./package.js";

/** Text columns with no more words than this name them, as an enumeration. */
const mostWords = 8;

/** Columns whose words are named; sizes and places are no words. */
const wordColumns = [
  "level",
  "sum",
  "cap",
  "otherMaterial",
  "increase",
  "shared",
  "part",
  "purpose",
  "metal",
];

/** Columns that tell the lines of a file apart, the first of these sets whose columns the file has. */
const keys = [
  ["table", "edition", "row", "column"],
  ["policy", "edition", "part"],
  ["edition", "row"],
  ["policy", "edition"],
  ["fact", "edition"],
  ["topic", "edition"],
  ["role", "edition"],
  ["metal", "edition"],
  ["name", "edition"],
  ["file", "statement", "source", "section"],
] as const;

/** The description of the CSV files, which lies beside them; texts by name of the file. */
export function packageOfTables(
  files: ReadonlyMap<string, string>,
  tables: readonly TableFile[],
  columns: Columns,
): DataPackage {
  const own = new Map(tables.map((table) => [`${table.id}.csv`, columnsOf(table)]));
  return {
    name: "bondmil-tables",
    title: "Tables and rules for bonding and grounding conductors under NFPA 70, 2008 to 2026",
    description:
      "The values that bondmil sizes by, one line for each row, policy or fact under each edition. README.md explains them.",
    licenses: [license],
    resources: [...files].map(([name, text]) => resourceOf(name, text, { ...columns, ...own.get(name) })),
  };
}

function resourceOf(file: string, text: string, columns: Columns): Resource {
  const lines = parse(text, { columns: true, record_delimiter: "\r\n" }) as readonly Readonly<
    Record<string, string>
  >[];
  const names = Object.keys(lines[0] ?? {});
  // A key has no empty cells; that of the evidence has them for whole tables, so that it is no key there.
  const key = keys.find((of) => of.every((one) => names.includes(one)));
  const isKey = key?.every((one) => lines.every((line) => line[one] !== "")) ?? false;
  return {
    name: file.replace(".csv", ""),
    path: `csv/${file}`,
    profile: "tabular-data-resource",
    format: "csv",
    mediatype: "text/csv",
    encoding: "utf-8",
    dialect: { lineTerminator: "\r\n", delimiter: ",", quoteChar: '"', doubleQuote: true, header: true },
    schema: {
      fields: names.map((name) => fieldOf(name, lines, columns)),
      missingValues: [""],
      ...(isKey && key !== undefined ? { primaryKey: key } : {}),
    },
  };
}

function fieldOf(
  name: string,
  lines: readonly Readonly<Record<string, string>>[],
  columns: Columns,
): Resource["schema"]["fields"][number] {
  const column = columns[name];
  if (column === undefined)
    throw new Error(`neither a table nor docs/pages/data-packages/columns.json explains ${name}`);
  const [type, description] = column;
  const words = [...new Set(lines.map((line) => line[name] ?? "").filter((word) => word !== ""))].sort();
  const isList = wordColumns.includes(name) && words.length <= mostWords;
  return { name, type, description, ...(isList ? { constraints: { enum: words } } : {}) };
}
