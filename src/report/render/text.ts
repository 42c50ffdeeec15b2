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
      return part.items.flatMap((item) => hanging(item, "- ", "  ", width));
    case "table":
      return part.of === "records" ? recordLines(part, width) : gridLines(part, width);
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

function gridLines({ head, rows }: DocumentTable, width: number): readonly string[] {
  return textTable(
    head.map(flat),
    rows.map((cells) => cells.map((cell) => flat(cellText(cell)))),
    width,
  );
}

/** Of each record the first two cells as its heading, then every other that is not empty, with the name of its column. */
function recordLines({ head, rows }: DocumentTable, width: number): readonly string[] {
  return rows.flatMap((cells) => {
    const [first = "", second = "", ...rest] = cells.map(cellText);
    const others = rest.flatMap((text, i) => (text === "" ? [] : [`${head[i + 2] ?? ""}: ${text}`]));
    return [
      ...hanging(second === "" ? first : `${first}: ${second}`, "", "    ", width),
      ...(others.length === 0 ? [] : hanging(others.join("; "), "  ", "  ", width)),
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
