import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

/** Folders whose Markdown becomes pages; only the uppermost files of the last three. */
const folders = [
  { folder: "docs", isDeep: true },
  { folder: "", isDeep: false },
  { folder: "corpus", isDeep: false },
  { folder: "tables", isDeep: false },
];

/** Folders of `docs/` that hold no prose: programs, and what they write. */
const noProse = /^docs\/(?:site|website|pages|demos|try)\//;

/** Every Markdown file that becomes a page, as a path in the repository, sorted. */
export function markdownFiles(root: string): readonly string[] {
  return folders
    .flatMap(({ folder, isDeep }) =>
      readdirSync(join(root, folder), { recursive: isDeep, encoding: "utf8" }).map((path) =>
        join(folder, path).replaceAll("\\", "/"),
      ),
    )
    .filter((path) => path.endsWith(".md") && !noProse.test(path))
    .sort();
}

/** Every Markdown file below a folder, by its path in it, with its text. */
export function readMarkdownBelow(folder: string): ReadonlyMap<string, string> {
  const paths = readdirSync(folder, { recursive: true, encoding: "utf8" })
    .map((path) => path.replaceAll("\\", "/"))
    .filter((path) => path.endsWith(".md"))
    .sort();
  return new Map(paths.map((path) => [path, readFileSync(join(folder, path), "utf8")]));
}
