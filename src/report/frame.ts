import type { Amendment, EditionYear } from "../edition/index.js";
import { readShape } from "../input/read-shape.js";
import { readAll } from "../input/reader.js";
import { version } from "../input/version.generated.js";
import type { Document, DocumentFact, DocumentPart } from "./document.js";
import { type DocumentOptions, documentOptionsShape } from "./shape.generated.js";
import { amendmentWords } from "./words/amendment-words.js";
import { closingNotes } from "./words/closing-notes.js";

export type { DocumentOptions };

/** What is in a document beside what every document says. */
export interface Content extends Pick<Document, "title" | "signatures" | "parts" | "rows"> {
  /** Those that it speaks of; none for what stands beside the code. */
  readonly editions: readonly EditionYear[];
  readonly facts?: readonly DocumentFact[];
}

/** Checks the options of a document maker. */
export function readOptions(options: DocumentOptions): DocumentOptions {
  return readAll(options, (at) => readShape<DocumentOptions>(at, documentOptionsShape));
}

/** A document with what each of them says: place, edition, library, preparer and date before it, the fixed notes behind it. */
export function framed(
  { title, editions, facts = [], signatures, parts, rows }: Content,
  { title: other, place, preparedBy, date }: DocumentOptions,
): Document {
  return {
    title: other ?? title,
    facts: [
      ...(place === undefined ? [] : [{ name: "Place", text: place }]),
      ...(editions.length === 0 ? [] : [{ name: "Edition", text: editionWords(editions) }]),
      ...facts,
      ...(preparedBy === undefined ? [] : [{ name: "Prepared by", text: preparedBy }]),
      ...(date === undefined ? [] : [{ name: "Date", text: date }]),
      { name: "Library", text: `bondmil ${version}` },
    ],
    ...(signatures !== undefined && { signatures }),
    parts: [...parts, { kind: "heading", level: 2, text: "Notes" }, { kind: "list", items: closingNotes }],
    rows,
  };
}

/** Editions as they are named: NFPA 70-2017, 2020. */
export function editionWords(editions: readonly EditionYear[]): string {
  return `NFPA 70-${editions.join(", ")}`;
}

/** Amendments as a line of the title block. */
export function amendmentsFact(amendments: readonly Amendment[]): DocumentFact {
  const named = amendments.map(
    ({ kind, citation }) => `${amendmentWords[kind]}: ${citation.jurisdiction}, ${citation.section}`,
  );
  return { name: "Amendments", text: named.join("; ") || "none" };
}

/** A heading with a list below it; nothing without items. */
export function listed(text: string, items: readonly string[], level: 2 | 3 = 2): readonly DocumentPart[] {
  return items.length === 0
    ? []
    : [
        { kind: "heading", level, text },
        { kind: "list", items },
      ];
}
