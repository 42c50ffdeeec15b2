/**
 * Builds the site into docs/site: npm run site. With `--reference <folder>` it takes the reference from there, where an earlier
 * `--keep-reference <folder>` left it, since reading the types takes by far the longest.
 */
import { existsSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { parseArgs } from "node:util";
import { entryPoints } from "./reference/entries.js";
import { writeReference } from "./reference/typedoc.js";
import { writeSite } from "./site.js";

const root = fileURLToPath(new URL("../../", import.meta.url));
const out = join(root, "docs/site");

const { values } = parseArgs({
  options: { reference: { type: "string" }, "keep-reference": { type: "string" } },
});
const entries = entryPoints(root);
const scratch = mkdtempSync(join(tmpdir(), "bondmil-reference-"));
const reference = values.reference ?? values["keep-reference"] ?? scratch;
try {
  if (values.reference === undefined) await writeReference(root, entries, reference);
  rmSync(out, { recursive: true, force: true });
  const hasTryPage = await buildTryPage(join(out, "try"));
  const pages = writeSite({ root, reference, entries, hasTryPage }, out);
  console.log(`docs/site has ${pages.length} pages${hasTryPage ? " and the page to try" : ""}`);
} finally {
  rmSync(scratch, { recursive: true, force: true });
}

/** The page on which a visitor sizes an installation is a program of its own; it comes along where it is there. */
async function buildTryPage(folder: string): Promise<boolean> {
  const module = join(root, "docs/try/build.ts");
  if (!existsSync(module)) return false;
  const { buildTryPage: build } = (await import(pathToFileURL(module).href)) as {
    readonly buildTryPage: (outDir: string) => Promise<unknown>;
  };
  await build(folder);
  return true;
}
