/** Varies what is ours in each check and prints where the answer moves: npm run corpus:assumed. It exits with 1 if a cited answer hangs on us. */
import { movesOf } from "./assumptions/moves.js";
import { library } from "./runner/library.js";
import { sayGiven } from "./runner/misses.js";
import { entriesOf } from "./runner/model.js";
import { readDocuments } from "./runner/read.js";
import { type Line, table } from "./runner/text.js";
import { validate } from "./runner/validate.js";

const { corpus, faults } = validate(readDocuments());
if (corpus === null || faults.length > 0) throw new Error(`The corpus is not valid:\n${faults.join("\n")}`);
const moves = entriesOf(corpus).flatMap((entry) => movesOf(entry, library).map((move) => ({ entry, move })));
const lines = moves.map(
  ({ entry: { check }, move }): Line => [
    check.id,
    check.standing,
    move.settledBy ?? "open",
    move.path,
    JSON.stringify(move.value) ?? "nothing",
    sayGiven(move.given),
  ],
);
console.log(table(["check", "standing", "settled by", "place", "with", "gives"], lines));
const hanging = moves.filter(
  ({ entry, move }) => entry.check.standing === "cited" && move.settledBy === undefined,
);
if (hanging.length > 0) console.error(`\n${hanging.length} cited answers hang on what is assumed.`);
process.exitCode = hanging.length > 0 ? 1 : 0;
