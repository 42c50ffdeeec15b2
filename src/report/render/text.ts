import { cellText, type Document, type DocumentPart, type DocumentTable } from "../document.js";
import { codePoints, type Letters } from "./letters.js";
import { textTable, wrapped } from "./text-table.js";

/** Where a text is to go. */
interface Page {
  /** In letters. */
  readonly width: number;
  /** Of lines that are no rows of a grid. */
  readonly sentences: number;
  readonly letters: Letters;
}

/** A document as plain text, no line of which is longer than a width in letters, and no sentence longer than another. */
export function asText(
  { title, facts, parts }: Document,
  width: number,
  letters: Letters = codePoints,
  widestSentence: number = width,
): string {
  const page = { width, sentences: Math.min(width, widestSentence), letters };
  const lines = [
    ...underlined(title, "=", page),
    ...facts.flatMap(({ name, text }) => hanging(`${name}: ${text}`, "", "  ", page)),
  ];
  for (const [i, part] of parts.entries()) {
    const isUnderHeading = parts[i - 1]?.kind === "heading" && part.kind !== "heading";
    lines.push(...(isUnderHeading ? [] : [""]), ...linesOf(part, page));
  }
  return `${lines.join("\n")}\n`;
}

function linesOf(part: DocumentPart, page: Page): readonly string[] {
  switch (part.kind) {
    case "heading":
      return part.level === 2 ? underlined(part.text, "-", page) : hanging(part.text, "", "", page);
    case "text":
      return hanging(part.strong === undefined ? part.text : `${part.strong}. ${part.text}`, "", "", page);
    case "list":
      return part.folded === undefined
        ? part.items.flatMap((item) => hanging(item, "- ", "  ", page))
        : hanging(`${part.folded}: ${part.items.join("; ")}`, "", "  ", page);
    case "table":
      return tableLines(part, page);
    case "drawing":
      return [
        ...hanging(part.sheet.title, "", "", page),
        ...part.sheet.description.flatMap((item) => hanging(item, "- ", "  ", page)),
      ];
  }
}

function underlined(text: string, rule: string, page: Page): readonly string[] {
  const lines = hanging(text, "", "", page);
  return [...lines, rule.repeat(Math.max(...lines.map(page.letters.widthOf)))];
}

function tableLines(table: DocumentTable, page: Page): readonly string[] {
  switch (table.of) {
    case "grid":
      return gridLines(table, page);
    case "records":
      return recordLines(table, page);
    case "sheets":
      return sheetLines(table, page);
  }
}

function gridLines({ head, rows }: DocumentTable, { width, letters }: Page): readonly string[] {
  return textTable(
    head.map(flat),
    rows.map((cells) => cells.map((cell) => flat(cellText(cell)))),
    width,
    letters,
  );
}

/** Of each record the first two cells as its heading, then every other that is not empty, with the name of its column. */
function recordLines({ head, rows }: DocumentTable, page: Page): readonly string[] {
  return rows.flatMap((cells, i) => {
    const [first = "", second = "", ...rest] = cells.map(cellText);
    if (cells.length === 1) return [...(i === 0 ? [] : [""]), ...hanging(first, "", "", page)];
    const others = rest.flatMap((text, at) => (text === "" ? [] : [`${head[at + 2] ?? ""}: ${text}`]));
    return [
      ...hanging(second === "" ? first : `${first}: ${second}`, "", "    ", page),
      ...(others.length === 0 ? [] : hanging(others.join("; "), "  ", "  ", page)),
    ];
  });
}

/** Of each sheet the first two cells above, then each other on a line behind the head of its column. */
function sheetLines({ head, rows }: DocumentTable, page: Page): readonly string[] {
  const lead = Math.max(...head.slice(2).map((name) => name.length)) + 2;
  return rows.flatMap((cells) => {
    const [first = "", second = "", ...rest] = cells.map(cellText);
    return [
      ...hanging(`${first}. ${second}`, "", "    ", page),
      ...rest.flatMap((text, at) =>
        text === ""
          ? []
          : hanging(text, `  ${(head[at + 2] ?? "").padEnd(lead)}`, " ".repeat(lead + 2), page),
      ),
    ];
  });
}

/** Lines that begin with a lead, all but the first with an indent as wide. */
function hanging(
  text: string,
  lead: string,
  indent: string,
  { sentences, letters }: Page,
): readonly string[] {
  const room = sentences - Math.max(lead.length, indent.length);
  const [first = "", ...rest] = wrapped(flat(text), room, letters);
  return [`${lead}${first}`, ...rest.map((line) => `${indent}${line}`)];
}

/** A line break in a name is no line break of the document. */
function flat(text: string): string {
  return text.replace(/\s+/g, " ").trim();
}
