/** Refuses to publish what is not ready: npm runs it before "npm publish", also with --dry-run. Exit code 1 says why. */
import { readFileSync } from "node:fs";
import { faultsOf } from "./faults.js";

const read = (name: string): string => readFileSync(new URL(`../${name}`, import.meta.url), "utf8");
const faults = faultsOf({
  home: read("release/home.json"),
  manifest: read("package.json"),
  citation: read("CITATION.cff"),
  changelog: read("CHANGELOG.md"),
  results: read("release/results.json"),
});
for (const fault of faults) console.error(`not publishable: ${fault}`);
process.exitCode = faults.length === 0 ? 0 : 1;
