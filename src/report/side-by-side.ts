import type { DocumentPart } from "./document.js";

/** The head of a column with its verdict. */
export function verdictHead(name: string, violations: readonly unknown[]): string {
  return violations.length === 0 ? name : `${name}, not permitted`;
}

/** The sections behind a verdict, each once, in brackets behind what they forbid. */
export function forbiddenBy(violations: readonly { readonly section: string }[]): string {
  const sections = [...new Set(violations.map(({ section }) => section))];
  return sections.length === 0 ? "" : ` [${sections.join(", ")}]`;
}

/** What is the same in every column, folded into one line. */
export function sameParts(items: readonly string[]): readonly DocumentPart[] {
  if (items.length === 0) return [];
  return [
    { kind: "heading", level: 2, text: "What stays the same" },
    { kind: "list", folded: `${items.length} the same in every column`, items },
  ];
}
