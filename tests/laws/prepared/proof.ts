/** Holds the prepared path against the full one over many more cases than the tests do: CASES says how many, SEED starts the dice. */
import { disagreements } from "./cases.js";

const asked = (name: string, usual: number): number => {
  const value = Number(process.env[name] ?? usual);
  if (Number.isInteger(value) && value >= 0) return value;
  console.error(`${name} must be a whole number, got "${process.env[name]}"`);
  process.exit(2);
};

const seed = asked("SEED", 20080101);
const cases = asked("CASES", 10_000_000);
const found = disagreements(seed, cases);
for (const one of found) console.log(JSON.stringify(one));
console.log(
  `prepared and full path: seed ${seed}, ${cases} cases, ${found.length === 0 ? "they agree" : "they disagree"}`,
);
if (found.length > 0) process.exitCode = 1;
