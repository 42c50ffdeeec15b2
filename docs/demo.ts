/**
 * The main job on an invented drawing, a cold store with six disconnects behind a wireway: every bonding and grounding conductor
 * with its size, places and reason. Another drawing is read if its path is given: `npm run demo -- docs/drawings/print-works.json`.
 */
import { readFileSync } from "node:fs";
import { buildSchedule, checkInstalled, readDrawing, writeCheck, writeSchedule } from "bondmil";

const path = process.argv[2] ?? new URL("drawings/cold-store.json", import.meta.url);
const drawing = readDrawing(readFileSync(path, "utf8"));

console.log(writeSchedule(buildSchedule(drawing)));
if (drawing.installed !== undefined) console.log(`\n${writeCheck(checkInstalled(drawing))}`);
