const gap = "  ";
const widestCell = 34;

/**
 * A table in letters of equal width. Cells are wrapped at spaces; columns that do not fit beside each other stand in further tables
 * below, each with the first column again.
 */
export function textTable(
  head: readonly string[],
  rows: readonly (readonly string[])[],
  width: number,
): readonly string[] {
  const columns = head.map((name, i) => [name, ...rows.map((row) => row[i] ?? "")]);
  const wide = Math.max(widestCell, Math.floor(width / 5));
  const usual = widthsOf(columns, wide);
  const fits = (usual[0] ?? 0) + gap.length + Math.max(0, ...usual.slice(1)) <= width;
  const most = fits ? wide : Math.floor((width - gap.length) / 2);
  const widths = fits ? usual : widthsOf(columns, most);
  return groups(widths, width).flatMap((group, i) => {
    const line = (cells: readonly string[]) =>
      rowLines(
        group.map((at) => [cells[at] ?? "", widths[at] ?? 0]),
        most,
      );
    const rule = group.map((at) => "-".repeat(widths[at] ?? 0)).join(gap);
    return [...(i === 0 ? [] : [""]), ...line(head), rule, ...rows.flatMap(line)];
  });
}

/** The widest line of each column. */
function widthsOf(columns: readonly (readonly string[])[], most: number): readonly number[] {
  return columns.map((cells) =>
    cells.flatMap((cell) => wrapped(cell, most)).reduce((widest, line) => Math.max(widest, length(line)), 0),
  );
}

/** A text broken at spaces into lines that are no longer than a width; a word that is longer is broken too. */
export function wrapped(text: string, width: number): readonly string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(" ").flatMap((one) => pieces(one, width))) {
    if (line !== "" && length(line) + 1 + length(word) > width) {
      lines.push(line);
      line = word;
    } else line = line === "" ? word : `${line} ${word}`;
  }
  return [...lines, line];
}

/** A word as it is, or in pieces of a width. */
function pieces(word: string, width: number): readonly string[] {
  if (word.length <= width) return [word];
  const letters = [...word];
  return Array.from({ length: Math.ceil(letters.length / width) }, (_, i) =>
    letters.slice(i * width, (i + 1) * width).join(""),
  );
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
): readonly string[] {
  const parts = cells.map(([text]) => wrapped(text, most));
  return Array.from({ length: Math.max(...parts.map((one) => one.length)) }, (_, i) =>
    cells
      .map(([, width], at) => padded(parts[at]?.[i] ?? "", width))
      .join(gap)
      .trimEnd(),
  );
}

function padded(text: string, width: number): string {
  return text + " ".repeat(Math.max(0, width - length(text)));
}

function length(text: string): number {
  return [...text].length;
}
