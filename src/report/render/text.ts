import { cellText, type Document, type DocumentPart, type DocumentTable } from "../document.js";
import { textTable, wrapped } from "./text-table.js";

/** A document as plain text, no line of which is longer than a width in letters. */
export function asText({ title, facts, parts }: Document, width: number): string {
  const lines = [
    ...underlined(title, "=", width),
    ...facts.flatMap(({ name, text }) => hanging(`${name}: ${text}`, "", "  ", width)),
  ];
  for (const [i, part] of parts.entries()) {
    const isUnderHeading = parts[i - 1]?.kind === "heading" && part.kind !== "heading";
    lines.push(...(isUnderHeading ? [] : [""]), ...linesOf(part, width));
  }
  return `${lines.join("\n")}\n`;
}

function linesOf(part: DocumentPart, width: number): readonly string[] {
  switch (part.kind) {
    case "heading":
      return part.level === 2 ? underlined(part.text, "-", width) : hanging(part.text, "", "", width);
    case "text":
      return hanging(part.strong === undefined ? part.text : `${part.strong}. ${part.text}`, "", "", width);
    case "list":
      return part.folded === undefined
        ? part.items.flatMap((item) => hanging(item, "- ", "  ", width))
        : hanging(`${part.folded}: ${part.items.join("; ")}`, "", "  ", width);
    case "table":
      return tableLines(part, width);
    case "drawing":
      return [
        ...hanging(part.sheet.title, "", "", width),
        ...part.sheet.description.flatMap((item) => hanging(item, "- ", "  ", width)),
      ];
  }
}

function underlined(text: string, rule: string, width: number): readonly string[] {
  const lines = hanging(text, "", "", width);
  return [...lines, rule.repeat(Math.max(...lines.map((line) => [...line].length)))];
}

function tableLines(table: DocumentTable, width: number): readonly string[] {
  switch (table.of) {
    case "grid":
      return gridLines(table, width);
    case "records":
      return recordLines(table, width);
    case "sheets":
      return sheetLines(table, width);
  }
}

function gridLines({ head, rows }: DocumentTable, width: number): readonly string[] {
  return textTable(
    head.map(flat),
    rows.map((cells) => cells.map((cell) => flat(cellText(cell)))),
    width,
  );
}

/** Of each record the first two cells as its heading, then every other that is not empty, with the name of its column. */
function recordLines({ head, rows }: DocumentTable, width: number): readonly string[] {
  return rows.flatMap((cells, i) => {
    const [first = "", second = "", ...rest] = cells.map(cellText);
    if (cells.length === 1) return [...(i === 0 ? [] : [""]), ...hanging(first, "", "", width)];
    const others = rest.flatMap((text, at) => (text === "" ? [] : [`${head[at + 2] ?? ""}: ${text}`]));
    return [
      ...hanging(second === "" ? first : `${first}: ${second}`, "", "    ", width),
      ...(others.length === 0 ? [] : hanging(others.join("; "), "  ", "  ", width)),
    ];
  });
}

/** Of each sheet the first two cells above, then each other on a line behind the head of its column. */
function sheetLines({ head, rows }: DocumentTable, width: number): readonly string[] {
  const lead = Math.max(...head.slice(2).map((name) => name.length)) + 2;
  return rows.flatMap((cells) => {
    const [first = "", second = "", ...rest] = cells.map(cellText);
    return [
      ...hanging(`${first}. ${second}`, "", "    ", width),
      ...rest.flatMap((text, at) =>
        text === ""
          ? []
          : hanging(text, `  ${(head[at + 2] ?? "").padEnd(lead)}`, " ".repeat(lead + 2), width),
      ),
    ];
  });
}

/** Lines that begin with a lead, all but the first with an indent as wide. */
function hanging(text: string, lead: string, indent: string, width: number): readonly string[] {
  const [first = "", ...rest] = wrapped(flat(text), width - Math.max(lead.length, indent.length));
  return [`${lead}${first}`, ...rest.map((line) => `${indent}${line}`)];
}

/** A line break in a name is no line break of the document. */
function flat(text: string): string {
  return text.replace(/\s+/g, " ").trim();
}
