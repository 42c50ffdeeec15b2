import { cellText, type Document, type DocumentPart, type DocumentTable } from "../document.js";

/** A document as Markdown. */
export function asMarkdown({ title, facts, parts }: Document): string {
  const block = facts.map(({ name, text }) => [name, text].map(plainText));
  const blocks = [
    `# ${plainText(title)}`,
    ...(block.length === 0 ? [] : [markdownTable(["", ""], block)]),
    ...parts.map(markdownOf),
  ];
  return `${blocks.join("\n\n")}\n`;
}

function markdownOf(part: DocumentPart): string {
  switch (part.kind) {
    case "heading":
      return `${"#".repeat(part.level)} ${plainText(part.text)}`;
    case "text":
      return part.strong === undefined
        ? plainText(part.text)
        : `**${plainText(part.strong)}.** ${plainText(part.text)}`;
    case "list":
      return part.folded === undefined
        ? part.items.map((item) => `- ${plainText(item)}`).join("\n")
        : `${plainText(part.folded)}: ${part.items.map(plainText).join("; ")}`;
    case "table":
      return part.of === "sheets" ? sheetsOf(part) : rowsOf(part);
    case "drawing":
      return [
        `### ${plainText(part.sheet.title)}`,
        ...(part.sheet.description.length === 0
          ? []
          : [part.sheet.description.map((one) => `- ${plainText(one)}`).join("\n")]),
      ].join("\n\n");
  }
}

/** Rows; one of a single cell is a heading over those that follow. */
function rowsOf({ head, rows }: DocumentTable): string {
  return markdownTable(
    head.map(plainText),
    rows.map((cells) => {
      const [first = "", ...rest] = cells.map((cell) => plainText(cellText(cell)));
      return rest.length === 0 && head.length > 1
        ? [`**${first}**`, ...head.slice(1).map(() => "")]
        : [first, ...rest];
    }),
  );
}

/** Each row under its first two cells, a line for each other. */
function sheetsOf({ head, rows }: DocumentTable): string {
  return rows
    .map((cells) => {
      const [first = "", second = "", ...rest] = cells.map((cell) => plainText(cellText(cell)));
      const lines = rest.flatMap((text, i) =>
        text === "" ? [] : [`- ${plainText(head[i + 2] ?? "")}: ${text}`],
      );
      return [`**${first}. ${second}**`, lines.join("\n")].join("\n\n");
    })
    .join("\n\n");
}

/** What is a marker of a list, a rule or an underline only where it stands first. */
const marker = /^(?:[-+](?= |$)|[-=:](?=[-=: ]*$))/;

/** A number that would open a list. */
const numbered = /^(\d+)([.)])(?= |$)/;

/** What makes an address of a text: viewers link it even where it is escaped, but not inside of a code span. */
const address = /(?:@|:?\/\/|(?<=\S)\.(?=\p{L}{2})|(?<=www)\.)+/giu;

/**
 * A text for Markdown, in a table or out of it, at the start of a block or inside: what Markdown would take as its own is escaped, and
 * line breaks become spaces, so that nothing that a caller named can break a row, open a list or become a link.
 */
export function plainText(text: string): string {
  return text
    .replace(/\s+/g, " ")
    .trim()
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replace(/[\\|`*_[\]~#$]/g, "\\$&")
    .replace(marker, "\\$&")
    .replace(numbered, "$1\\$2")
    .replace(address, "`$&`");
}

/** A Markdown table; its cells are escaped already. */
export function markdownTable(head: readonly string[], rows: readonly (readonly string[])[]): string {
  return [head, head.map(() => "---"), ...rows].map((cells) => `| ${cells.join(" | ")} |`).join("\n");
}
