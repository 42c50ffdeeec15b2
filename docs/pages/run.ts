/**
 * Writes the generated pages of the documentation: npm run pages, or those of some builders: npm run pages -- atlas coverage.
 * With `--check` it writes nothing and exits with 1 if a page is stale.
 */
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { parseArgs } from "node:util";
import { builders } from "./builders.js";

const root = new URL("../../", import.meta.url);

try {
  const { values, positionals } = parseArgs({
    options: { check: { type: "boolean", default: false } },
    allowPositionals: true,
  });
  const names = positionals.length === 0 ? Object.keys(builders) : positionals;
  for (const name of names) writeOrCheck(name, values.check);
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}

function writeOrCheck(name: string, check: boolean): void {
  const build = Object.hasOwn(builders, name) ? builders[name] : undefined;
  if (build === undefined)
    throw new Error(`there is no page "${name}"; there are ${Object.keys(builders).join(", ")}`);
  for (const [path, text] of Object.entries(build())) {
    const fresh = readIfThere(path) === text;
    if (!check && !fresh) write(path, text);
    if (check && !fresh) process.exitCode = 1;
    console.log(`${path} ${fresh ? "is fresh" : check ? `is stale: npm run pages -- ${name}` : "written"}`);
  }
}

function write(path: string, text: string): void {
  const file = new URL(path, root);
  mkdirSync(new URL(".", file), { recursive: true });
  writeFileSync(file, text);
}

function readIfThere(path: string): string | undefined {
  try {
    return readFileSync(new URL(path, root), "utf8");
  } catch {
    return undefined;
  }
}
