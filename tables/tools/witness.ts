/** Sheets for people who own a copy of an edition, and what comes back from them: see docs/validating-a-table.md. */
import { fileURLToPath } from "node:url";
import { witness } from "./witness/command.js";

try {
  const { lines, ok } = witness(fileURLToPath(new URL("..", import.meta.url)), process.argv.slice(2));
  console.log(lines.join("\n"));
  process.exitCode = ok ? 0 : 1;
} catch (error) {
  console.error(error instanceof Error ? error.message : String(error));
  process.exitCode = 1;
}
