import { readFileSync } from "node:fs";
import { join, posix } from "node:path";

/** Files that a file of the package points at: a source map, a target of package.json, a relative link or picture of a page. */
export function pointersOf(path: string, text: string): readonly string[] {
  const beside = (target: string): string => posix.join(posix.dirname(path), target);
  if (/\.[cm]?[jt]s$/.test(path))
    return [...text.matchAll(/^\/\/# sourceMappingURL=(?!data:)(\S+)/gm)].map(([, map = ""]) => beside(map));
  if (path === "package.json") return targetsIn(JSON.parse(text)).map(beside);
  if (!path.endsWith(".md")) return [];
  const prose = text.replace(/^```[\s\S]*?^```$/gm, "").replace(/`[^`\n]*`/g, "");
  return [...prose.matchAll(/\]\((?!<?\w+:|#)<?([^)\s#>]+)/g)].map(([, link = ""]) => beside(link));
}

function targetsIn(manifest: Readonly<Record<string, unknown>>): readonly string[] {
  const entries = [
    manifest["bin"],
    manifest["main"],
    manifest["module"],
    manifest["types"],
    manifest["exports"],
  ];
  const texts = (value: unknown): readonly string[] =>
    typeof value === "string" ? [value] : Object.values(value ?? {}).flatMap(texts);
  return entries.flatMap(texts).filter((target) => !target.includes("*"));
}

/** What the files of a package point at and is not among them; a folder is there if a file is in it. */
export function danglingIn(folder: string, packed: readonly string[]): readonly string[] {
  const isThere = (target: string): boolean =>
    packed.some((path) => path === target || path.startsWith(`${target.replace(/\/$/, "")}/`));
  return packed
    .filter((path) => /\.(?:[cm]?js|[cm]?ts|md)$|^package\.json$/.test(path))
    .flatMap((path) =>
      pointersOf(path, readFileSync(join(folder, path), "utf8"))
        .filter((target) => !isThere(target))
        .map((target) => `${path} points at ${target}`),
    );
}
