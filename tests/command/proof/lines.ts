import { readFileSync } from "node:fs";
import { join } from "node:path";
import { editionYears, standardSizes } from "bondmil";
import { root } from "./command.js";

const installation = JSON.stringify(
  JSON.parse(readFileSync(join(root, "docs/installations/shop.json"), "utf8")),
);

/** Line of a long stream: questions of conductors that differ, an installation among every thousand of them, and a broken line. */
export function lineAt(number: number): string {
  if (number % 1000 === 500) return installation;
  if (number % 1000 === 750) return "{";
  const material = number % 2 === 0 ? "copper" : "aluminum";
  return JSON.stringify({
    role: "main-bonding-jumper",
    input: {
      code: { year: editionYears[number % editionYears.length] },
      supply: {
        sets: [{ count: 1 + (number % 12), size: standardSizes[12 + (number % 15)], material }],
      },
      conductor: { material: "copper" },
    },
  });
}
