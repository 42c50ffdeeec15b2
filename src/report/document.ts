import type { Sheet } from "../drawing/drawing.js";
import type { Marks } from "../input/given-result.js";

/**
 * Something to be read, before it is written in a format. Plain JSON: texts are as they are, and escaped by the renderer that writes
 * them. What a person reads is in the title, the facts and the parts; `rows` holds the same for a program.
 */
export interface Document {
  /** Title for people. */
  readonly title: string;
  /** The title block: edition, library, who prepared it and when, fingerprint. */
  readonly facts: readonly DocumentFact[];
  /** Who signs below the title block, where something is signed; on paper only. */
  readonly signatures?: DocumentSignatures;
  /** What a person reads, in order. */
  readonly parts: readonly DocumentPart[];
  /** Flat rows with stable codes and numbers, areas in circular mils and lengths in feet. They are what CSV holds. */
  readonly rows: readonly DocumentRow[];
}

/** A line of the title block. */
export interface DocumentFact {
  /** Name for people. */
  readonly name: string;
  /** The text, as it is; whoever writes it out escapes it. */
  readonly text: string;
}

/** A part of a document. */
export type DocumentPart = DocumentHeading | DocumentText | DocumentList | DocumentTable | DocumentDrawing;

/** A heading, over all that follows up to the next of its level. */
export interface DocumentHeading {
  /** Tells the members of the union apart. */
  readonly kind: "heading";
  /** The title is of level 1. */
  readonly level: 2 | 3;
  /** The text, as it is; whoever writes it out escapes it. */
  readonly text: string;
  /** A name without equal in the document, to which a cell may lead. */
  readonly mark?: string;
}

/** A paragraph; what is strong stands first. */
export interface DocumentText {
  /** Tells the members of the union apart. */
  readonly kind: "text";
  /** Whether it is written with emphasis. */
  readonly strong?: string;
  /** The text, as it is; whoever writes it out escapes it. */
  readonly text: string;
}

/** Items one below the other. */
export interface DocumentList {
  /** Tells the members of the union apart. */
  readonly kind: "list";
  /** What the items have in common; a list with it is folded into this one line, which opens where the format can. */
  readonly folded?: string;
  /** The items, in their order. */
  readonly items: readonly string[];
}

/**
 * A table. In a `grid` the columns are alike and compared; of `records` each row is a thing of its own, so that text without enough
 * width for its columns writes one below the other; of `sheets` each row is set as a small sheet: its first two cells above, each other on a line
 * behind the head of its column. A row of one cell is a heading over those that follow.
 */
export interface DocumentTable {
  /** Tells the members of the union apart. */
  readonly kind: "table";
  /** What the rows are of. */
  readonly of: "grid" | "records" | "sheets";
  /** The head of each column. */
  readonly head: readonly string[];
  /** The rows, in the order of the table. */
  readonly rows: readonly (readonly DocumentCell[])[];
}

/** A cell: a text, or a text that leads to a mark or has one. */
export type DocumentCell =
  | string
  | {
      /** The text, as it is; whoever writes it out escapes it. */
      readonly text: string;
      /** The mark to which it leads, within the document. */
      readonly to?: string;
      /** A name without equal in the document, to which a cell may lead. */
      readonly mark?: string;
    };

/** A sheet of a picture; where nothing can be drawn, its description in words. */
export interface DocumentDrawing {
  /** Tells the members of the union apart. */
  readonly kind: "drawing";
  /** The sheet of the drawing. */
  readonly sheet: Sheet;
}

/** Ruled lines to be signed by hand. */
export interface DocumentSignatures {
  /** Who signs, one below the other. */
  readonly who: readonly string[];
  /** What each writes, one line for each. */
  readonly fields: readonly string[];
}

/** A row for a program. */
export type DocumentRow = Readonly<Record<string, CsvCell>>;

/** What a cell of a row may be; nothing and `null` are empty cells. */
export type CsvCell = string | number | boolean | null | undefined;

/** By what a document is known. */
export const documentMarks: Marks<Document> = { title: "text", facts: "list", parts: "list", rows: "list" };

/** The text of a cell, wherever it leads. */
export function cellText(cell: DocumentCell): string {
  return typeof cell === "string" ? cell : cell.text;
}

/** Every text that a person reads in some parts. */
export function textsOf(parts: readonly DocumentPart[]): readonly string[] {
  return parts.flatMap(textsIn);
}

function textsIn(part: DocumentPart): readonly string[] {
  switch (part.kind) {
    case "heading":
      return [part.text];
    case "text":
      return [part.strong ?? "", part.text];
    case "list":
      return [part.folded ?? "", ...part.items];
    case "table":
      return [...part.head, ...part.rows.flatMap((cells) => cells.map(cellText))];
    case "drawing":
      return part.sheet.labels.flatMap(({ lines }) => lines);
  }
}
