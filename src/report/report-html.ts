import type { Sheet } from "../picture/picture.js";
import { escapeMarkup } from "./markup.js";
import { reportStyles } from "./report-styles.js";
import { type ReviewBasis, type ReviewRow, reviewOf } from "./review.js";
import { sheetElement } from "./sheet-svg.js";

/**
 * Writes the report for a plan reviewer as one HTML file that loads nothing: title block, the drawing, the schedule, every result in
 * sentences with its numbers, sections and evidence, cautions, and what was not sized and why. It follows a dark theme on a
 * screen, prints black on white with table heads on every page, and escapes every name.
 *
 * @param source - a drawing, its JSON text, or the value that it would parse to
 * @returns the text of the file
 * @throws {@link InputError} listing everything that is wrong in the drawing
 *
 * @example
 * ```ts
 * import { reportAsHtml } from "bondmil";
 * const report = reportAsHtml({
 *   format: 1,
 *   title: "Pumps & valves",
 *   code: { year: "2020" },
 *   materials: {
 *     bondingJumpers: "copper",
 *     groundedConductors: "copper",
 *     electrodeConductors: "copper",
 *     equipmentGrounding: "copper",
 *   },
 *   existing: [{ id: "P1" }],
 *   circuits: [{ id: "C1", from: "P1", to: "pump", device: { amperes: 100 }, wiring: "raceway" }],
 * });
 * report.includes("<h1>Pumps &amp; valves: bonding and grounding conductors</h1>"); // => true
 * ```
 */
export function reportAsHtml(source: unknown): string {
  const { title, block, violations, sheets, schedule, basis, cautions, notSized, standing } =
    reviewOf(source);
  const heading = `${escapeMarkup(title)}: bonding and grounding conductors`;
  const parts = [
    ...(violations.length === 0 ? [] : [["violations", "Not permitted", list(violations)] as const]),
    ["drawing", "The drawing", sheets.map(figure).join("\n")],
    ["schedule", "Schedule", schedule.map(([name, rows]) => table(name, rows)).join("\n")],
    ["results", "Each result", basis.map(result).join("\n")],
    ["not-sized", "Not sized, and why", list(notSized)],
    ["cautions", "Cautions", list([...cautions, ...standing])],
  ] as const;
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${heading}</title>
<style>
${reportStyles()}
</style>
</head>
<body>
<header>
<h1>${heading}</h1>
<dl class="block">${block.map(([name, text]) => `<div><dt>${name}</dt><dd>${escapeMarkup(text)}</dd></div>`).join("")}</dl>
</header>
<nav aria-label="Parts of the report"><ul>${parts.map(([id, name]) => `<li><a href="#${id}">${name}</a></li>`).join("")}</ul></nav>
<main>
${parts.map(([id, name, content]) => `<section id="${id}">\n<h2${id === "drawing" ? largeClass(sheets[0]) : ""}>${name}</h2>\n${content}\n</section>`).join("\n")}
</main>
</body>
</html>
`;
}

/** What a landscape letter page still shows in a size that can be read; larger sheets get a page of 17 by 11 inches. */
const LETTER_WIDE = 1650;
const LETTER_HIGH = 850;

function largeClass(sheet: Sheet | undefined): string {
  const isLarge = sheet !== undefined && (sheet.width > LETTER_WIDE || sheet.height > LETTER_HIGH);
  return isLarge ? ' class="large"' : "";
}

function figure(sheet: Sheet, i: number): string {
  const title = escapeMarkup(sheet.title);
  return `<figure${largeClass(sheet)}><div class="scroll" tabindex="0" role="group" aria-label="${title}, scrolls sideways">${sheetElement(sheet, `sheet-${i + 1}`)}</div><figcaption>${title}. Numbers are those of the schedule.</figcaption></figure>`;
}

function table(name: string, rows: readonly ReviewRow[]): string {
  const columns = ["No.", "Conductor", "From", "To", "Smallest size", "Required", "Section", "Evidence"];
  const head = columns.map((one) => `<th scope="col">${one}</th>`).join("");
  return `<h3>${name}</h3>\n<table><thead><tr>${head}</tr></thead><tbody>\n${rows.map((one) => row(one, columns)).join("\n")}\n</tbody></table>`;
}

/** Of the cells after the conductor; names may be broken anywhere. */
const cellClasses = ["name", "name", "size", "area", "section", "evidence"];

function row(
  { mark, id, from, to, size, area, section: at, evidence }: ReviewRow,
  columns: readonly string[],
): string {
  const texts = [from, to, size, area, at, evidence].map(escapeMarkup);
  const cells = texts.map(
    (text, i) => `<td class="${cellClasses[i]}" data-label="${columns[i + 2]}">${text}</td>`,
  );
  return `<tr><td data-label="No.">${mark}</td><th scope="row" data-label="Conductor"><a href="#result-${mark}">${escapeMarkup(id)}</a></th>${cells.join("")}</tr>`;
}

function result({ mark, id, size, sentences, evidence, readings, cautions }: ReviewBasis): string {
  return [
    `<article class="result" id="result-${mark}"><h3><span>${mark}.</span>${escapeMarkup(id)}</h3>`,
    `<p><strong>${escapeMarkup(size)}.</strong> ${escapeMarkup(sentences)} Evidence: ${evidence}.</p>`,
    ...readings.map((text) => `<p class="reading">${escapeMarkup(text)}</p>`),
    ...cautions.map((text) => `<p class="caution">${escapeMarkup(text)}</p>`),
    "</article>",
  ].join("\n");
}

function list(items: readonly string[]): string {
  if (items.length === 0) return "<p>Everything that the drawing holds was sized.</p>";
  return `<ul>${items.map((item) => `<li>${escapeMarkup(item)}</li>`).join("\n")}</ul>`;
}
