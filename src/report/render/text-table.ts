import { codePoints, type Letters } from "./letters.js";

const gap = "  ";
const usualCell = 34;

/**
 * A table in letters of equal width. Cells are wrapped at spaces, no narrower than all columns beside each other require; columns that do
 * not fit stand in further tables below, each with the first column again.
 */
export function textTable(
  head: readonly string[],
  rows: readonly (readonly string[])[],
  width: number,
  letters: Letters = codePoints,
): readonly string[] {
  const columns = head.map((name, i) => [name, ...rows.map((row) => row[i] ?? "")]);
  const roomy = roomyCell(columns, width, letters);
  const usual = widthsOf(columns, roomy, letters);
  const fits = (usual[0] ?? 0) + gap.length + Math.max(0, ...usual.slice(1)) <= width;
  const most = fits ? roomy : Math.floor((width - gap.length) / 2);
  const widths = fits ? usual : widthsOf(columns, most, letters);
  return groups(widths, width).flatMap((group, i) => {
    const line = (cells: readonly string[]) =>
      rowLines(
        group.map((at) => [cells[at] ?? "", widths[at] ?? 0]),
        most,
        letters,
      );
    const rule = group.map((at) => "-".repeat(widths[at] ?? 0)).join(gap);
    return [...(i === 0 ? [] : [""]), ...line(head), rule, ...rows.flatMap(line)];
  });
}

/** The widest cell with which all columns stand beside each other; the usual one where none does. */
function roomyCell(columns: readonly (readonly string[])[], width: number, letters: Letters): number {
  const whole = columns.map((cells) => Math.max(...cells.map(letters.widthOf)));
  const room = width - gap.length * (columns.length - 1);
  for (let most = Math.min(width, Math.max(...whole)); most > usualCell; most -= 1) {
    if (whole.reduce((sum, one) => sum + Math.min(one, most), 0) <= room) return most;
  }
  return usualCell;
}

/** The widest line of each column. */
function widthsOf(
  columns: readonly (readonly string[])[],
  most: number,
  letters: Letters,
): readonly number[] {
  return columns.map((cells) =>
    cells
      .flatMap((cell) => wrapped(cell, most, letters))
      .reduce((widest, line) => Math.max(widest, letters.widthOf(line)), 0),
  );
}

/** A text broken at spaces into lines that are no wider than a width; a word that is wider is broken too. */
export function wrapped(text: string, width: number, letters: Letters = codePoints): readonly string[] {
  const lines: string[] = [];
  let line = "";
  let used = 0;
  for (const word of text.split(" ").flatMap((one) => pieces(one, width, letters))) {
    const more = letters.widthOf(word);
    if (line !== "" && used + 1 + more > width) {
      lines.push(line);
      line = word;
      used = more;
    } else {
      used = line === "" ? more : used + 1 + more;
      line = line === "" ? word : `${line} ${word}`;
    }
  }
  return [...lines, line];
}

/** A word as it is, or in pieces of a width; a letter that is wider is a piece of its own. */
function pieces(word: string, width: number, letters: Letters): readonly string[] {
  if (letters.widthOf(word) <= width) return [word];
  const all: string[] = [];
  let piece = "";
  let used = 0;
  for (const letter of letters.of(word)) {
    const more = letters.widthOf(letter);
    if (piece !== "" && used + more > width) {
      all.push(piece);
      piece = "";
      used = 0;
    }
    piece += letter;
    used += more;
  }
  return [...all, piece];
}

/** The columns of each table; every table starts with the first column and holds at least one other. */
function groups(widths: readonly number[], width: number): readonly (readonly number[])[] {
  const all: number[][] = [];
  let used = 0;
  for (let at = 1; at < widths.length; at += 1) {
    const more = gap.length + (widths[at] ?? 0);
    const last = all.at(-1);
    if (last === undefined || used + more > width) {
      all.push([0, at]);
      used = (widths[0] ?? 0) + more;
    } else {
      last.push(at);
      used += more;
    }
  }
  return all.length === 0 ? [[0]] : all;
}

function rowLines(
  cells: readonly (readonly [text: string, width: number])[],
  most: number,
  letters: Letters,
): readonly string[] {
  const parts = cells.map(([text]) => wrapped(text, most, letters));
  return Array.from({ length: Math.max(...parts.map((one) => one.length)) }, (_, i) =>
    cells
      .map(([, width], at) => padded(parts[at]?.[i] ?? "", width, letters))
      .join(gap)
      .trimEnd(),
  );
}

function padded(text: string, width: number, { widthOf }: Letters): string {
  return text + " ".repeat(Math.max(0, width - widthOf(text)));
}
