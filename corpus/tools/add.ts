/** Scaffolds a check, or adds one to the corpus: npm run corpus:add -- draft.json --role main-bonding-jumper --source some-handbook */
import { fileURLToPath } from "node:url";
import { addToCorpus } from "./addition/command.js";

const { lines, exitCode } = addToCorpus(
  fileURLToPath(new URL("../../", import.meta.url)),
  process.argv.slice(2),
);
console.log(lines.join("\n"));
process.exitCode = exitCode;
