import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";

const biome = fileURLToPath(new URL("../../../node_modules/@biomejs/biome/bin/biome", import.meta.url));

/** A text as the formatter of this repository writes it, its imports in order; Markdown and CSV are left as they are. */
export function formatted(path: string, text: string): string {
  if (/\.(md|csv)$/.test(path)) return text;
  const args = ["check", "--write", "--linter-enabled=false", `--stdin-file-path=${path}`];
  const run = spawnSync(process.execPath, [biome, ...args], { input: text, encoding: "utf8" });
  if (run.status !== 0) throw new Error(`formatting failed: ${run.stderr}`);
  return run.stdout;
}
