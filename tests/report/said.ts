import { type Document, render } from "bondmil";
import { textsOf } from "../../src/report/document.js";

type Readable = "text" | "markdown" | "html";

const oneSpace = (text: string): string => text.replace(/\s+/g, " ").trim();

const entities: Readonly<Record<string, string>> = {
  amp: "&",
  lt: "<",
  gt: ">",
  quot: '"',
  "#39": "'",
};

function withoutEntities(text: string): string {
  return text.replace(/&(#?\w+);/g, (whole, name: string) => entities[name] ?? whole);
}

/** What a person reads of a rendering, without what its format adds; words only, in one line. */
export function plainOf(written: string, as: Readable): string {
  switch (as) {
    case "text":
      return oneSpace(written);
    case "markdown":
      return oneSpace(
        withoutEntities(written.replace(/\\([\\|`*_[\]~#$.)+\-=:])/g, "$1").replace(/`|\*\*/g, "")),
      );
    case "html":
      return oneSpace(
        withoutEntities(
          written
            .replace(/<style>[\s\S]*?<\/style>/g, "")
            .replace(/<\/(?:strong|a|span)>/g, "")
            .replace(/<(?:strong|a|span)(?: [^>]*)?>/g, "")
            .replace(/<[^>]*>/g, " "),
        ),
      );
  }
}

/**
 * Every text of a document, each in one line; of a drawing its title and its path as a list. The first two cells of a record or sheet are its heading,
 * so that the heads of their columns need not be said.
 */
export function saidTexts({ title, facts, parts }: Document): readonly string[] {
  const inParts = parts.flatMap((part) => {
    if (part.kind === "drawing") return [part.sheet.title, ...part.sheet.description];
    return part.kind === "table" && part.of !== "grid" ? textsOf([{ ...part, head: [] }]) : textsOf([part]);
  });
  return [title, ...facts.flatMap(({ name, text }) => [name, text]), ...inParts].map(oneSpace);
}

/** The columns of a document as CSV: their names, and the cells below. */
export function columnsOfCsv(document: Document): ReadonlyMap<string, readonly string[]> {
  const [head = [], ...rows] = linesOfCsv(render(document, { as: "csv" }));
  return new Map(head.map((name, i) => [name, rows.map((cells) => cells[i] ?? "")]));
}

function linesOfCsv(csv: string): readonly (readonly string[])[] {
  const lines: string[][] = [[]];
  for (const [, end = "", quoted, plain = ""] of csv.matchAll(
    /(^|,|\r\n)(?:"((?:[^"]|"")*)"|([^",\r\n]*))/g,
  )) {
    if (end === "\r\n") lines.push([]);
    lines.at(-1)?.push(quoted === undefined ? plain : quoted.replaceAll('""', '"'));
  }
  return lines.slice(0, -1);
}

/** Trade sizes in a text. */
export function sizesIn(text: string): readonly string[] {
  return text.match(/\b\d+(?:\/0)? AWG\b|\b\d+ kcmil\b/g) ?? [];
}

/** Sections in a text: 250.28(D)(1), with the tables of that number. */
export function sectionsIn(text: string): readonly string[] {
  return text.match(/\b\d{3}\.\d+(?:\([A-Za-z0-9]+\))*/g) ?? [];
}
