import type { CitedEvidence } from "../../edition/index.js";

/** How well a value or a wording is known, best first, with the letter that stands for it where there is little width. */
const levels: Readonly<Record<CitedEvidence, readonly [letter: string, words: string]>> = {
  confirmed: ["A", "two sources"],
  single: ["B", "one source"],
  bracketed: ["C", "the same in the editions before and after"],
  carried: ["D", "from one neighboring edition"],
  memory: ["E", "from memory"],
  vouched: ["V", "as the amendment says"],
};

/** A level of evidence in words. */
export function evidenceWords(level: CitedEvidence): string {
  return levels[level][1];
}

/** The letter of a level of evidence. */
export function evidenceLetter(level: CitedEvidence): string {
  return levels[level][0];
}

/** What the letters mean, as far as they are used. */
export function evidenceParagraph(used: readonly CitedEvidence[]): string {
  const named = (Object.keys(levels) as CitedEvidence[])
    .filter((level) => used.includes(level))
    .map((level) => `${levels[level][0]} ${levels[level][1]}`);
  return `How well the numbers and the wording behind a size are known to this library, by the weakest of them: ${named.join("; ")}.`;
}
