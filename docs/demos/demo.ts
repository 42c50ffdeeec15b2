/**
 * The main job on an invented drawing, a cold store with six disconnects behind a wireway: every bonding and grounding conductor
 * with its size, places and reason. Another installation is taken if its path is given: `npm run demo -- docs/installations/print-works.json`.
 */
import { readFileSync } from "node:fs";
import { checkDocument, checkOf, readInstallation, render, scheduleDocument, scheduleOf } from "bondmil";

const path = process.argv[2] ?? new URL("../installations/cold-store.json", import.meta.url);
const installation = readInstallation(readFileSync(path, "utf8"));

console.log(render(scheduleDocument(scheduleOf(installation)), { as: "text" }));
if (installation.installed !== undefined) {
  console.log(render(checkDocument(checkOf(installation)), { as: "text" }));
}
