import { readFileSync } from "node:fs";
import { join } from "node:path";
import { editionYears, standardSizes } from "bondmil";
import { root } from "./command.js";

const shop = JSON.parse(readFileSync(join(root, "docs/installations/shop.json"), "utf8")) as object;
const installation = JSON.stringify(shop);

/** Line of a stream of installations alone, no two alike. */
export function installationAt(number: number): string {
  return JSON.stringify({
    ...shop,
    title: `Shop ${number}`,
    code: { year: editionYears[number % editionYears.length] },
  });
}

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
