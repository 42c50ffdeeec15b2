/**
 * Makes the results of a version anew and compares them with those that were recorded at its release: npm run reproduce.
 * With --write it records them. Exit code 1: something differs, and each difference is named.
 */
import { spawnSync } from "node:child_process";
import { readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { differencesOf } from "./differences.js";
import { resultsOf } from "./results.js";

const path = new URL("results.json", import.meta.url);
const tsx = fileURLToPath(new URL("../node_modules/tsx/dist/cli.mjs", import.meta.url));

for (const tool of ["generate", "shapes"]) {
  const script = fileURLToPath(new URL(`../tables/tools/${tool}.ts`, import.meta.url));
  const { status, stdout, stderr } = spawnSync(process.execPath, [tsx, script, "--check"], {
    encoding: "utf8",
  });
  if (status !== 0) {
    console.error(`tables/tools/${tool}.ts does not make what is here:\n${stdout}${stderr}`);
    process.exitCode = 1;
  }
}

const now = resultsOf();
if (process.argv.includes("--write")) {
  writeFileSync(path, `${JSON.stringify(now, null, 2)}\n`);
  console.log("release/results.json written");
} else {
  const differences = differencesOf(JSON.parse(readFileSync(path, "utf8")), now);
  for (const one of differences) console.error(one);
  if (differences.length > 0) process.exitCode = 1;
  console.log(
    `${differences.length === 0 ? "Reproduced" : "NOT reproduced"}: bondmil ${now.version}, ${now.corpus.checks} checks of the corpus, ${now.sizings} sizings of the grid, ${Object.keys(now.schedules).length} schedules.`,
  );
}
