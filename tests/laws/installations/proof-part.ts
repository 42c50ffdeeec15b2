/** One part of the proof of installations, in a process of its own: SEED FROM TO CHANGES, from one place in the row that a seed starts to another. */
import { diceOf } from "./dice.js";
import { drawInstallation } from "./drawn/installation.js";
import { breachesOf, smallestBreaking } from "./trials.js";

const [seed = 0, from = 0, to = 0, given = 0] = process.argv.slice(2).map(Number);
const changes = Number.isNaN(given) ? "every" : given;
const broken = new Set<string>();
for (let n = from; n < to; n += 1) {
  const own = (seed + n * 2_654_435_761) % 0x1_0000_0000;
  const installation = drawInstallation(diceOf(own));
  for (const breach of breachesOf(installation, own, changes)) {
    console.log(`BROKEN ${breach.law}\n  installation ${own}: ${breach.words}`);
    if (!broken.has(breach.law))
      console.log(`  smallest: ${JSON.stringify(smallestBreaking(installation, own, breach))}`);
    broken.add(breach.law);
  }
  if ((n + 1 - from) % 5000 === 0) console.log(`${from} to ${n + 1} with ${changes} changes`);
}
if (broken.size > 0) process.exitCode = 1;
