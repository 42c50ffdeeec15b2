import ts from "typescript";
import { describe, expect, it } from "vitest";
import { importsOf, readTree, roomOf, type Tree } from "../../docs/rooms/imports.js";
import { rooms } from "../../docs/rooms/rooms.js";
import { roles } from "../../src/edition/role.js";

const names = rooms.map(({ name }) => name);
const longestFile = 300;
function wrongImports(tree: Tree): readonly string[] {
  return [...tree].flatMap(([file, text]) => {
    if (file === "index.ts") return [];
    const room = roomOf(file);
    const floor = names.indexOf(room);
    const own = rooms[floor];
    if (own === undefined) return [`${file}: the room "${room}" is not in the list of floors`];
    return importsOf(file, text)
      .filter((target) => {
        if (target.startsWith("node:")) return own.nodeModules !== true;
        if (own.packages?.includes(target)) return false;
        const above = names.indexOf(roomOf(target));
        return !tree.has(target) || above < 0 || above > floor;
      })
      .map((target) => `${file} may not import ${target}`);
  });
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
    .filter(([file]) => !file.endsWith(".generated.ts") && file !== "index.ts")
    .map(([file, text]) => ({ file, lines: text.trimEnd().split("\n").length }))
    .filter(({ lines }) => lines > longestFile)
    .map(({ file, lines }) => `${file} has ${lines} lines`);
}

/** The kernel gets rows and a policy; whose they are is not its business. */
function kernelSecrets(tree: Tree): readonly string[] {
  const secret = new RegExp(`(?<![\\w-])(?:${roles.join("|")}|20(?:08|11|14|17|20|23|26|29))(?![\\w-])`, "g");
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

describe("the checks themselves", () => {
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
        `// ${roles[0]} of 2008 may be named here\nexport const year = "2023", role = "${roles[0]}";`,
      ],
      ["sizing/long.ts", `${"\n".repeat(longestFile)}export {};`],
    ]);
    expect(wrongImports(tree)).toEqual([
      'cellar/a.ts: the room "cellar" is not in the list of floors',
      "units/a.ts may not import rules/b.ts",
      "units/c.ts may not import somewhere",
      "units/c.ts may not import node:fs",
      "installation/d.ts may not import somewhere",
      "rules/d.ts may not import valibot",
      "rules/b.ts may not import index.ts",
    ]);
    expect(cycles(tree)).toEqual(["units/b.ts -> units/c.ts -> units/b.ts"]);
    expect(longFiles(tree)).toEqual([`sizing/long.ts has ${longestFile + 1} lines`]);
    expect(kernelSecrets(tree)).toEqual(["sizing/k.ts mentions 2023", `sizing/k.ts mentions ${roles[0]}`]);
  });
});
