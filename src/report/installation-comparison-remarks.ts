import { conductorWords } from "../installation/conductor-words.js";
import type { InstallationComparison } from "../installation/installation-comparison.js";
import { cautionSentence } from "./words/caution-words.js";
import { capital } from "./words/names.js";
import { readingPhrase } from "./words/reading-words.js";

/** The cautions and open readings of all conductors of a comparison, each once, with the conductors and columns that it is about. */
export function remarksIn({ variants, conductors }: InstallationComparison): {
  readonly cautions: readonly string[];
  readonly readings: readonly string[];
} {
  const cautions = new Places();
  const readings = new Places();
  for (const one of conductors) {
    const name = conductorWords(one);
    for (const [i, { conductor }] of one.entries.entries()) {
      const key = variants[i]?.key ?? "";
      for (const caution of conductor?.result.cautions ?? [])
        cautions.add(cautionSentence(caution), name, key);
      for (const { id, chosen } of conductor?.result.readings ?? [])
        readings.add(capital(`${readingPhrase(id, chosen)}.`), name, key);
    }
  }
  return { cautions: cautions.lines(variants.length), readings: readings.lines(variants.length) };
}

/** Texts with the conductors that they are about, and of each the columns. */
class Places {
  readonly #texts = new Map<string, Map<string, string[]>>();

  add(text: string, name: string, key: string): void {
    const names = this.#texts.get(text) ?? new Map<string, string[]>();
    names.set(name, [...(names.get(name) ?? []), key]);
    this.#texts.set(text, names);
  }

  lines(columns: number): readonly string[] {
    return [...this.#texts].map(([text, names]) => {
      const places = [...names].map(
        ([name, keys]) => `${name} (${keys.length === columns ? "every column" : keys.join(", ")})`,
      );
      return `${text} At: ${places.join("; ")}`;
    });
  }
}
