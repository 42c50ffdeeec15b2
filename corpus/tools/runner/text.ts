/** One row of a table: words to the left, numbers to the right. */
export type Line = readonly (string | number)[];

/** Width that a report keeps to. */
const width = 80;

/** Columns wide enough for what is in them, under a heading and a rule. */
export function table(head: readonly string[], rows: readonly Line[]): string {
  const widths = head.map((title, column) =>
    Math.max(title.length, ...rows.map((row) => String(row[column] ?? "").length)),
  );
  const isNumber = head.map((_, column) => rows.some((row) => typeof row[column] === "number"));
  const line = (row: Line): string =>
    row
      .map((cell, column) => {
        const size = widths[column] ?? 0;
        return isNumber[column] ? String(cell).padStart(size) : String(cell).padEnd(size);
      })
      .join("  ")
      .trimEnd();
  return [line(head), widths.map((size) => "-".repeat(size)).join("  "), ...rows.map(line)].join("\n");
}

/** A label and its text, folded so that the text stays in its own column. */
export function labelled(label: string, text: string): string {
  const indent = 12;
  const lines: string[] = [];
  let current = "";
  for (const word of text.split(/\s+/)) {
    if (current !== "" && indent + current.length + 1 + word.length > width) {
      lines.push(current);
      current = word;
    } else {
      current = current === "" ? word : `${current} ${word}`;
    }
  }
  lines.push(current);
  return lines.map((one, index) => `${(index === 0 ? `  ${label}` : "").padEnd(indent)}${one}`).join("\n");
}
