import { readdirSync, readFileSync } from "node:fs";
import { posix } from "node:path";
import { fileURLToPath } from "node:url";
import ts from "typescript";

/** Paths with forward slashes, and the text of the files. */
export type Tree = ReadonlyMap<string, string>;

const root = fileURLToPath(new URL("../../../", import.meta.url));

/** The sources of the library, by their paths below src. */
export function readTree(): Tree {
  return sourcesIn("src/");
}

/** Everything in TypeScript that stands beside the data, by its path in the repository. */
export function readToolTree(): Tree {
  const folders = ["tables/", "corpus/", "docs/", "release/"].flatMap((folder) =>
    [...sourcesIn(folder)].map(([path, text]) => [folder + path, text] as const),
  );
  return new Map(folders.filter(([path]) => !path.startsWith("docs/site/")));
}

function sourcesIn(folder: string): Tree {
  const paths = readdirSync(root + folder, { recursive: true, encoding: "utf8" })
    .map((path) => path.replaceAll("\\", "/"))
    .filter((path) => path.endsWith(".ts"));
  return new Map(paths.map((path) => [path, readFileSync(root + folder + path, "utf8")]));
}

/** What a file imports: paths in the tree of the file, or the names of packages. Imports of types count. */
export function importsOf(file: string, text: string): readonly string[] {
  return ts
    .preProcessFile(text, true, false)
    .importedFiles.map(({ fileName }) =>
      fileName.startsWith(".") ? posix.join(posix.dirname(file), fileName).replace(/\.js$/, ".ts") : fileName,
    );
}

/** The room of a file below src; empty for one that is in none. */
export function roomOf(file: string): string {
  return file.includes("/") ? file.slice(0, file.indexOf("/")) : "";
}
