/** Stubs for a new edition that fail until they are filled: npm run scaffold:edition -- 2029 */
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { scaffoldEdition } from "./scaffold/scaffold.js";

const { positionals } = parseArgs({ allowPositionals: true });
const { lines, ok } = scaffoldEdition(
  fileURLToPath(new URL("../../", import.meta.url)),
  positionals[0] ?? "",
);
console.log(lines.join("\n"));
process.exitCode = ok ? 0 : 1;
