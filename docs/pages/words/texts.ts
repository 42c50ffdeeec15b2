import { readdirSync, readFileSync } from "node:fs";
import { join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import ts from "typescript";

/** What a person reads in a file, with the line in which it begins. */
export interface Text {
  readonly file: string;
  readonly line: number;
  readonly text: string;
}

const root = fileURLToPath(new URL("../../../", import.meta.url));

/** Members of the data that hold sentences of this project. Titles, quotations and what a source prints are in others. */
const sentences = new Set([
  ...[
    "says",
    "note",
    "question",
    "reason",
    "why",
    "consequence",
    "working",
    "readings",
    "disputed",
    "judges",
  ],
  ...["description"],
]);

/** Every sentence of the project: comments and texts of the code, prose of guides and changesets, sentences of the data. */
export function readTexts(): readonly Text[] {
  const inside = (folder: string): readonly string[] =>
    readdirSync(root + folder, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => relative(root, join(entry.parentPath, entry.name)).replaceAll("\\", "/"));
  const paths = [
    ...["README.md", "DEVELOPERS.md", "CHANGELOG.md"],
    ...["src/", "docs/", "tables/", "corpus/", "release/", ".github/", ".changeset/"].flatMap(inside),
  ];
  return paths.flatMap((file) => {
    const take = takers.find(([matches]) => matches.test(file))?.[1];
    return take === undefined ? [] : take(readFileSync(root + file, "utf8")).map((one) => ({ file, ...one }));
  });
}

type Taken = Omit<Text, "file">;

/** What is generated from checked data, and the list of words itself, are not read. */
const takers: readonly (readonly [RegExp, (text: string) => readonly Taken[]])[] = [
  [/\.generated\.ts$|^docs\/words\.md$|^docs\/site\/|words\/words\.json$/, () => []],
  [/\.ts$/, textsOfCode],
  [/\.md$/, textsOfMarkdown],
  [/^(?:tables|corpus)\/.*\.json$/, textsOfData],
];

/** Comments, and texts of more than one word. */
export function textsOfCode(code: string): readonly Taken[] {
  const source = ts.createSourceFile("any.ts", code, ts.ScriptTarget.Latest, true);
  const taken = new Map<number, string>();
  const visit = (node: ts.Node): void => {
    const before = ts.getLeadingCommentRanges(code, node.pos) ?? [];
    const behind = ts.getTrailingCommentRanges(code, node.end) ?? [];
    for (const { pos, end } of [...before, ...behind]) taken.set(pos, withoutExamples(code.slice(pos, end)));
    const isText =
      ts.isStringLiteralLike(node) || ts.isTemplateHead(node) || ts.isTemplateMiddleOrTemplateTail(node);
    if (isText && node.text.includes(" ")) taken.set(node.getStart(), node.text);
    ts.forEachChild(node, visit);
  };
  visit(source);
  return [...taken].map(([position, text]) => ({
    line: source.getLineAndCharacterOfPosition(position).line + 1,
    text: prose(text),
  }));
}

/** Paragraphs outside of code; a generated page has nothing, since its data is read. */
export function textsOfMarkdown(markdown: string): readonly Taken[] {
  if (/^<!-- Generated/.test(markdown)) return [];
  const own = markdown.replace(/^<!-- What follows is generated[\s\S]*$/m, "");
  const blanked = own.replace(/^```[\s\S]*?^```$/gm, (block) => block.replace(/[^\n]/g, ""));
  let line = 1;
  return blanked.split("\n\n").flatMap((paragraph) => {
    const begins = line;
    line += paragraph.split("\n").length + 1;
    return paragraph.trim() === "" ? [] : [{ line: begins, text: prose(paragraph) }];
  });
}

/** The members that hold sentences. */
export function textsOfData(json: string): readonly Taken[] {
  const taken: Taken[] = [];
  let passed = 0;
  const visit = (value: unknown, isSentence: boolean): void => {
    if (typeof value === "string" && isSentence && value.includes(" ")) {
      passed = Math.max(passed, json.indexOf(JSON.stringify(value), passed));
      taken.push({ line: json.slice(0, passed).split("\n").length, text: prose(value) });
      passed += 1;
    }
    if (Array.isArray(value)) for (const one of value) visit(one, isSentence);
    else if (typeof value === "object" && value !== null)
      for (const [key, one] of Object.entries(value)) visit(one, sentences.has(key));
  };
  visit(JSON.parse(json), false);
  return taken;
}

/** A doc comment's example is code. */
function withoutExamples(comment: string): string {
  return comment.replace(/@example[\s\S]*?(?=\n\s*\*\s*@|\*\/)/g, "");
}

/** Without inline code and addresses, on one line. */
function prose(text: string): string {
  return text
    .replace(/`[^`\n]*`/g, "`")
    .replace(/\{@link [^}]*\}/g, "")
    .replace(/\]\([^)]*\)/g, "]")
    .replace(/https?:\S+/g, "")
    .replace(/\n\s*(?:\*|\/\/)?\s*/g, " ");
}
