import { readFileSync } from "node:fs";
import { join } from "node:path";

/** An import path of the package, and the module behind it. */
export interface EntryPoint {
  /** What a program writes in its import. */
  readonly name: string;
  /** The module, as a path in the repository. */
  readonly source: string;
}

interface PackageFile {
  readonly name: string;
  readonly exports: Readonly<Record<string, string | { readonly import: { readonly types: string } }>>;
  readonly tsup: readonly { readonly dts?: { readonly entry: Readonly<Record<string, string>> } }[];
}

/** Every import path that has types, in the order of the package's exports. */
export function entryPoints(root: string): readonly EntryPoint[] {
  const file = JSON.parse(readFileSync(join(root, "package.json"), "utf8")) as PackageFile;
  const sources = Object.assign({}, ...file.tsup.map(({ dts }) => dts?.entry ?? {})) as Record<
    string,
    string
  >;
  return Object.entries(file.exports).flatMap(([path, target]): readonly EntryPoint[] => {
    if (typeof target === "string") return [];
    const name = file.name + path.slice(1);
    const built = /([^/]+)\.d\.ts$/.exec(target.import.types)?.[1] ?? "";
    const source = sources[built];
    if (source === undefined)
      throw new Error(
        `package.json exports "${name}" from ${target.import.types}, which no build has as its entry`,
      );
    return [{ name, source }];
  });
}
