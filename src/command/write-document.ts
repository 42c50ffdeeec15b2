import type { Document } from "../report/document.js";
import { render } from "../report/render/render.js";
import { asText } from "../report/render/text.js";
import type { RenderOptions } from "../report/shape.generated.js";
import { shownLetters } from "./shown-letters.js";
import type { Style } from "./style.js";

const usualWidth = 120;

/** Longer lines of sentences are hard to read; a table may be wider. */
const widestSentence = 120;

/** Writes a document; text with letters as wide as a terminal shows them. */
export function writeDocument(
  document: Document,
  { format, width }: Pick<Style, "format" | "width">,
): string {
  return format === "text"
    ? asText(document, width ?? usualWidth, shownLetters, widestSentence)
    : render(document, { as: format as RenderOptions["as"] });
}
