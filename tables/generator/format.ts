import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";

const biome = fileURLToPath(new URL("../../node_modules/@biomejs/biome/bin/biome", import.meta.url));

/** A text as the formatter of this repository writes it; Markdown is left as it is. */
export function formatted(path: string, text: string): string {
  if (path.endsWith(".md")) return text;
  const run = spawnSync(process.execPath, [biome, "format", `--stdin-file-path=${path}`], {
    input: text,
    encoding: "utf8",
  });
  if (run.status !== 0) throw new Error(`formatting failed: ${run.stderr}`);
  return run.stdout;
}
