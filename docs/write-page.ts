import { readFileSync, writeFileSync } from "node:fs";
import { posix } from "node:path";

/** Writes a page of this folder; with `--check` on the command line it only says whether the written one is fresh. */
export function writePage(name: string, text: string, command: string): void {
  const path = new URL(name, import.meta.url);
  const shown = posix.join("docs", name);
  if (!process.argv.includes("--check")) {
    writeFileSync(path, text);
    console.log(`${shown} written`);
  } else if (readIfThere(path) !== text) {
    console.error(`${shown} is stale: npm run ${command}`);
    process.exitCode = 1;
  } else {
    console.log(`${shown} is fresh`);
  }
}

function readIfThere(path: URL): string | undefined {
  try {
    return readFileSync(path, "utf8");
  } catch {
    return undefined;
  }
}
