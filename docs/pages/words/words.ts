import { readFileSync } from "node:fs";

/** A word of the trade or of this project, and what is not to be written in its place. */
export interface Word {
  readonly word: string;
  readonly means: string;
  /** Words that are avoided; they match in any case, with or without an s, at the bounds of words, over line breaks. */
  readonly avoid?: readonly string[];
  /** Longer texts in which an avoided word is right. */
  readonly right?: readonly string[];
}

/** A place that keeps an avoided word, and why. */
export interface Exception {
  readonly file: string;
  readonly avoided: string;
  readonly why: string;
}

interface WordsFile {
  readonly words: readonly Word[];
  readonly exceptions: readonly Exception[];
}

export function readWords(): WordsFile {
  return JSON.parse(readFileSync(new URL("words.json", import.meta.url), "utf8")) as WordsFile;
}
