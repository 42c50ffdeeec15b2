import { markdownTable, plainText } from "../../../src/report/render/markdown.js";
import type { Word } from "./words.js";

const head = `<!-- Generated from docs/pages/words/words.json by "npm run pages -- words"; do not edit. -->
# Words

The words of the trade and of this project, each for one thing, and what is not to be written in their place where a person reads: in messages,
documents, help, guides, comments and the notes of the data. Ids in the data and names in the code keep theirs. What a source says in its own words is quoted as it is.
A test holds the project to this list.`;

/** The list of words as a page. */
export function wordsPage(words: readonly Word[]): string {
  const rows = words.map(({ word, means, avoid = [] }) => [word, means, avoid.join(", ")].map(plainText));
  return `${head}\n\n${markdownTable(["write", "it means", "not"], rows)}\n`;
}
