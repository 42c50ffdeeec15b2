import { fileURLToPath } from "node:url";
import { brotliCompressSync } from "node:zlib";
import * as bondmil from "bondmil";
import { build, transform } from "esbuild";
import { rollup } from "rollup";

/** The library as it is published, one module. */
export const published = fileURLToPath(new URL("../../dist/index.js", import.meta.url));

/** The same before it is made one module, where each byte still has its file. */
const source = fileURLToPath(new URL("../../src/index.ts", import.meta.url));

/** What a program imports, and the most that the issue of size asks of it: kilobytes, minified and brotli. */
export interface Imported {
  readonly what: string;
  readonly names: readonly string[];
  readonly goal: number;
}

/** Names under which the roles are exported. */
const roleNames = Object.entries(bondmil)
  .filter(([, value]) => Object.values(bondmil.roles).includes(value as never))
  .map(([name]) => name);

export const imported: readonly Imported[] = [
  { what: "prepared path of one role", names: ["prepare", "mainBondingJumper"], goal: 4 },
  { what: "one sizing function", names: ["size", "mainBondingJumper"], goal: 7.5 },
  { what: "all roles", names: ["size", ...roleNames], goal: 22 },
  { what: "document layer", names: ["scheduleOf"], goal: 40 },
];

function program({ names }: Pick<Imported, "names">, library = published): string {
  const list = names.join(", ");
  return `import { ${list} } from ${JSON.stringify(library)};\nglobalThis.used = [${list}];`;
}

/** Minified code of a program as esbuild bundles it, with the bytes of each source. */
export async function byEsbuild(one: Pick<Imported, "names">): Promise<string> {
  const { outputFiles } = await build({
    stdin: { contents: program(one), resolveDir: "." },
    bundle: true,
    minify: true,
    format: "esm",
    write: false,
  });
  return outputFiles[0]?.text ?? "";
}

/** The same as Rollup bundles it, minified by esbuild. */
export async function byRollup(one: Pick<Imported, "names">): Promise<string> {
  const entry = "\0program";
  const bundle = await rollup({
    input: entry,
    plugins: [
      {
        name: "program",
        resolveId: (id) => (id === entry ? id : null),
        load: (id) => (id === entry ? program(one) : null),
      },
    ],
  });
  const { output } = await bundle.generate({ format: "esm" });
  const { code } = await transform(output[0].code, { minify: true, format: "esm" });
  return code;
}

/**
 * What a program carries, by room of the library, most first: kilobytes of each room, minified and compressed by itself, so that they add up to more
 * than the whole. The tables are a room of their own.
 */
export async function kilobytesByRoom(
  one: Pick<Imported, "names">,
): Promise<readonly (readonly [string, number])[]> {
  const { outputFiles } = await build({
    stdin: { contents: program(one, source), resolveDir: "." },
    ...{ bundle: true, format: "esm", write: false },
  });
  const modules = (outputFiles[0]?.text ?? "").matchAll(
    /^\/\/ src\/(edition\/tables|[a-z-]+)\/.*\n((?:(?!\/\/ ).*\n)*)/gm,
  );
  const rooms = new Map<string, string>();
  for (const [, room = "", code = ""] of modules) rooms.set(room, (rooms.get(room) ?? "") + code);
  const each = [...rooms].map(async ([room, code]) => {
    const minified = await transform(code, { minify: true, format: "esm" });
    return [room, kilobytes(minified.code)] as const;
  });
  return (await Promise.all(each)).sort(([, a], [, b]) => b - a);
}

/** Kilobytes of code as it travels. */
export function kilobytes(code: string): number {
  return brotliCompressSync(code).length / 1000;
}
