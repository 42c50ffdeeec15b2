/**
 * Holds many more installations against the laws than the tests do, on every processor. INSTALLATIONS, CHANGES and EVERY say how many, with
 * how many changes each, and how many with every change; SEED starts the dice.
 */
import { fork } from "node:child_process";
import { once } from "node:events";
import { availableParallelism } from "node:os";
import { fileURLToPath } from "node:url";

const asked = (name: string, usual: number): number => {
  const value = Number(process.env[name] ?? usual);
  if (Number.isInteger(value) && value >= 0) return value;
  console.error(`${name} must be a whole number, got "${process.env[name]}"`);
  process.exit(2);
};

const seed = asked("SEED", 20080101);
const rows = [
  { first: seed, count: asked("INSTALLATIONS", 100_000), changes: asked("CHANGES", 10) },
  { first: seed + 0x4000_0000, count: asked("EVERY", 2000), changes: "every" },
] as const;

const start = performance.now();
const processes = availableParallelism();
console.log(`installations: seed ${seed}, ${processes} processes`);
for (const { first, count, changes } of rows) {
  const each = Math.ceil(count / processes);
  const parts = Array.from({ length: processes }, (_, i) => [i * each, (i + 1) * each]);
  const codes = await Promise.all(
    parts.map(async (part) => {
      const [from, to] = part.map((n) => Math.min(n, count));
      return run([first, from, to, changes].map(String));
    }),
  );
  if (codes.some((code) => code !== 0)) process.exitCode = 1;
  const seconds = Math.round((performance.now() - start) / 1000);
  console.log(`${count} installations with ${changes} changes each, ${seconds} s`);
}

/** Goes through a part in a process of its own; gives the code that it ended with. */
async function run(part: readonly string[]): Promise<unknown> {
  const child = fork(fileURLToPath(new URL("proof-part.ts", import.meta.url)), part);
  const [code] = await once(child, "exit");
  return code;
}
