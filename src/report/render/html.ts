import type { Sheet } from "../../drawing/drawing.js";
import type { Document, DocumentHeading, DocumentPart, DocumentSignatures } from "../document.js";
import { htmlStyles } from "./html-styles.js";
import { scrolling, tableHtml } from "./html-table.js";
import { escapeMarkup } from "./markup.js";
import { sheetElement } from "./sheet-svg.js";

/** With fewer sections a list of links to them is in the way. */
const leastSections = 3;

/** A document as one HTML file that loads nothing, for a screen in two themes and for paper. */
export function asHtml({ title, facts, signatures, parts }: Document): string {
  const name = escapeMarkup(title);
  const sections = sectionsIn(parts, 2);
  const first = parts.find(({ kind }) => kind === "drawing");
  const written = sections.map((one, i) => sectionElement(one, `part-${i}`, first));
  const wide = sections.reduce((end, one, i) => (one.parts.some(isWide) ? i + 1 : end), 0);
  const fingerprint = facts.find((one) => one.name === "Fingerprint")?.text;
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${name}</title>
<style>
${htmlStyles({ title, foot: fingerprint === undefined ? "" : `Fingerprint ${fingerprint}` })}
</style>
</head>
<body>
<header>
<h1>${name}</h1>
<dl class="block">${facts.map(({ name: of, text }) => `<div><dt>${escapeMarkup(of)}</dt><dd>${escapeMarkup(text)}</dd></div>`).join("")}</dl>
${signatures === undefined ? "" : linesToSign(signatures)}</header>
${linksTo(sections)}<main>
${written.slice(0, wide).join("\n")}
<div class="columns">
${written.slice(wide).join("\n")}
</div>
</main>
</body>
</html>
`;
}

/** What needs the whole width of a page; what follows the last of it is set in two columns on paper. */
function isWide(part: DocumentPart): boolean {
  return part.kind === "drawing" || (part.kind === "table" && part.of !== "sheets");
}

/** A heading with the parts up to the next of its level; what stands before the first has none. */
interface Section {
  readonly heading: DocumentHeading | undefined;
  readonly parts: readonly DocumentPart[];
}

function sectionsIn(parts: readonly DocumentPart[], level: 2 | 3): readonly Section[] {
  const starts = parts.flatMap((part, i) => (part.kind === "heading" && part.level === level ? [i] : []));
  const before = parts.slice(0, starts[0] ?? parts.length);
  return [
    ...(before.length === 0 ? [] : [{ heading: undefined, parts: before }]),
    ...starts.map((start, i) => ({
      heading: parts[start] as DocumentHeading,
      parts: parts.slice(start + 1, starts[i + 1] ?? parts.length),
    })),
  ];
}

function linksTo(sections: readonly Section[]): string {
  const links = sections.flatMap(({ heading }, i) =>
    heading === undefined
      ? []
      : [`<li><a href="#${idOf(heading, `part-${i}`)}">${escapeMarkup(heading.text)}</a></li>`],
  );
  if (links.length < leastSections) return "";
  return `<nav aria-label="Parts of this page"><ul>${links.join("")}</ul></nav>\n`;
}

function idOf({ mark }: DocumentHeading, id: string): string {
  return escapeMarkup(mark ?? id);
}

/** A section; `first` is the drawing that has the key. */
function sectionElement({ heading, parts }: Section, id: string, first: DocumentPart | undefined): string {
  if (heading === undefined)
    return parts.map((part, i) => element(part, `${id}-${i}`, part === first)).join("\n");
  const { level, text } = heading;
  const inner =
    level === 2
      ? sectionsIn(parts, 3).map((one, i) => sectionElement(one, `${id}-${i}`, first))
      : parts.map((part, i) => element(part, `${id}-${i}`, part === first));
  return `<section id="${idOf(heading, id)}">\n<h${level}>${escapeMarkup(text)}</h${level}>\n${inner.join("\n")}\n</section>`;
}

function element(part: DocumentPart, id: string, hasKey: boolean): string {
  switch (part.kind) {
    case "heading":
      return `<h${part.level}>${escapeMarkup(part.text)}</h${part.level}>`;
    case "text":
      return part.strong === undefined
        ? `<p>${escapeMarkup(part.text)}</p>`
        : `<p><strong>${escapeMarkup(part.strong)}.</strong> ${escapeMarkup(part.text)}</p>`;
    case "list": {
      const list = `<ul>${part.items.map((item) => `<li>${escapeMarkup(item)}</li>`).join("\n")}</ul>`;
      return part.folded === undefined
        ? list
        : `<details><summary>${escapeMarkup(part.folded)}</summary>${list}</details>`;
    }
    case "table":
      return tableHtml(part);
    case "drawing":
      return figure(part.sheet, id, hasKey);
  }
}

/** Ruled lines to be signed on paper; a screen does not show them. */
function linesToSign({ who, fields }: DocumentSignatures): string {
  const blanks = fields.map((name) => `<td>${escapeMarkup(name)}</td>`).join("");
  const rows = who.map((name) => `<tr><th scope="row">${escapeMarkup(name)}</th>${blanks}</tr>`);
  return `<table class="signatures">${rows.join("")}</table>`;
}

/** A drawing with its path as a list; the first of a document has the key of all. */
function figure(sheet: Sheet, id: string, hasKey: boolean): string {
  const { title, description } = sheet;
  const list = `sheet-${id}-path`;
  const isListed = description.length > 0;
  const { element } = sheetElement(sheet, { id: `sheet-${id}`, hasKey, ...(isListed && { listedIn: list }) });
  const items = description.map((one) => `<li>${escapeMarkup(one)}</li>`).join("");
  const path = isListed
    ? `<details id="${list}"><summary>The path as a list</summary><ul>${items}</ul></details>`
    : "";
  return `<figure class="drawing">${scrolling(element, title)}${path}</figure>`;
}
