import type { Text } from "./texts.js";
import type { Word } from "./words.js";

/** An avoided word in a text, and what to write. */
export interface Find {
  readonly file: string;
  readonly line: number;
  readonly avoided: string;
  readonly write: string;
  readonly around: string;
}

/** Every avoided word in the texts. */
export function findAvoided(texts: readonly Text[], words: readonly Word[]): readonly Find[] {
  const searches = words.flatMap(({ word, avoid = [], right = [] }) =>
    avoid.map((avoided) => ({ write: word, avoided, is: matcher(avoided), right: right.map(matcher) })),
  );
  return texts.flatMap(({ file, line, text }) =>
    searches.flatMap(({ write, avoided, is, right }) => {
      const left = right.reduce((rest, one) => rest.replace(one, ""), text);
      return [...left.matchAll(is)].map(({ index }) => ({
        file,
        line,
        avoided,
        write,
        around: left.slice(Math.max(0, index - 60), index + avoided.length + 40).trim(),
      }));
    }),
  );
}

/** A phrase, in the singular or with an s, at the bounds of words. */
function matcher(phrase: string): RegExp {
  const words = phrase.split(" ").map((word) => word.replace(/[.*+?^${}()|[\]\\]/g, "\\$&"));
  return new RegExp(`(?<![\\w-])${words.join("\\s+")}s?(?![\\w-])`, "gi");
}
