import { markdownTable, plainText } from "./markdown.js";

/** A part of a page, whatever it is written in; texts are as they are, and escaped by whoever writes them. */
export type Part =
  | { readonly kind: "title" | "heading" | "text"; readonly text: string }
  | { readonly kind: "lines" | "list"; readonly lines: readonly string[] }
  | {
      readonly kind: "table";
      readonly head: readonly string[];
      readonly rows: readonly (readonly string[])[];
    };

/** A page as Markdown. */
export function partsAsMarkdown(parts: readonly Part[]): string {
  return `${parts.map(markdownOf).join("\n\n")}\n`;
}

function markdownOf(part: Part): string {
  switch (part.kind) {
    case "title":
      return `# ${plainText(part.text)}`;
    case "heading":
      return `## ${plainText(part.text)}`;
    case "text":
      return plainText(part.text);
    case "lines":
      return part.lines.map(plainText).join("\n");
    case "list":
      return part.lines.map((line) => `- ${plainText(line)}`).join("\n");
    case "table":
      return markdownTable(
        part.head.map(plainText),
        part.rows.map((cells) => cells.map(plainText)),
      );
  }
}
