import type { EditionYear } from "../../../src/edition/edition-year.js";
import { cellKey, cellsOf } from "../generator/cells.js";
import { channelKinds } from "../generator/channels.js";
import type { TableFile } from "../generator/model.js";
import { hashOf } from "./canonical.js";

/** A page to print and fill in beside the book: columns and row labels, empty cells, and none of our values. */
export function sheetOf(table: TableFile, edition: EditionYear): string {
  const number = table.number[edition] ?? "";
  const columns = table.columns.filter(({ unit }) => unit !== "flag");
  const [label, ...blank] = columns;
  const cells = cellsOf(table, edition);
  const asked = new Set(cells.filter(({ isLabel }) => !isLabel).map(cellKey));
  const rows = [...new Set(cells.map(({ row }) => row))].map((row) => {
    const empty = blank.map(({ id }) =>
      asked.has(cellKey({ row, column: id })) ? "<td></td>" : '<td class="none"></td>',
    );
    return `<tr><th scope="row">${html(row)}</th>${empty.join("")}</tr>`;
  });
  const head = [label, ...blank].map((column) => `<th scope="col">${html(column?.id ?? "")}</th>`);
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<title>${html(`${table.id}, ${edition}`)}</title>
<style>
body { font: 11pt/1.4 sans-serif; margin: 2em auto; max-width: 48em; padding: 0 1em; }
table { border-collapse: collapse; margin: 1em 0; }
th, td { border: 1px solid #444; padding: 0.3em 0.6em; text-align: left; }
td { min-width: 6em; height: 1.6em; }
td.none { background: #ddd; }
dl { display: grid; grid-template-columns: max-content 1fr; gap: 0.4em 1em; }
dd { border-bottom: 1px solid #444; margin: 0; min-height: 1.4em; }
pre { overflow-wrap: anywhere; white-space: pre-wrap; font-size: 9pt; }
@media print { pre, .answer { break-before: page; } }
</style>
</head>
<body>
<h1>${html(table.title)}</h1>
<dl>
<dt>NFPA 70, edition</dt><dd>${edition}</dd>
<dt>Number of the table, as we know it</dt><dd>${html(number)}</dd>
<dt>Printing, or translation, or date of access</dt><dd></dd>
<dt>Kind of copy (${channelKinds.join(", ")})</dt><dd></dd>
<dt>Your initials or organization</dt><dd></dd>
<dt>Date</dt><dd></dd>
</dl>
<h2>What to do</h2>
<ol>
<li>Open the table in a copy of this edition that was published or licensed by its publisher or by an authority. A list in a forum, a textbook or another program is not such a copy.</li>
<li>Write into each empty cell what the book prints there. Do not look our values up first; they are not on this sheet on purpose.</li>
<li>A dash (-) is for a cell in which the book prints nothing. Leave a cell empty that you cannot read. Where the book has no such row, write: no such row.</li>
<li>The row called last is the open one at the end, above the limits of the row before it.</li>
<li>Rows that the book has and this sheet has not, another number of the table, footnotes that limit a row: write them below the table.</li>
<li>Only values. Do not copy sentences of the code.</li>
</ol>
<table>
<thead><tr>${head.join("")}</tr></thead>
<tbody>
${rows.join("\n")}
</tbody>
</table>
<ul>
${columns.map(({ id, unit, says }) => `<li>${html(`${id} (${unit}): ${says}`)}</li>`).join("\n")}
</ul>
<p>SHA-256 of our values for this table and edition: <code>${hashOf(table, edition)}</code></p>
<h2 class="answer">The answer as a file</h2>
<p>Replace <code>null</code> by what you read; <code>null</code> stays where you could not read a cell.</p>
<pre>${html(JSON.stringify(blankAnswer(table, edition), null, 2))}</pre>
</body>
</html>
`;
}

/** The file that comes back, with nothing in it yet. */
function blankAnswer(table: TableFile, edition: EditionYear): object {
  const cells = cellsOf(table, edition).filter(({ isLabel }) => !isLabel);
  return {
    format: 1,
    table: table.id,
    edition,
    printing: "",
    channel: "",
    witness: "",
    date: "",
    hash: hashOf(table, edition),
    cells: Object.fromEntries(cells.map((cell) => [cellKey(cell), null])),
  };
}

function html(text: string): string {
  return text
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;");
}
