import { conductorWords } from "../installation/conductor-words.js";
import { type Numbered, numberRanges } from "../installation/numbered.js";
import type { Schedule } from "../installation/schedule.js";
import type { Caution } from "../rules/caution.js";
import { cautionSentence } from "./words/caution-words.js";
import { notRequiredWords } from "./words/not-required-words.js";

/** What is not required, by the reason and its section, with the number and name of each. */
export function notRequiredLines(numbered: readonly Numbered[]): readonly string[] {
  const reasons = new Map<string, string[]>();
  for (const { conductor, mark } of numbered) {
    const { outcome } = conductor.result;
    if (outcome.kind !== "not-required") continue;
    const reason = `${notRequiredWords[outcome.why]} [${outcome.citation.section}]`;
    reasons.set(reason, [...(reasons.get(reason) ?? []), `${mark} ${conductorWords(conductor)}`]);
  }
  return [...reasons].map(([reason, names]) => `${names.join("; ")}: ${reason}`);
}

/** Each caution of a schedule once, with the numbers of its conductors and the places that it is about. */
export function numberedCautions({ cautions }: Schedule, numbered: readonly Numbered[]): readonly string[] {
  const known = new Map<
    string,
    { readonly caution: Caution; readonly marks: number[]; readonly at: string[] }
  >();
  const entry = ({ code, section }: Caution) => {
    const key = `${code} ${section}`;
    const found = known.get(key) ?? { caution: { code, section }, marks: [], at: [] };
    known.set(key, found);
    return found;
  };
  for (const { at, ...caution } of cautions) entry(caution).at.push(at);
  for (const { conductor, mark } of numbered)
    for (const caution of conductor.result.cautions) entry(caution).marks.push(mark);
  return [...known.values()].map(({ caution, marks, at }) => {
    const places = [...(marks.length === 0 ? [] : [numbersWords(marks)]), ...new Set(at)];
    return `${cautionSentence(caution)} At: ${places.join("; ")}`;
  });
}

/** Numbers of the schedule, as a text names them. */
export function numbersWords(marks: readonly number[]): string {
  return `${new Set(marks).size === 1 ? "No." : "Nos."} ${numberRanges(marks)}`;
}
