import { useResult } from "../../input/given-result.js";
import { readShape } from "../../input/read-shape.js";
import { readAll } from "../../input/reader.js";
import { type Document, documentMarks } from "../document.js";
import { type RenderOptions, renderOptionsShape } from "../shape.generated.js";
import { asCsv } from "./csv.js";
import { asHtml } from "./html.js";
import { asMarkdown } from "./markdown.js";
import { asText } from "./text.js";

export type { RenderOptions };

const usualWidth = 120;

/**
 * Writes a document: as text for reading, Markdown, one HTML file that loads nothing, or CSV of its rows. Whatever an installation or a caller
 * named is escaped: nothing becomes markup, a link or a formula of a spreadsheet. In CSV (RFC 4180) a text that a spreadsheet would
 * compute, behind whatever is not seen, gets an apostrophe before it.
 *
 * @param document - what a document maker gives, such as {@link scheduleDocument}
 * @param options - the format, and for text the width in letters
 * @returns the text of the file; the same document gives the same text
 * @throws {@link InputError} for anything but a document, and for wrong options
 *
 * @example
 * ```ts
 * import { render, rowsDocument } from "bondmil";
 * const document = rowsDocument([{ size: "4/0 AWG", area: 211600 }], { title: "One | row" });
 * render(document, { as: "markdown" }).split("\n")[0]; // => "# One \\| row"
 * render(document, { as: "text", width: 40 }).split("\n").slice(4, 7);
 * // => ["size     area", "-------  ------------", "4/0 AWG  211,600 cmil"]
 * ```
 */
export function render(document: Document, options: RenderOptions): string {
  const { as, width = usualWidth } = readAll(options, (at) =>
    readShape<RenderOptions>(at, renderOptionsShape),
  );
  return useResult(document, "a document maker", documentMarks, (given) => {
    switch (as) {
      case "text":
        return asText(given, Math.floor(width));
      case "markdown":
        return asMarkdown(given);
      case "html":
        return asHtml(given);
      case "csv":
        return asCsv(given);
    }
  });
}
