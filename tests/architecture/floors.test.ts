import ts from "typescript";
import { describe, expect, it } from "vitest";
import { importsOf, readToolTree, readTree, roomOf, type Tree } from "../../docs/pages/rooms/imports.js";
import { rooms } from "../../docs/pages/rooms/rooms.js";
import { toolRoomOf, toolRooms } from "../../docs/pages/rooms/tool-rooms.js";
import { roleIds } from "../../src/edition/index.js";

const names = rooms.map(({ name }) => name);
const longestFile = 300;

/** What shapes are generated from; nothing that runs imports it. */
function isDefinition(file: string): boolean {
  return /(?:^|\/)(?:shape|define)\.ts$/.test(file);
}

/** The modules that the package exports: they only hand on what the rooms have. */
function isEntry(file: string): boolean {
  return /^(?:index|[a-z]+\.entry)\.ts$/.test(file);
}

function wrongImports(tree: Tree): readonly string[] {
  return [...tree].flatMap(([file, text]) => {
    if (isEntry(file)) return [];
    const room = roomOf(file);
    const floor = names.indexOf(room);
    const own = rooms[floor];
    if (own === undefined) return [`${file}: the room "${room}" is not in the list of floors`];
    return importsOf(file, text)
      .filter((target) => {
        if (target.startsWith("node:")) return own.nodeModules !== true;
        if (own.packages?.includes(target)) return false;
        if (isDefinition(file) && (target === "valibot" || isDefinition(target))) return false;
        if (isDefinition(target)) return true;
        const above = names.indexOf(roomOf(target));
        return !tree.has(target) || above < 0 || above > floor;
      })
      .map((target) => `${file} may not import ${target}`);
  });
}

/** The entries of the package by the files that they are. */
const entries: Readonly<Record<string, string>> = {
  bondmil: "src/index.ts",
  "bondmil/tables": "tables/tools/index.ts",
  "bondmil/corpus": "corpus/tools/index.ts",
};

function importsOfTool(file: string, text: string): readonly string[] {
  return importsOf(file, text).map((target) => entries[target] ?? target);
}

function wrongToolImports(tree: Tree): readonly string[] {
  return [...tree].flatMap(([file, text]) => {
    const room = toolRoomOf(file);
    if (room === undefined) return [`${file} stands among the data, not in a folder of tools`];
    const floor = toolRooms.indexOf(room);
    const isAllowed = (target: string): boolean => {
      const [, inSrc] = /^src\/(.*)/.exec(target) ?? [];
      if (inSrc !== undefined) return room.src.some((path) => inSrc.startsWith(path));
      const [, data] = /^(tables|corpus)\/.*\.json$/.exec(target) ?? [];
      if (data !== undefined) return !(data === "corpus" && file.startsWith("tables/"));
      const other = toolRoomOf(target);
      return other === undefined
        ? !/^(?:src|tables|corpus|docs|tests)\//.test(target)
        : toolRooms.indexOf(other) <= floor;
    };
    return importsOfTool(file, text)
      .filter((target) => !isAllowed(target))
      .map((target) => `${file} may not import ${target}`);
  });
}

/** Generated modules that what writes them would need in order to run. */
function generatedBelow(tools: Tree, src: Tree, starts: readonly string[]): readonly string[] {
  const seen = new Set<string>();
  const visit = (path: string): void => {
    if (seen.has(path)) return;
    seen.add(path);
    const text = tools.get(path) ?? src.get(path.replace(/^src\//, "")) ?? "";
    for (const target of importsOfTool(path, text)) visit(target);
  };
  starts.forEach(visit);
  return [...seen].filter((path) => path.endsWith(".generated.ts"));
}

/** Type-only imports count: two files that need each other's types are one file. */
function cycles(tree: Tree): readonly string[] {
  const found: string[] = [];
  const done = new Set<string>();
  const visit = (file: string, path: readonly string[]): void => {
    const start = path.indexOf(file);
    if (start >= 0) found.push([...path.slice(start), file].join(" -> "));
    if (start >= 0 || done.has(file)) return;
    for (const target of importsOf(file, tree.get(file) ?? "")) visit(target, [...path, file]);
    done.add(file);
  };
  for (const file of tree.keys()) visit(file, []);
  return found;
}

function longFiles(tree: Tree): readonly string[] {
  return [...tree]
    .filter(([file]) => !file.endsWith(".generated.ts") && !isEntry(file))
    .map(([file, text]) => ({ file, lines: text.trimEnd().split("\n").length }))
    .filter(({ lines }) => lines > longestFile)
    .map(({ file, lines }) => `${file} has ${lines} lines`);
}

/** The kernel gets rows and a policy; whose they are is not its business. */
function kernelSecrets(tree: Tree): readonly string[] {
  const secret = new RegExp(
    `(?<![\\w-])(?:${roleIds.join("|")}|20(?:08|11|14|17|20|23|26|29))(?![\\w-])`,
    "g",
  );
  const printer = ts.createPrinter({ removeComments: true });
  return [...tree]
    .filter(([file]) => file.startsWith("sizing/"))
    .flatMap(([file, text]) => {
      const code = printer.printFile(ts.createSourceFile(file, text, ts.ScriptTarget.ES2022));
      return [...code.matchAll(secret)].map(([word]) => `${file} mentions ${word}`);
    });
}

describe("the floors of src", () => {
  const tree = readTree();
  it("import only upwards", () => expect(wrongImports(tree)).toEqual([]));
  it("have no import cycles", () => expect(cycles(tree)).toEqual([]));
  it("are all lived in", () =>
    expect(names).toEqual(names.filter((name) => [...tree.keys()].some((file) => roomOf(file) === name))));
  it(`have no file over ${longestFile} lines`, () => expect(longFiles(tree)).toEqual([]));
  it("keep roles and editions out of sizing", () => expect(kernelSecrets(tree)).toEqual([]));
});

describe("the floors of the tools", () => {
  const tools = readToolTree();
  it("import only upwards, and of src what they name", () => expect(wrongToolImports(tools)).toEqual([]));
  it("have no import cycles", () => expect(cycles(tools)).toEqual([]));
  it("are all lived in", () =>
    expect(toolRooms.filter((room) => ![...tools.keys()].some((file) => toolRoomOf(file) === room))).toEqual(
      [],
    ));
  it("have no long files", () => expect(longFiles(tools)).toEqual([]));
  it("write the generated modules without importing one", () => {
    const commands = ["generate", "scaffold-edition", "scaffold-role", "witness"];
    const starts = commands.map((name) => `tables/tools/${name}.ts`);
    expect(starts.filter((path) => !tools.has(path))).toEqual([]);
    expect(generatedBelow(tools, readTree(), starts)).toEqual([]);
  });
});

describe("the checks themselves", () => {
  it("see each fault of the tools", () => {
    const tools: Tree = new Map([
      ["tables/loose.ts", ""],
      [
        "tables/tools/generator/a.ts",
        'import "../witness/b.js"; import "../../../src/report/csv.js"; import "ajv";',
      ],
      [
        "tables/tools/witness/b.ts",
        'import "../generator/a.js"; import "../../../corpus/main-bonding-jumper.json";',
      ],
      ["tables/tools/generate.ts", 'import "bondmil"; import "bondmil/corpus"; import "../policies.json";'],
      ["corpus/tools/index.ts", 'import "../../docs/pages/c.js"; import "../../tables/policies.json";'],
      [
        "docs/pages/c.ts",
        'import "bondmil/corpus"; import "../../src/rules/b.js"; import "../../tests/needs.js";',
      ],
      ["docs/demos/d.ts", 'import "bondmil"; import "../../src/rules/b.js";'],
    ]);
    expect(wrongToolImports(tools)).toEqual([
      "tables/loose.ts stands among the data, not in a folder of tools",
      "tables/tools/generator/a.ts may not import tables/tools/witness/b.ts",
      "tables/tools/generator/a.ts may not import src/report/csv.ts",
      "tables/tools/witness/b.ts may not import corpus/main-bonding-jumper.json",
      "tables/tools/generate.ts may not import corpus/tools/index.ts",
      "corpus/tools/index.ts may not import docs/pages/c.ts",
      "docs/pages/c.ts may not import tests/needs.ts",
      "docs/demos/d.ts may not import src/rules/b.ts",
    ]);
    expect(cycles(tools)).toEqual([
      "tables/tools/generator/a.ts -> tables/tools/witness/b.ts -> tables/tools/generator/a.ts",
    ]);
    const src: Tree = new Map([
      ["index.ts", 'import "./edition/tables/a.generated.js";'],
      ["edition/tables/a.generated.ts", ""],
    ]);
    expect(generatedBelow(tools, src, ["tables/tools/generate.ts"])).toEqual([
      "src/edition/tables/a.generated.ts",
    ]);
  });

  it("see each fault", () => {
    const tree: Tree = new Map([
      ["cellar/a.ts", ""],
      ["units/a.ts", 'export type { B } from "../rules/b.js";'],
      ["units/b.ts", 'import { c } from "./c.js";'],
      ["units/c.ts", 'import type { B } from "./b.js"; import x from "somewhere"; import fs from "node:fs";'],
      ["installation/d.ts", 'import * as v from "valibot"; import x from "somewhere";'],
      ["rules/d.ts", 'import * as v from "valibot";'],
      ["rules/b.ts", 'import { b } from "../index.js";'],
      [
        "sizing/k.ts",
        `// ${roleIds[0]} of 2008 may be named here\nexport const year = "2023", role = "${roleIds[0]}";`,
      ],
      ["sizing/long.ts", `${"\n".repeat(longestFile)}export {};`],
    ]);
    expect(wrongImports(tree)).toEqual([
      'cellar/a.ts: the room "cellar" is not in the list of floors',
      "units/a.ts may not import rules/b.ts",
      "units/c.ts may not import somewhere",
      "units/c.ts may not import node:fs",
      "installation/d.ts may not import valibot",
      "installation/d.ts may not import somewhere",
      "rules/d.ts may not import valibot",
      "rules/b.ts may not import index.ts",
    ]);
    expect(cycles(tree)).toEqual(["units/b.ts -> units/c.ts -> units/b.ts"]);
    expect(longFiles(tree)).toEqual([`sizing/long.ts has ${longestFile + 1} lines`]);
    expect(kernelSecrets(tree)).toEqual(["sizing/k.ts mentions 2023", `sizing/k.ts mentions ${roleIds[0]}`]);
  });
});
