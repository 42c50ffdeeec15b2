import { type CitedEvidence, evidenceLevels } from "../../edition/index.js";
import { evidenceWords } from "./evidence-words.js";
import { governingWords } from "./schedule-words.js";

/** A value of a row in words, where its column holds codes of the library; any other is said as it is. */
export function valueWords(column: string, value: string): string {
  if (column === "governs" && isKeyOf(governingWords, value)) return governingWords[value];
  if (column === "evidence" && isLevel(value)) return evidenceWords(value);
  return column === "outcome" ? value.replaceAll("-", " ") : value;
}

function isKeyOf<T extends object>(words: T, key: PropertyKey): key is keyof T {
  return Object.hasOwn(words, key);
}

function isLevel(value: string): value is CitedEvidence {
  return (evidenceLevels as readonly string[]).includes(value);
}
