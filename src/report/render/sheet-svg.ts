import type { DrawnArrow, DrawnLabel, DrawnLine, DrawnOutline, Sheet } from "../../drawing/drawing.js";
import { FONT_SIZE, LINE_HEIGHT, wrap } from "../../drawing/wrap.js";
import { violationSentence } from "../words/violation-words.js";
import { keyElement } from "./key-svg.js";
import { escapeMarkup } from "./markup.js";
import { symbolShape } from "./symbols-svg.js";

/** Styles of a sheet: ink and ground follow the page if it names them, else the theme of the reader; paper is black on white. */
export const sheetStyles =
  (): string => `.bondmil{color:var(--ink,#1c1a17);font:${FONT_SIZE}px Arial,Helvetica,sans-serif}
.bondmil text{fill:currentColor}.bondmil .strong{font-weight:700}
.bondmil path,.bondmil rect,.bondmil circle,.bondmil ellipse{fill:none;stroke:currentColor;stroke-width:1.2}.bondmil .ground{stroke:none;fill:var(--paper,#fff)}
.bondmil .ground-filled{fill:var(--paper,#fff)}.bondmil .dot,.bondmil .arrow{fill:currentColor;stroke:none}.bondmil .thick{stroke-width:4}
.bondmil .enclosure,.bondmil .part{stroke-width:.9;fill:currentColor;fill-opacity:.04}.bondmil .edge{fill:none}.bondmil .area{stroke:none}.bondmil .elsewhere{stroke-width:.9;stroke-dasharray:1 3}.bondmil .assembly{stroke-width:.9;stroke-dasharray:12 4 2 4}.bondmil .raceway{stroke-width:.7}
.bondmil .context{stroke-width:.9}.bondmil .bond{stroke-width:1.3}.bondmil .bar{stroke-width:5}.bondmil .load{stroke-width:1.6;stroke-dasharray:14 3 2 3}.bondmil .fault-path{stroke-width:2.8}
.bondmil .electrode-system{stroke-width:2;stroke-dasharray:10 5}.bondmil .equalizing{stroke-width:2;stroke-dasharray:2 4}.bondmil .hatch{stroke-width:.8}.bondmil .violation{stroke-width:1.6}
.bondmil .dim{opacity:.4}.bondmil text.dim{opacity:.68}.bondmil .lit{font-weight:700}.bondmil .around{stroke-width:11;opacity:.22;stroke-dasharray:none}
@media (prefers-color-scheme:dark){.bondmil{color:var(--ink,#ece7df)}.bondmil .ground,.bondmil .ground-filled{fill:var(--paper,#191715)}}
@media print{.bondmil{color:#000}.bondmil .ground,.bondmil .ground-filled{fill:#fff}}`;

const MARGIN = 14;
const TITLE_HEIGHT = 30;

/** How a sheet is shown. */
export interface Shown {
  /** Told apart from the other sheets of a page. */
  readonly id: string;
  /** Whether it holds the key, which all sheets of a drawing have in common. */
  readonly hasKey: boolean;
  /** Id of the conductor that stands out. */
  readonly highlight?: string | undefined;
  /** Id of the list of the path, where it stands beside the picture. */
  readonly listedIn?: string;
}

/** A sheet as an SVG element, and its height. */
export function sheetElement(
  sheet: Sheet,
  { id, hasKey, highlight, listedIn }: Shown,
): { readonly element: string; readonly height: number } {
  const { title, description, width, violations = [] } = sheet;
  const wrapped = wrap(title, width - 2 * MARGIN);
  const heading = wrapped.length === 0 ? [""] : wrapped;
  const key = hasKey
    ? keyElement(TITLE_HEIGHT + (heading.length - 1) * LINE_HEIGHT)
    : { element: "", height: 0 };
  const top = TITLE_HEIGHT + (heading.length - 1) * LINE_HEIGHT + key.height;
  const listed = violations.flatMap(({ mark, violation }) =>
    wrap(`${mark}. Not permitted: ${violationSentence(violation)}`, width - 2 * MARGIN),
  );
  const end = top + sheet.height;
  const height = Math.ceil(end + (listed.length === 0 ? 0 : (listed.length + 1) * LINE_HEIGHT));
  const isOther = (conductor: string | undefined): string =>
    highlight === undefined ? "" : conductor !== highlight ? " dim" : " lit";
  const desc =
    listedIn === undefined ? `<desc id="${id}-desc">${escapeMarkup(description.join("\n"))}</desc>` : "";
  const element = [
    `<svg class="bondmil" xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" role="img" aria-labelledby="${id}-title" aria-describedby="${listedIn ?? `${id}-desc`}">`,
    `<title id="${id}-title">${escapeMarkup(title)}</title>${desc}`,
    `<rect class="ground" width="${width}" height="${height}"/>`,
    labelElement({ x: MARGIN, y: 8, width, height: 0, lines: heading, strong: heading.length }, ""),
    key.element,
    `<g transform="translate(0 ${top})">`,
    ...sheet.outlines.map((one) => outlineElement(one, isOther(undefined))),
    ...sheet.grounds.map(({ x, y, width: wide }) => groundElement(x, y, wide, isOther(undefined))),
    ...sheet.lines
      .filter(({ conductor }) => conductor !== undefined && conductor === highlight)
      .map(haloElement),
    ...sheet.lines.map((one) => lineElement(one, isOther(one.conductor))),
    ...sheet.symbols.map(
      ({ kind, x, y }) =>
        `<g class="symbol${isOther(undefined)}" transform="translate(${round(x)} ${round(y)})">${symbolShape(kind)}</g>`,
    ),
    ...sheet.joints.map(
      ({ x, y }) => `<circle class="dot${isOther(undefined)}" cx="${round(x)}" cy="${round(y)}" r="3"/>`,
    ),
    ...sheet.arrows.map((one) => arrowElement(one, isOther(one.conductor))),
    ...sheet.labels.map((one) => labelElement(one, isOther(one.conductor))),
    "</g>",
    ...(listed.length === 0
      ? []
      : [labelElement({ x: MARGIN, y: end, width, height: 0, lines: listed, strong: 0 }, "")]),
    "</svg>",
  ].join("\n");
  return { element, height };
}

function lineElement(line: DrawnLine, other: string): string {
  return `<path class="${line.style}${other}" d="${pathOf(line)}"/>`;
}

function haloElement(line: DrawnLine): string {
  return `<path class="around" d="${pathOf(line)}"/>`;
}

const HOP = 4;

/** A path with a half circle wherever the line hops over another one. */
function pathOf({ points, hops = [] }: DrawnLine): string {
  const [start, ...rest] = points;
  if (start === undefined) return "";
  let from = start;
  const parts = rest.map((to) => {
    const own = hops
      .filter(({ x, y }) => from.y === to.y && y === to.y && (x - from.x) * (x - to.x) < 0)
      .sort((a, b) => (a.x - b.x) * Math.sign(to.x - from.x));
    const toRight = to.x > from.x;
    const side = toRight ? 1 : -1;
    const over = own.map(
      ({ x, y }) =>
        `L${round(x - side * HOP)} ${round(y)}a${HOP} ${HOP} 0 0 ${toRight ? 1 : 0} ${side * 2 * HOP} 0`,
    );
    from = to;
    return `${over.join("")}L${round(to.x)} ${round(to.y)}`;
  });
  return `M${round(start.x)} ${round(start.y)}${parts.join("")}`;
}

function outlineElement({ kind, points, part }: DrawnOutline, other: string): string {
  const path = points.map(({ x, y }) => `${round(x)} ${round(y)}`).join("L");
  return `<path class="${kind}${part === undefined ? "" : ` ${part}`}${other}" d="M${path}${kind === "raceway" || part === "edge" ? "" : "Z"}"/>`;
}

function groundElement(x: number, y: number, width: number, other: string): string {
  const strokes = Array.from(
    { length: Math.floor(width / 18) },
    (_, i) => `M${round(x + 12 + i * 18)} ${y}l-6 7`,
  );
  return `<path class="hatch${other}" d="M${x} ${y}h${round(width)}${strokes.join("")}"/>`;
}

const turns: Readonly<Record<DrawnArrow["to"], number>> = { right: 0, down: 90, left: 180, up: 270 };

function arrowElement({ x, y, to }: DrawnArrow, other: string): string {
  return `<path class="arrow${other}" d="M7 0l-12 -5.5v11z" transform="translate(${round(x)} ${round(y)}) rotate(${turns[to]})"/>`;
}

function labelElement(
  { x, y, width, height, lines, strong, isViolation }: DrawnLabel,
  other: string,
): string {
  const spans = lines.map(
    (line, i) =>
      `<tspan x="${round(x)}" y="${round(y + i * LINE_HEIGHT + FONT_SIZE)}"${i < strong ? ' class="strong"' : ""}>${escapeMarkup(line)}</tspan>`,
  );
  const frame =
    isViolation === true
      ? `<rect class="violation" x="${round(x - 4)}" y="${round(y - 1)}" width="${round(Math.min(width + 8, longest(lines) * 7.5 + 8))}" height="${round(height + 3)}"/>`
      : "";
  return `${frame}<text class="label${other}">${spans.join("")}</text>`;
}

function longest(lines: readonly string[]): number {
  return Math.max(...lines.map((line) => [...line].length));
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}
