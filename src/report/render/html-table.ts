import { cellText, type DocumentCell, type DocumentTable } from "../document.js";
import { escapeMarkup } from "./markup.js";

/** A table as HTML. What is wide scrolls sideways inside its own frame. */
export function tableHtml(table: DocumentTable): string {
  switch (table.of) {
    case "grid":
      return framedRows(table);
    case "records":
      return table.head.length > mostColumns ? framedRows(table) : rowsHtml(table);
    case "sheets":
      return sheetsHtml(table);
  }
}

/** Records with more do not fit a desk beside each other. */
const mostColumns = 8;

function framedRows(table: DocumentTable): string {
  return scrolling(rowsHtml(table), `Table of ${table.head[0] ?? ""}`);
}

/** What is wide scrolls sideways inside its own frame, which the keyboard reaches. */
export function scrolling(content: string, name: string): string {
  return `<div class="scroll" tabindex="0" role="group" aria-label="${escapeMarkup(name)}, scrolls sideways">${content}</div>`;
}

function rowsHtml({ of, head, rows }: DocumentTable): string {
  const columns = head.map(escapeMarkup);
  const heads = columns.map((one) => `<th scope="col">${one}</th>`).join("");
  const body = rows.map((cells, i) => {
    const [first] = cells;
    if (first !== undefined && cells.length === 1 && head.length > 1) {
      const over = `<tr class="over"><th scope="rowgroup" colspan="${head.length}">${escapeMarkup(cellText(first))}</th></tr>`;
      return i === 0 ? over : `</tbody><tbody>\n${over}`;
    }
    return `<tr>${cells.map((cell, at) => cellHtml(cell, columns[at] ?? "", at)).join("")}</tr>`;
  });
  return `<table class="${of}"><thead><tr>${heads}</tr></thead><tbody>\n${body.join("\n")}\n</tbody></table>`;
}

/** A longer word may be broken anywhere, so that a name cannot make its column too wide. */
const longestWord = 18;

/** A size or a section, which is not broken in a record. */
const longestUnbroken = 16;

function cellHtml(cell: DocumentCell, column: string, i: number): string {
  const text = cellText(cell);
  const isLong = text.split(/\s/).some((word) => word.length > longestWord);
  const isShort = /\d/.test(text) && text.length <= longestUnbroken;
  const rest = `${isLong ? ' class="name"' : isShort ? ' class="short"' : ""}${markOf(cell)} data-label="${column}">${inside(cell)}`;
  return i === 0 ? `<th scope="row"${rest}</th>` : `<td${rest}</td>`;
}

function markOf(cell: DocumentCell): string {
  return typeof cell === "string" || cell.mark === undefined ? "" : ` id="${escapeMarkup(cell.mark)}"`;
}

function inside(cell: DocumentCell): string {
  const text = escapeMarkup(cellText(cell));
  return typeof cell === "string" || cell.to === undefined
    ? text
    : `<a href="#${escapeMarkup(cell.to)}">${text}</a>`;
}

/** Each row as a small sheet: its first two cells above, each other on a line behind the head of its column. */
function sheetsHtml({ head, rows }: DocumentTable): string {
  const names = head.map(escapeMarkup);
  const sheets = rows.map(([number = "", name = "", ...rest]) => {
    const lines = rest.flatMap((cell, i) =>
      cellText(cell) === "" ? [] : [`<div><dt>${names[i + 2] ?? ""}</dt><dd>${inside(cell)}</dd></div>`],
    );
    return `<div class="sheet"${markOf(number)}>\n<h3><span class="number">${inside(number)}</span> ${inside(name)}</h3>\n<dl>${lines.join("")}</dl>\n</div>`;
  });
  return `<div class="sheets">\n${sheets.join("\n")}\n</div>`;
}
