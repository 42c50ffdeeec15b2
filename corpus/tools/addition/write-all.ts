import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";

/** Writes all of these texts over their files, or, if one cannot be written, none. */
export function writeAll(root: string, texts: ReadonlyMap<string, string>): void {
  const before = new Map([...texts.keys()].map((path) => [path, readFileSync(join(root, path), "utf8")]));
  const written: string[] = [];
  try {
    for (const [path, text] of texts) {
      written.push(path);
      writeFileSync(join(root, path), text);
    }
  } catch (error) {
    for (const path of written) writeFileSync(join(root, path), before.get(path) ?? "");
    throw error;
  }
}
