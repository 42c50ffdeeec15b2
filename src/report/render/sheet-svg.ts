import type { DrawnLabel, LineStyle, Sheet, SymbolKind } from "../../drawing/drawing.js";
import { FONT_SIZE, LINE_HEIGHT, wrap } from "../../drawing/wrap.js";
import { violationSentence } from "../words/violation-words.js";
import { escapeMarkup } from "./markup.js";

/** What each kind of line is called in the key. */
const lineNames: Readonly<Record<LineStyle, string>> = {
  "fault-path": "fault path",
  "electrode-system": "electrode system",
  equalizing: "equalizing",
  load: "load only",
  context: "not sized here",
};

const symbolShapes: Readonly<Record<SymbolKind, string>> = {
  transformer: '<circle cx="8.5" cy="12" r="6.5"/><circle cx="15.5" cy="12" r="6.5"/>',
  generator: '<circle cx="12" cy="12" r="10"/><path d="M6 12q3-7 6 0t6 0"/>',
  source: '<circle cx="12" cy="12" r="10"/><path d="M12 6v12M6 12h12"/>',
  disconnect: '<path d="M1 15h6M7 15L18 5M18 11v8M18 15h5"/><circle cx="7" cy="15" r="1.5"/>',
  meter: '<circle cx="12" cy="12" r="10"/><path d="M12 12L17 6M6 16h12"/>',
  earth: '<path d="M12 1v11M2 12h20M6 16.5h12M10 21h4"/>',
  frame: '<path d="M12 1v11M3 12h18M4 12l-3 8M12 12l-3 8M20 12l-3 8"/>',
};

/** Styles of a sheet: ink and ground follow the page if it names them, else the theme of the reader; paper is black on white. */
export const sheetStyles =
  (): string => `.bondmil{color:var(--ink,#1c1a17);font:${FONT_SIZE}px Arial,Helvetica,sans-serif}
.bondmil .ground{fill:var(--paper,#fff)}.bondmil text{fill:currentColor}.bondmil .strong{font-weight:700}
.bondmil path,.bondmil rect,.bondmil circle{fill:none;stroke:currentColor;stroke-width:1.2}.bondmil .ground{stroke:none;fill:var(--paper,#fff)}
.bondmil .elsewhere{stroke-dasharray:1 3}.bondmil .context{stroke-width:.8}.bondmil .load{stroke-width:1.6;stroke-dasharray:14 3 2 3}.bondmil .fault-path{stroke-width:3}
.bondmil .electrode-system{stroke-width:2;stroke-dasharray:10 5}.bondmil .equalizing{stroke-width:2;stroke-dasharray:2 4}
@media (prefers-color-scheme:dark){.bondmil{color:var(--ink,#ece7df)}.bondmil .ground{fill:var(--paper,#191715)}}
@media print{.bondmil{color:#000}.bondmil .ground{fill:#fff}}`;

const KEY_HEIGHT = 48;
const LIST_MARGIN = 16;

/** A sheet as an SVG element, with its title and description as text alternatives; `id` keeps those of several in one page apart. */
export function sheetElement(sheet: Sheet, id: string): string {
  const { title, description, width, boxes, lines, symbols, labels, violations = [] } = sheet;
  const whole = Math.max(width, 660);
  const listed = violations.flatMap(({ mark, violation }) =>
    wrap(`${mark}. Not permitted: ${violationSentence(violation)}`, whole - 2 * LIST_MARGIN),
  );
  const top = KEY_HEIGHT + sheet.height + LINE_HEIGHT;
  const height = listed.length === 0 ? KEY_HEIGHT + sheet.height : top + (listed.length + 1) * LINE_HEIGHT;
  return [
    `<svg class="bondmil" xmlns="http://www.w3.org/2000/svg" width="${whole}" height="${height}" viewBox="0 0 ${whole} ${height}" role="img" aria-labelledby="${id}-title ${id}-desc">`,
    `<title id="${id}-title">${escapeMarkup(title)}</title><desc id="${id}-desc">${escapeMarkup(description)}</desc>`,
    `<rect class="ground" width="${whole}" height="${height}"/>`,
    `<text class="label strong" x="16" y="18">${escapeMarkup(title)}</text>`,
    ...(Object.keys(lineNames) as LineStyle[]).map(
      (style, i) =>
        `<path class="${style}" d="M${16 + i * 165} 34h30"/><text class="label" x="${52 + i * 165}" y="38">${lineNames[style]}</text>`,
    ),
    `<g transform="translate(0 ${KEY_HEIGHT})">`,
    ...boxes.map(
      ({ kind, x, y, width: w, height: h }) =>
        `<rect class="${kind}" x="${x}" y="${y}" width="${w}" height="${h}"/>`,
    ),
    ...lines.map(
      ({ style, points }) =>
        `<path class="${style}" d="M${points.map(({ x, y }) => `${round(x)} ${round(y)}`).join("L")}"/>`,
    ),
    ...symbols.map(({ kind, x, y }) => `<g transform="translate(${x} ${y})">${symbolShapes[kind]}</g>`),
    ...labels.map(labelElement),
    ...(listed.length === 0 ? ["</g></svg>"] : ["</g>", listElement(listed, top, whole), "</svg>"]),
  ].join("\n");
}

function listElement(lines: readonly string[], y: number, whole: number): string {
  const width = whole - 2 * LIST_MARGIN;
  return labelElement({ x: LIST_MARGIN, y, width, height: lines.length * LINE_HEIGHT, lines, strong: 0 });
}

function labelElement({ x, y, lines, strong }: DrawnLabel): string {
  const spans = lines.map(
    (line, i) =>
      `<tspan x="${x}" y="${round(y + i * LINE_HEIGHT + FONT_SIZE)}"${i < strong ? ' class="strong"' : ""}>${escapeMarkup(line)}</tspan>`,
  );
  return `<text class="label">${spans.join("")}</text>`;
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}
