import { deepStrictEqual, fail } from "node:assert/strict";
import { join } from "node:path";
import { compileFunction } from "node:vm";
import * as bondmil from "bondmil";
import * as corpus from "bondmil/corpus";
import * as tables from "bondmil/tables";
import ts from "typescript";
import { describe, expect, it } from "vitest";
import { executable } from "./executable.js";
import {
  markdownSnippets,
  root,
  type Snippet,
  shortName,
  snippetsOfComment,
  snippetsOfSource,
  sourceFiles,
} from "./snippets.js";

const config = ts.getParsedCommandLineOfConfigFile(
  join(root, "tsconfig.json"),
  {
    isolatedDeclarations: false,
    declaration: false,
    // Two examples may use the same names.
    moduleDetection: ts.ModuleDetectionKind.Force,
  },
  { ...ts.sys, onUnRecoverableConfigFileDiagnostic: (problem) => fail(String(problem.messageText)) },
);
const options = config?.options ?? fail("tsconfig.json cannot be read");
const host = ts.createCompilerHost(options, true);

const modules: ReadonlyMap<string, unknown> = new Map<string, unknown>([
  ["bondmil", bondmil],
  ["bondmil/corpus", corpus],
  ["bondmil/tables", tables],
]);
const faces = ["src/index.ts", "corpus/tools/index.ts", "tables/tools/index.ts"];

const sources = sourceFiles.map((path) => host.getSourceFile(path, ts.ScriptTarget.ES2022) ?? fail(path));
const inComments = sources.flatMap(snippetsOfSource);
const snippets = [...inComments, ...markdownSnippets()];

function programWithSnippets(): ts.Program {
  const virtual = new Map(
    snippets.map((snippet, index) => [join(root, ".snippets", `${index}.ts`), snippet.code]),
  );
  const withSnippets: ts.CompilerHost = {
    ...host,
    fileExists: (path) => virtual.has(path) || host.fileExists(path),
    readFile: (path) => virtual.get(path) ?? host.readFile(path),
    getSourceFile: (path, settings) => {
      const code = virtual.get(path);
      return code === undefined
        ? host.getSourceFile(path, settings)
        : ts.createSourceFile(path, code, settings, true);
    },
  };
  return ts.createProgram([...virtual.keys(), ...sourceFiles], options, withSnippets);
}

function typeErrors(program: ts.Program): readonly string[] {
  return snippets.flatMap((snippet, index) => {
    const source = program.getSourceFile(join(root, ".snippets", `${index}.ts`));
    if (source === undefined) return [`${snippet.place}: was not compiled`];
    return [...program.getSyntacticDiagnostics(source), ...program.getSemanticDiagnostics(source)].map(
      (problem) => {
        const line = source.getLineAndCharacterOfPosition(problem.start ?? 0).line;
        const text = ts.flattenDiagnosticMessageText(problem.messageText, "\n  ");
        return `${snippet.place}: line ${snippet.firstLine + line + 1}: ${text}`;
      },
    );
  });
}

function checks(snippet: Snippet): number {
  try {
    return executable(snippet).checks;
  } catch {
    return 0; // The test of that snippet says why.
  }
}

/** Functions and constants of the public face whose doc comment shows no checked example. */
function withoutExample(program: ts.Program, path: string): readonly string[] {
  const checker = program.getTypeChecker();
  const index = program.getSourceFile(join(root, path));
  const face = index && checker.getSymbolAtLocation(index);
  if (face === undefined) return [`${path} exports nothing`];
  return checker.getExportsOfModule(face).flatMap((exported) => {
    const symbol = exported.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(exported) : exported;
    if (!(symbol.flags & (ts.SymbolFlags.Function | ts.SymbolFlags.Variable))) return [];
    const declarations = symbol.declarations ?? [];
    const shown = declarations.some((declaration) =>
      ts
        .getJSDocCommentsAndTags(declaration)
        .filter(ts.isJSDoc)
        .some((doc) =>
          snippetsOfComment(doc, declaration.getSourceFile()).some((snippet) => checks(snippet) > 0),
        ),
    );
    const file = declarations[0]?.getSourceFile();
    const line = file?.getLineAndCharacterOfPosition(declarations[0]?.getStart() ?? 0).line ?? 0;
    return shown ? [] : [`${file ? shortName(file.fileName) : "?"}:${line + 1} ${exported.name}`];
  });
}

async function run(snippet: Snippet): Promise<void> {
  const load = (name: string): unknown => modules.get(name) ?? fail(`no module "${name}" in an example`);
  const throws = async (action: () => Promise<void>, code: string): Promise<void> => {
    const thrown: unknown = await action().then(
      () => undefined,
      (error: unknown) => error,
    );
    const issues = (thrown as { readonly issues?: readonly { readonly code: string }[] } | undefined)?.issues;
    const seen = issues?.map((issue) => issue.code);
    if (!seen?.includes(code))
      fail(`expected the issue ${code}, got ${seen?.join(", ") ?? thrown ?? "no error"}`);
  };
  const { body } = executable(snippet);
  try {
    await compileFunction(body, ["require", "$same", "$throws"])(load, deepStrictEqual, throws);
  } catch (error) {
    throw new Error(`${snippet.place}: ${error instanceof Error ? error.message : String(error)}`);
  }
}

describe("examples in comments and guides", () => {
  const program = programWithSnippets();

  it("have correct types", () => {
    expect(typeErrors(program)).toEqual([]);
  });

  it("check at least one value each, in doc comments", () => {
    expect(inComments.filter((snippet) => checks(snippet) === 0).map((snippet) => snippet.place)).toEqual([]);
  });

  it("exist for every public function and constant", () => {
    expect(faces.flatMap((path) => withoutExample(program, path))).toEqual([]);
  });

  for (const snippet of snippets) it(snippet.place, () => run(snippet));
});
