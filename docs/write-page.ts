import { readFileSync, writeFileSync } from "node:fs";

/** Writes a page of this folder; with `--check` on the command line it only says whether the written one is fresh. */
export function writePage(name: string, text: string, command: string): void {
  const path = new URL(name, import.meta.url);
  if (!process.argv.includes("--check")) {
    writeFileSync(path, text);
    console.log(`docs/${name} written`);
  } else if (readIfThere(path) !== text) {
    console.error(`docs/${name} is stale: npm run ${command}`);
    process.exitCode = 1;
  } else {
    console.log(`docs/${name} is fresh`);
  }
}

function readIfThere(path: URL): string | undefined {
  try {
    return readFileSync(path, "utf8");
  } catch {
    return undefined;
  }
}
