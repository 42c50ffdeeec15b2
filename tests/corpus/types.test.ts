import { readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { roleIds } from "bondmil";
import { sources } from "bondmil/corpus";
import ts from "typescript";
import { expect, it } from "vitest";

const root = fileURLToPath(new URL("../..", import.meta.url));
const { options } = ts.parseJsonConfigFileContent(
  ts.readConfigFile(join(root, "tsconfig.json"), ts.sys.readFile).config,
  ts.sys,
  root,
);

/** What the compiler says of a JSON document that is written where a type is expected. */
function typeErrors(documents: ReadonlyMap<string, string>): readonly string[] {
  const host = ts.createCompilerHost(options, true);
  const written = new Map(
    [...documents].map(([name, code]) => [join(root, "corpus", `${name}.check.ts`), code]),
  );
  const { fileExists, readFile } = host;
  const program = ts.createProgram([...written.keys()], options, {
    ...host,
    fileExists: (path) => written.has(path) || fileExists(path),
    readFile: (path) => written.get(path) ?? readFile(path),
    getSourceFile: (path, language) => {
      const code = written.get(path) ?? readFile(path);
      return code === undefined ? undefined : ts.createSourceFile(path, code, language, true);
    },
  });
  return [...written.keys()].flatMap((path) => {
    const file = program.getSourceFile(path);
    return program
      .getSemanticDiagnostics(file)
      .map(({ messageText }) => `${path}: ${ts.flattenDiagnosticMessageText(messageText, "\n")}`);
  });
}

function checkFile(role: string, json: string): string {
  return `import type { CheckFile } from "./tools/runner/model.js";\nexport const file: CheckFile<"${role}"> = ${json};`;
}

const documents = new Map(
  roleIds.map((role) => [role, readFileSync(join(root, "corpus", `${role}.json`), "utf8")] as const),
);

const json = documents.get("intersystem-bonding-conductor") ?? "";
const sound = new Map([
  ...[...documents].map(([role, text]) => [role, checkFile(role, text)] as const),
  [
    "register",
    `import type { Sources } from "../tables/tools/source.js";\nexport const register: Sources = ${JSON.stringify(sources)};`,
  ] as const,
]);
const broken = new Map([
  ["another-role", checkFile("main-bonding-jumper", json)],
  ["another-key", checkFile("intersystem-bonding-conductor", json.replace('"locator"', '"place"'))],
]);

it("the files have the types that `bondmil/corpus` gives them, and files of another shape have not", () => {
  const errors = typeErrors(new Map([...sound, ...broken]));
  const inBroken = errors.filter((error) =>
    [...broken.keys()].some((name) => error.includes(`${name}.check.ts`)),
  );
  expect(errors.filter((error) => !inBroken.includes(error))).toEqual([]);
  for (const name of broken.keys()) expect(inBroken.join("\n")).toContain(`${name}.check.ts`);
});
