/**
 * Holds many more installations against the laws than the tests do. INSTALLATIONS, CHANGES and EVERY say how many, with how many
 * changes each, and how many with every change; SEED starts the dice.
 */
import { diceOf } from "./dice.js";
import { drawInstallation } from "./drawn/installation.js";
import { type Breach, breachesOf, smallestBreaking } from "./trials.js";

const asked = (name: string, usual: number): number => {
  const value = Number(process.env[name] ?? usual);
  if (Number.isInteger(value) && value >= 0) return value;
  console.error(`${name} must be a whole number, got "${process.env[name]}"`);
  process.exit(2);
};

const seed = asked("SEED", 20080101);
const parts = [
  { count: asked("INSTALLATIONS", 100_000), changes: asked("CHANGES", 10) },
  { count: asked("EVERY", 2000), changes: "every" },
] as const;

const start = performance.now();
const seconds = (): string => `${Math.round((performance.now() - start) / 1000)} s`;
const broken = new Map<string, number>();
console.log(`installations: seed ${seed}`);
for (const [i, { count, changes }] of parts.entries()) {
  for (let n = 0; n < count; n += 1) {
    const own = (seed + i * 0x4000_0000 + n * 2_654_435_761) % 0x1_0000_0000;
    const installation = drawInstallation(diceOf(own));
    for (const breach of breachesOf(installation, own, changes)) note(installation, own, breach);
    if ((n + 1) % 5000 === 0) console.log(`${n + 1} with ${changes} changes, ${seconds()}`);
  }
  console.log(`${count} installations with ${changes} changes each, ${seconds()}`);
}
for (const [law, count] of broken) console.log(`broken ${count} times: ${law}`);
if (broken.size > 0) process.exitCode = 1;

/** Says of each breach how it is had again, and of the first of a law the smallest installation that has it. */
function note(installation: ReturnType<typeof drawInstallation>, own: number, breach: Breach): void {
  const before = broken.get(breach.law) ?? 0;
  broken.set(breach.law, before + 1);
  console.log(`${breach.law}\n  installation ${own}: ${breach.words}`);
  if (before > 0) return;
  console.log(`  smallest: ${JSON.stringify(smallestBreaking(installation, own, breach))}`);
}
