import { readdirSync, readFileSync } from "node:fs";
import { join, relative } from "node:path";
import ts from "typescript";
import { describe, expect, it } from "vitest";
import { type EditionYear, editionYears } from "../../src/edition/edition-year.js";
import { unanswered } from "../../tables/tools/generator/answers.js";
import { checkTable } from "../../tables/tools/generator/checks.js";
import type { TableFile } from "../../tables/tools/generator/model.js";
import { readTable } from "../../tables/tools/generator/read-tables.js";

const root = join(import.meta.dirname, "../..");
const newestYear = String(editionYears.at(-1));
const newYear = String(Number(newestYear) + 3);

/** The whole project, with one more member in the list of editions and nothing else changed. */
function programWithNewEdition(): ts.Program {
  const config = ts.getParsedCommandLineOfConfigFile(
    join(root, "tsconfig.json"),
    {},
    { ...ts.sys, onUnRecoverableConfigFileDiagnostic: ({ messageText }) => expect.fail(String(messageText)) },
  );
  if (config === undefined) return expect.fail("tsconfig.json cannot be read");
  const host = ts.createCompilerHost(config.options, true);
  const list = join(root, "src/edition/edition-year.ts");
  const text = readFileSync(list, "utf8");
  const longer = text.replace(`"${newestYear}"]`, `"${newestYear}", "${newYear}"]`);
  expect(longer).not.toBe(text);
  return ts.createProgram(config.fileNames, config.options, {
    ...host,
    getSourceFile: (path, settings) =>
      relative(list, path) === ""
        ? ts.createSourceFile(path, longer, settings, true)
        : host.getSourceFile(path, settings),
  });
}

type Counts = Readonly<Record<string, number>>;

function counted(files: readonly string[]): Counts {
  const counts: Record<string, number> = {};
  for (const file of files) counts[file] = (counts[file] ?? 0) + 1;
  return counts;
}

const nameOf = (path: string): string => relative(root, path).replaceAll("\\", "/");

/** Files by how often the compiler misses the new edition in them. */
function missed(program: ts.Program): Counts {
  const files = ts
    .getPreEmitDiagnostics(program)
    .filter(({ messageText }) => ts.flattenDiagnosticMessageText(messageText, "\n").includes(newYear))
    .map(({ file }) => (file === undefined ? "no file" : nameOf(file.fileName)));
  return counted(files);
}

/** Files by how many records by edition are written in them. */
function written(program: ts.Program): Counts {
  const found: string[] = [];
  for (const source of program.getSourceFiles()) {
    if (source.fileName.includes("node_modules") || !source.fileName.endsWith(".ts")) continue;
    const visit = (node: ts.Node): void => {
      if (ts.isObjectLiteralExpression(node)) {
        const keys = node.properties.map(({ name }) => (name && ts.isStringLiteral(name) ? name.text : ""));
        if (editionYears.every((year) => keys.includes(year))) found.push(nameOf(source.fileName));
      }
      ts.forEachChild(node, visit);
    };
    visit(source);
  }
  return counted(found);
}

describe("a new edition, as one more member of the list", () => {
  it("does not compile until every record by edition has answered", () => {
    const program = programWithNewEdition();
    const records = written(program);
    expect(missed(program)).toEqual(records);

    const folder = join(root, "src/edition/tables");
    const byEdition = readdirSync(folder)
      .filter((name) => /ByEdition<|PolicySet/.test(readFileSync(join(folder, name), "utf8")))
      .map((name) => `src/edition/tables/${name}`);
    expect(byEdition.length).toBeGreaterThan(8);
    expect(Object.keys(records)).toEqual(expect.arrayContaining(byEdition));
  });
});

const read = (name: string): object => JSON.parse(readFileSync(join(root, "tables", name), "utf8"));

const tableOf = (name: string): TableFile => readTable(join(root, "tables"), name.replace(".json", ""));

/** Files that owe no answer to a new edition. */
const withoutEditions = [
  "datapackage.json",
  "debts.json",
  "readings.json",
  "short-time-withstand.json",
  "sources.json",
];

describe("the files of the tables without a new edition", () => {
  const years = [...editionYears, newYear] as unknown as readonly EditionYear[];
  const files = readdirSync(join(root, "tables")).filter((name) => name.endsWith(".json"));

  it("are all refused", () => {
    const tables = files.filter((name) => "blocks" in read(name));
    expect(tables.filter((name) => checkTable(tableOf(name), years).length === 0)).toEqual([]);
    const refused = (name: string) => unanswered(read(name), [newYear]).length > 0;
    const notRefused = files.filter((name) => !tables.includes(name) && !refused(name));
    expect(notRefused).toEqual(withoutEditions);
    for (const name of files) expect(unanswered(read(name))).toEqual([]);
  });

  it("are refused by name", () => {
    expect(checkTable(tableOf("electrode-conductor.json"), years)).toEqual([
      `${newYear}: a number and its evidence go together`,
    ]);
    expect(unanswered(read("electrode-conductor.json"), years)).toEqual([`number: no answer for ${newYear}`]);
    expect(unanswered(read("policies.json"), years)).toEqual([`through: no answer for ${newYear}`]);
    expect(unanswered(read("roles.json"), years)).toEqual([`through: no answer for ${newYear}`]);
  });
});
