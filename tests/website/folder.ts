import { mkdirSync, mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";

/** A new folder with these files. */
export function folderWith(files: Readonly<Record<string, string>>): string {
  const folder = mkdtempSync(join(tmpdir(), "bondmil-site-"));
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
  return folder;
}
