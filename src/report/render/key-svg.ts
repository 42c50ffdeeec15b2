import type { LineStyle } from "../../drawing/drawing.js";

/** What each kind of line is called in the key. */
const lineNames: Readonly<Record<LineStyle, string>> = {
  "fault-path": "fault current path",
  "electrode-system": "electrode system",
  equalizing: "other bonding",
  load: "load only",
  bar: "bar or terminal",
  bond: "connected without one",
  context: "ungrounded conductors",
};

/** What is shown by more than a line. */
const signs: readonly (readonly [string, string])[] = [
  ['<path class="arrow" d="M22 0l-12 -5v10z" transform="translate(-2 0)"/>', "fault current, way back"],
  ['<path class="context" d="M4 0h24M16 -8v16"/><circle class="dot" cx="16" cy="0" r="3"/>', "connected"],
  ['<path class="context" d="M4 0h8a4 4 0 0 1 8 0h8M16 -8v16"/>', "crossing, not connected"],
  ['<path class="raceway" d="M4 -6h24M4 6h24"/>', "metal raceway"],
  ['<path class="elsewhere" d="M5 -7h22v14h-22z"/>', "drawn elsewhere, or alike"],
];

const words: readonly string[] = [
  "(1) number in the schedule. N bar: neutral bar; phase bar: that of a corner-grounded system; G bar: equipment grounding bar.",
  "MBJ main bonding jumper, SBJ system bonding jumper, SSBJ supply-side bonding jumper, EGC equipment grounding conductor,",
  "EBJ equipment bonding jumper, GEC grounding electrode conductor.",
];

const COLUMN = 219;
const ROW = 20;
const COLUMNS = 4;

/** The key of all sheets of a drawing. */
export function keyElement(top: number): { readonly element: string; readonly height: number } {
  const entries = [
    ...(Object.keys(lineNames) as LineStyle[]).map(
      (style) => [`<path class="${style}" d="M0 0h32"/>`, lineNames[style]] as const,
    ),
    ...signs,
  ];
  const rows = Math.ceil(entries.length / COLUMNS);
  const shown = entries.map(([sign, name], i) => {
    const [x, y] = [14 + (i % COLUMNS) * COLUMN, top + 10 + Math.floor(i / COLUMNS) * ROW];
    return `<g transform="translate(${x} ${y})">${sign}</g><text class="label" x="${x + 42}" y="${y + 4}">${name}</text>`;
  });
  const start = top + rows * ROW + 14;
  const texts = words.map((text, i) => `<text class="label" x="14" y="${start + i * 16}">${text}</text>`);
  return { element: [...shown, ...texts].join("\n"), height: rows * ROW + 8 + words.length * 16 + 8 };
}
