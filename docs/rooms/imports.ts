import { readdirSync, readFileSync } from "node:fs";
import { posix } from "node:path";
import { fileURLToPath } from "node:url";
import ts from "typescript";

/** Paths below src with forward slashes, and their text. */
export type Tree = ReadonlyMap<string, string>;

/** The sources of the library. */
export function readTree(): Tree {
  const src = fileURLToPath(new URL("../../src/", import.meta.url));
  const paths = readdirSync(src, { recursive: true, encoding: "utf8" }).filter((path) =>
    path.endsWith(".ts"),
  );
  return new Map(paths.map((path) => [path.replaceAll("\\", "/"), readFileSync(src + path, "utf8")]));
}

/** What a file imports: paths below src, or the names of packages. Imports of types count. */
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
