import { escapeMarkup } from "./markup.js";
import type { Part } from "./parts.js";
import { reportStyles } from "./report-styles.js";

/** A page as one HTML file that loads nothing, in the styles of the report. */
export function partsAsHtml(parts: readonly Part[]): string {
  const title = parts.find((part) => part.kind === "title");
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${title?.kind === "title" ? escapeMarkup(title.text) : ""}</title>
<style>
${reportStyles()}
</style>
</head>
<body>
<main>
${parts.map(htmlOf).join("\n")}
</main>
</body>
</html>
`;
}

function htmlOf(part: Part): string {
  switch (part.kind) {
    case "title":
      return `<h1>${escapeMarkup(part.text)}</h1>`;
    case "heading":
      return `<h2>${escapeMarkup(part.text)}</h2>`;
    case "text":
      return `<p>${escapeMarkup(part.text)}</p>`;
    case "lines":
      return part.lines.map((line) => `<p>${escapeMarkup(line)}</p>`).join("\n");
    case "list":
      return `<ul>${part.lines.map((line) => `<li>${escapeMarkup(line)}</li>`).join("\n")}</ul>`;
    case "table":
      return table(part.head, part.rows);
  }
}

/** Many columns scroll sideways inside their own frame, which the keyboard reaches. */
function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const columns = head.map(escapeMarkup);
  const heads = columns.map((one) => `<th scope="col">${one}</th>`).join("");
  const body = rows.map(
    (cells) => `<tr>${cells.map((text, i) => cell(text, columns[i] ?? "", i)).join("")}</tr>`,
  );
  const name = `Table of ${columns[0] ?? ""}, scrolls sideways`;
  return `<div class="scroll" tabindex="0" role="group" aria-label="${name}"><table><thead><tr>${heads}</tr></thead><tbody>\n${body.join("\n")}\n</tbody></table></div>`;
}

function cell(text: string, column: string, i: number): string {
  const inside = `data-label="${column}">${escapeMarkup(text)}`;
  return i === 0 ? `<th scope="row" ${inside}</th>` : `<td ${inside}</td>`;
}
