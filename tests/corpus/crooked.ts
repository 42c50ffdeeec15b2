/** A program that answers in every way there is, most of them wrong: one JSON question a line, one JSON answer a line. */
import { createInterface } from "node:readline";
import type { Given } from "bondmil/corpus";

const sizes: readonly string[] = ["8 AWG", "6 AWG", "4 AWG", "2 AWG", "1/0 AWG", "3/0 AWG", "250 kcmil"];

/** The answer to the question with this number. */
export function crooked(number: number): Given {
  const size = sizes[number % sizes.length] ?? "";
  const forms: readonly Given[] = [
    { size },
    { size, requiredArea: 105600, sum: 1000000 },
    { size, quantity: 2 },
    { outcome: "not-required", requiredArea: 0 },
    { outcome: "area-only", requiredArea: 41740 },
    { errors: ["empty-list"] },
    { thrown: "broken" },
    null,
    { size, requiredArea: null, assumedSum: null },
  ];
  return forms[Math.floor(number / sizes.length) % forms.length] ?? null;
}

if (process.argv[1] === import.meta.filename) {
  let number = 0;
  for await (const line of createInterface({ input: process.stdin })) {
    JSON.parse(line);
    process.stdout.write(`${JSON.stringify(crooked(number++))}\n`);
  }
}
