/** Stubs for a new role that fail until they are filled: npm run new-role roof-bonding-jumper */
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { scaffoldRole } from "./scaffold/role.js";

const { positionals } = parseArgs({ allowPositionals: true });
const { lines, ok } = scaffoldRole(fileURLToPath(new URL("../../", import.meta.url)), positionals[0] ?? "");
console.log(lines.join("\n"));
process.exitCode = ok ? 0 : 1;
