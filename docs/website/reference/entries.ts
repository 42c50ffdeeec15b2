import { readFileSync } from "node:fs";
import { join } from "node:path";

/** An import path of the package, and the module behind it. */
export interface EntryPoint {
  /** What a program writes in its import. */
  readonly name: string;
  /** The module, as a path in the repository. */
  readonly source: string;
}

type Target = { readonly types: string } | { readonly import: { readonly types: string } };

interface PackageFile {
  readonly name: string;
  readonly exports: Readonly<Record<string, string | Target>>;
  readonly tsup: readonly { readonly dts?: { readonly entry: Readonly<Record<string, string>> } }[];
}

/**
 * Every import path that has names of its own, in the order of the package's exports: a second build of a module has those of the first, and a part of the library
 * (`.entry.ts`) those of the whole.
 */
export function entryPoints(root: string): readonly EntryPoint[] {
  const file = JSON.parse(readFileSync(join(root, "package.json"), "utf8")) as PackageFile;
  const sources = Object.assign({}, ...file.tsup.map(({ dts }) => dts?.entry ?? {})) as Record<
    string,
    string
  >;
  const entries = Object.entries(file.exports).flatMap(([path, target]): readonly EntryPoint[] => {
    if (typeof target === "string") return [];
    const name = file.name + path.slice(1);
    const { types } = "import" in target ? target.import : target;
    const built = /([^/]+)\.d\.ts$/.exec(types)?.[1] ?? "";
    const source = sources[built];
    if (source === undefined)
      throw new Error(`package.json exports "${name}" from ${types}, which no build has as its entry`);
    return [{ name, source }];
  });
  return entries.filter(
    ({ source }, i) =>
      !source.endsWith(".entry.ts") && entries.findIndex((one) => one.source === source) === i,
  );
}
