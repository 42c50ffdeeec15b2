import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { editionYears } from "../../../src/edition/edition-year.js";
import { unfilledPlaces } from "../generator/answers.js";
import { formatted } from "../generator/format.js";
import { mentions, withEdition, withStubs } from "./stubs.js";

/** What a command says, and whether it succeeded. */
export interface Said {
  readonly lines: readonly string[];
  readonly ok: boolean;
}

/** Files that hold nothing by edition. */
const apart = ["sources.json", "debts.json"];

/** Writes a stub of a new edition into every table file, and the edition into the schema of the editions; all of them or none. */
export function scaffoldEdition(root: string, next: string): Said {
  const before = editionYears.filter((year) => year < next).at(-1);
  const known = editionYears.some((year) => year > next);
  if (!/^20\d\d$/.test(next) || before === undefined || known)
    return refused(`name a year after ${editionYears.at(-1)}, for example 2029`);

  const data = jsonFiles(join(root, "tables")).filter((path) => !apart.some((name) => path.endsWith(name)));
  const schema = join(root, "tables/schema/editions.schema.json");
  const answered = [...data, schema].filter((path) => mentions(parse(path), next));
  if (answered.length > 0)
    return refused(
      `${next} is already in these files, and nothing was written:`,
      ...answered.map((path) => short(root, path)),
    );

  const stubs = data.map((path) => ({ path, content: withStubs(parse(path), before, next) }));
  const knowing = { path: schema, content: withEdition(parse(schema), before, next) };
  const changed = [...stubs, knowing].filter(
    ({ path, content }) => JSON.stringify(content) !== JSON.stringify(parse(path)),
  );
  for (const { path, content } of changed) writeFileSync(path, formatted(path, JSON.stringify(content)));
  const open = stubs.reduce((sum, { content }) => sum + unfilledPlaces(content).length, 0);
  return {
    ok: true,
    lines: [
      ...changed.map(({ path }) => `written: ${short(root, path)}`),
      `${open} places are to be read in the edition and filled; until then "npm run generate" refuses and lists them`,
      `next: add "${next}" to src/edition/edition-year.ts; "npm run types" then names what else is missing`,
    ],
  };
}

function refused(...lines: readonly string[]): Said {
  return { lines, ok: false };
}

function jsonFiles(folder: string): readonly string[] {
  return readdirSync(folder)
    .filter((name) => name.endsWith(".json"))
    .sort()
    .map((name) => join(folder, name));
}

function parse(path: string): unknown {
  return JSON.parse(readFileSync(path, "utf8"));
}

function short(root: string, path: string): string {
  return path
    .slice(root.length)
    .replace(/^[\\/]/, "")
    .replaceAll("\\", "/");
}
