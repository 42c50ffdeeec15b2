/**
 * A text for Markdown, in a table or out of it: what Markdown would take as its own is escaped, and line breaks become spaces, so that
 * nothing that a caller named can break a row or open a link.
 */
export function plainText(text: string): string {
  return text
    .replace(/\s+/g, " ")
    .trim()
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replace(/[\\|`*_[\]~#]/g, "\\$&");
}

/** A Markdown table; its cells are escaped already. */
export function markdownTable(head: readonly string[], rows: readonly (readonly string[])[]): string {
  return [head, head.map(() => "---"), ...rows].map((cells) => `| ${cells.join(" | ")} |`).join("\n");
}
