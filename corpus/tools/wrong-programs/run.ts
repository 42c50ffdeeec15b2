/**
 * Puts the corpus to every wrong program, and prints what it notices: npm run wrong-programs. What no check notices is tried on the grid of its
 * role, so that the account of the unnoticed is made anew. It exits with 1 if that account differs from the settled one; with `--settle` it
 * writes it, but never with a program that was noticed before. An empty account is filled.
 */
import { writeFileSync } from "node:fs";
import { parseArgs } from "node:util";
import { entriesOf } from "../runner/model.js";
import { readDocuments } from "../runner/read.js";
import { table } from "../runner/text.js";
import { validate } from "../runner/validate.js";
import { accountOf, growthOf, judgeAll, settledAccount } from "./account.js";
import { namedMistakes } from "./mistakes.js";
import { pointsOf, tallyHead, tallyRows } from "./tally.js";

process.exitCode = main();

function main(): number {
  const { values } = parseArgs({ options: { settle: { type: "boolean", default: false } } });
  const { corpus, faults } = validate(readDocuments());
  if (corpus === null || faults.length > 0) {
    console.error(`The corpus is not valid:\n${faults.join("\n")}`);
    return 1;
  }
  const judged = judgeAll(entriesOf(corpus), namedMistakes);
  const made = accountOf(judged);
  const { byRole, byEdition } = tallyRows(pointsOf(judged, made));
  console.log(table(["conductor, 2008 to 2023", ...tallyHead], byRole));
  console.log(`\n${table(["edition", ...tallyHead], byEdition)}`);
  const grown = growthOf(made, settledAccount);
  if (grown.length > 0) {
    console.error(`\nNoticed before, or not known:\n${grown.join("\n")}`);
    return 1;
  }
  if (JSON.stringify(made) === JSON.stringify(settledAccount)) return 0;
  if (!values.settle) {
    console.error("\nMore is noticed than the account says: npm run wrong-programs -- --settle");
    return 1;
  }
  const path = new URL("../../wrong-programs/account.json", import.meta.url);
  writeFileSync(path, `${JSON.stringify(made, null, 2)}\n`);
  return 0;
}
