import { readdirSync, readFileSync } from "node:fs";
import { join, relative, sep } from "node:path";
import { fileURLToPath } from "node:url";
import ts from "typescript";

export const root: string = fileURLToPath(new URL("../..", import.meta.url)).replace(/[\\/]$/, "");

/** One fenced example and where a reader finds it. */
export interface Snippet {
  /** `file:line` of the opening fence, and the symbol that it documents. */
  readonly place: string;
  /** Zero-based line of the first line of code in its file. */
  readonly firstLine: number;
  readonly file: string;
  readonly code: string;
}

const opening = /^(\s*)```(?:ts|typescript)(?![a-z])/;

function fences(lines: readonly string[], file: string, offset: number, symbol = ""): readonly Snippet[] {
  const found: Snippet[] = [];
  for (let index = 0; index < lines.length; index++) {
    const indent = opening.exec(lines[index] ?? "")?.[1];
    if (indent === undefined) continue;
    const end = lines.findIndex((line, at) => at > index && /^\s*```\s*$/.test(line));
    const place = `${file}:${offset + index + 1}${symbol && ` (${symbol})`}`;
    if (end < 0) throw new Error(`${place}: the fence is never closed`);
    const code = lines
      .slice(index + 1, end)
      .map((line) => (line.startsWith(indent) ? line.slice(indent.length) : line));
    found.push({ place, file, firstLine: offset + index + 1, code: code.join("\n") });
    index = end;
  }
  return found;
}

export function shortName(path: string): string {
  return relative(root, path).split(sep).join("/");
}

/** The doc comments written at this declaration, without those of its parents. */
function ownComments(node: ts.Node): readonly ts.JSDoc[] {
  return ts
    .getJSDocCommentsAndTags(node)
    .filter((doc): doc is ts.JSDoc => ts.isJSDoc(doc) && doc.parent === node);
}

function nameOf(node: ts.Node): string {
  const named = ts.isVariableStatement(node) ? node.declarationList.declarations[0] : node;
  return (named && ts.getNameOfDeclaration(named as ts.Declaration)?.getText()) ?? "";
}

export function snippetsOfComment(doc: ts.JSDoc, source: ts.SourceFile): readonly Snippet[] {
  const lines = source.text
    .slice(doc.pos, doc.end)
    .split(/\r?\n/)
    .map((line) => line.replace(/\*\/$/, "").replace(/^\s*(?:\/\*\*|\*)? ?/, ""));
  const offset = source.getLineAndCharacterOfPosition(doc.pos).line;
  return fences(lines, shortName(source.fileName), offset, nameOf(doc.parent));
}

export function snippetsOfSource(source: ts.SourceFile): readonly Snippet[] {
  const found: Snippet[] = [];
  const visit = (node: ts.Node): void => {
    for (const doc of ownComments(node)) found.push(...snippetsOfComment(doc, source));
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

function filesBelow(folder: string, ending: string): readonly string[] {
  return readdirSync(join(root, folder), { recursive: true, encoding: "utf8" })
    .map((path) => join(root, folder, path))
    .filter((path) => path.endsWith(ending))
    .sort();
}

export const sourceFiles: readonly string[] = ["src", "corpus", "tables"]
  .flatMap((folder) => filesBelow(folder, ".ts"))
  .filter((path) => !path.endsWith(".generated.ts"));

export function markdownSnippets(): readonly Snippet[] {
  const guides = filesBelow("docs", ".md").filter((path) => !shortName(path).startsWith("docs/site/"));
  const front = ["DEVELOPERS.md", "README.md", "corpus/README.md", "tables/README.md"];
  return [...front.map((name) => join(root, name)), ...guides].flatMap((path) =>
    fences(readFileSync(path, "utf8").split(/\r?\n/), shortName(path), 0),
  );
}
