import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { build } from "esbuild";
import { published } from "./bundles.js";

/** A module of the sources that is published under no name of its own, compiled as the build compiles it. */
export async function compiled<Module>(path: string): Promise<Module> {
  const folder = mkdtempSync(join(tmpdir(), "bondmil-bench-"));
  // To the end, because a profile reads in it which line came from where.
  process.on("exit", () => rmSync(folder, { recursive: true }));
  const outfile = join(folder, "module.mjs");
  await build({
    entryPoints: [fileURLToPath(new URL(`../../${path}`, import.meta.url))],
    alias: { bondmil: published },
    ...{ outfile, bundle: true, platform: "node", format: "esm", target: "es2022" },
  });
  return (await import(pathToFileURL(outfile).href)) as Module;
}
