import { spawnSync } from "node:child_process";
import { cpSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

const root = join(import.meta.dirname, "../..");

/** A copy of what the generator reads and writes, to be changed by a test. */
export interface RepositoryCopy {
  readonly path: (...parts: readonly string[]) => string;
  /** Runs one of the two tools of `npm run generate`; that of the tables by default. */
  readonly generate: (tool?: "generate" | "shapes") => { readonly ok: boolean; readonly said: string };
  readonly remove: () => void;
}

export function copyRepository(): RepositoryCopy {
  const temp = mkdtempSync(join(tmpdir(), "bondmil-copy-"));
  for (const part of ["src", "tables", "docs/schema", "corpus/schema", "corpus/tools", "biome.json"])
    cpSync(join(root, part), join(temp, part), { recursive: true });
  writeFileSync(join(temp, "package.json"), JSON.stringify({ type: "module" }));
  symlinkSync(join(root, "node_modules"), join(temp, "node_modules"), "junction");
  const tsx = join(root, "node_modules/tsx/dist/cli.mjs");
  return {
    path: (...parts) => join(temp, ...parts),
    generate: (tool = "generate") => {
      const run = spawnSync(process.execPath, [tsx, `tables/tools/${tool}.ts`], {
        cwd: temp,
        encoding: "utf8",
      });
      return { ok: run.status === 0, said: run.stdout + run.stderr };
    },
    remove: () => rmSync(temp, { recursive: true, force: true }),
  };
}
