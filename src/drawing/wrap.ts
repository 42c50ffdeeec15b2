/** Pixels of a line of text, and of an average wide letter: more than the letters of common sans-serif faces take. */
export const LINE_HEIGHT = 15;
export const LETTER_WIDTH = 7.2;
export const FONT_SIZE = 12;

/** A width in pixels that holds a line of text in any common sans-serif face. */
export function widthOf(line: string): number {
  let width = 0;
  for (const letter of line) width += (letter.codePointAt(0) ?? 0) > 0x2ff ? FONT_SIZE : wideOr(letter);
  return width;
}

function wideOr(letter: string): number {
  return "MW@%mw".includes(letter) ? 11.5 : LETTER_WIDTH;
}

/** A length with its unit, a word with its hyphens, or hyphens alone, each with the blank behind it. */
const pieces = /\d[\d.,]* ft\b\s?|[^\s-]+-*\s?|-+\s?/g;

/** Breaks a text into lines that fit; between words and after hyphens, and inside a word only where nothing else helps. A length keeps its unit. */
export function wrap(text: string, width: number): readonly string[] {
  const lines: string[] = [];
  let line = "";
  for (const piece of text.replace(/\s+/g, " ").trim().match(pieces) ?? []) {
    if (widthOf((line + piece).trimEnd()) <= width) {
      line += piece;
      continue;
    }
    if (line !== "") {
      lines.push(line.trimEnd());
      line = "";
    }
    for (const letter of piece) {
      if (line !== "" && widthOf((line + letter).trimEnd()) > width) {
        lines.push(line);
        line = "";
      }
      line += letter;
    }
  }
  if (line.trim() !== "") lines.push(line.trimEnd());
  return lines;
}
