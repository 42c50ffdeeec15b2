/**
 * Checks the site in docs/site: npm run site:check. Every link and anchor; and, in Chromium, each page from telephone to desk, in light and in
 * dark. Paths as arguments narrow the second part to these pages.
 */
import { existsSync, readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { browserFaults, searchFaults } from "./check/browser.js";
import { linkFaults } from "./check/links.js";

const site = fileURLToPath(new URL("../site/", import.meta.url));
const executablePath = process.env["CHROMIUM"] ?? "/usr/bin/chromium";

/** What is looked for, and the page that has it. */
const searches = [
  ["main bonding jumper", "roles/main-bonding-jumper.html"],
  ["sumOfLargest", "reference/bondmil/functions/sumOfLargest.html"],
] as const;

const { positionals } = parseArgs({ allowPositionals: true });
if (!existsSync(site)) throw new Error("there is no docs/site; build it with: npm run site");
const pages = readdirSync(site, { recursive: true, encoding: "utf8" })
  .map((path) => path.replaceAll("\\", "/"))
  .filter((path) => path.endsWith(".html"))
  .sort();
const chosen = positionals.length === 0 ? pages : positionals;

report(`links and anchors of ${pages.length} pages`, linkFaults(site));
if (existsSync(executablePath)) {
  report(
    "the search",
    (
      await Promise.all(searches.map(([asked, wanted]) => searchFaults(executablePath, site, asked, wanted)))
    ).flat(),
  );
  report(`${chosen.length} pages in Chromium`, await browserFaults(executablePath, site, chosen));
} else
  console.warn(
    `\nSITE CHECK skipped in part: there is no ${executablePath}; install chromium or set CHROMIUM to its path\n`,
  );

function report(what: string, faults: readonly string[]): void {
  for (const fault of faults) console.error(fault);
  console.log(`${what}: ${faults.length === 0 ? "no fault" : `${faults.length} faults`}`);
  if (faults.length > 0) process.exitCode = 1;
}
