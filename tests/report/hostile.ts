import type { Document, DocumentPart } from "bondmil";

/** A document in which every text is harmless but those that are given. */
export function documentWith(given: Partial<Document>): Document {
  return { title: "Title", facts: [], parts: [], rows: [], ...given };
}

const withPart = (part: DocumentPart): Partial<Document> => ({ parts: [part] });

/** A picture in which a text stands wherever one can. */
function drawing(text: string): DocumentPart {
  const at = { x: 0, y: 0, width: 100, height: 100 };
  const labels = [{ ...at, lines: [text], strong: 1 }];
  const sheet = {
    title: text,
    description: [text],
    // Wide enough for any title on one line.
    width: 100_000,
    height: 100,
    outlines: [],
    lines: [],
    joints: [],
    arrows: [],
    symbols: [],
    grounds: [],
    conductors: [],
    labels,
  };
  return { kind: "drawing", sheet };
}

/** Every place of a document in which a text can stand. */
export const places: readonly (readonly [place: string, of: (text: string) => Partial<Document>])[] = [
  ["the title", (title) => ({ title })],
  ["a fact", (text) => ({ facts: [{ name: text, text }] })],
  ["a heading", (text) => withPart({ kind: "heading", level: 2, text })],
  ["a lower heading", (text) => withPart({ kind: "heading", level: 3, text })],
  ["a text", (text) => withPart({ kind: "text", text })],
  ["a strong text", (text) => withPart({ kind: "text", strong: text, text: "and more" })],
  ["a list", (text) => withPart({ kind: "list", items: ["first", text] })],
  [
    "the head of a grid",
    (text) => withPart({ kind: "table", of: "grid", head: [text, "two"], rows: [["x", "y"]] }),
  ],
  [
    "a cell of a grid",
    (text) => withPart({ kind: "table", of: "grid", head: ["one", "two"], rows: [["x", text]] }),
  ],
  [
    "a cell of records",
    (text) => withPart({ kind: "table", of: "records", head: ["one", "two"], rows: [[text, "x"]] }),
  ],
  [
    "a cell that leads elsewhere",
    (text) => withPart({ kind: "table", of: "grid", head: ["one"], rows: [[{ text, to: text }]] }),
  ],
  ["a picture", (text) => withPart(drawing(text))],
];
