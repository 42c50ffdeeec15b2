import type { SymbolKind } from "../../drawing/drawing.js";

/** A winding from one point to another, as a row of half circles. */
function winding(x1: number, y1: number, x2: number, y2: number): string {
  const turns = 4;
  const straight = 0.16;
  const part = (1 - 2 * straight) / turns;
  const [dx, dy] = [(x2 - x1) * part, (y2 - y1) * part];
  const radius = round(Math.hypot(dx, dy) / 2);
  const arcs = Array.from({ length: turns }, () => `a${radius} ${radius} 0 0 1 ${round(dx)} ${round(dy)}`);
  const end = `l${round((x2 - x1) * straight)} ${round((y2 - y1) * straight)}`;
  return `<path d="M${x1} ${y1}${end}${arcs.join("")}${end}"/>`;
}

type Winding = "wye" | "delta" | "corner-grounded-delta" | "high-leg-delta" | "single-phase";

const lead = (d: string): string => `<path d="${d}"/>`;

/** The windings of each connection with their ungrounded leads down; made where they are drawn, so that nothing else carries them. */
const windings: Readonly<Record<Winding, () => string>> = {
  wye: () => `${winding(30, 28, 8, 48)}${winding(30, 28, 52, 48)}${winding(30, 28, 30, 2)}${lead("M8 48v8")}`,
  delta: () => `${winding(8, 48, 30, 6)}${winding(30, 6, 52, 48)}${winding(52, 48, 8, 48)}${lead("M8 48v8")}`,
  "corner-grounded-delta": () =>
    `${winding(8, 48, 8, 8)}${winding(8, 8, 52, 28)}${winding(52, 28, 8, 48)}${lead("M8 48v8")}`,
  "high-leg-delta": () =>
    `${winding(8, 28, 48, 4)}${winding(48, 4, 48, 52)}${winding(48, 52, 8, 28)}${lead("M8 28v28")}`,
  "single-phase": () => `${winding(8, 2, 8, 28)}${winding(8, 28, 8, 54)}${lead("M8 54v2")}`,
};

function isWinding(kind: SymbolKind): kind is Winding {
  return kind in windings;
}

/** The shape of a symbol, drawn by ourselves in the manner of IEC 60617 and IEEE 315. */
export function symbolShape(kind: SymbolKind): string {
  return isWinding(kind) ? windings[kind]() : shapes[kind];
}

const shapes: Readonly<Record<Exclude<SymbolKind, Winding>, string>> = {
  generator:
    '<circle cx="12" cy="12" r="11"/><path d="M6 15q3-7 6 0t6 0"/><path d="M10 8.5a3 3 0 1 1 4 -2" transform="translate(0 2)"/>',
  source: '<circle cx="12" cy="12" r="10"/><path d="M12 6v12M6 12h12"/>',
  disconnect: '<path d="M12 0v3M12 19L4 6M12 19v5M8 3h8"/><circle class="dot" cx="12" cy="19" r="1.8"/>',
  meter:
    '<circle class="ground-filled" cx="12" cy="12" r="11"/><path d="M12 0v1M12 23v1M12 15L17 7M6 16h12"/>',
  impedance: '<path d="M12 0v6M12 34v6"/><rect x="6" y="6" width="12" height="28"/>',
  rod: '<path class="thick" d="M12 0v32"/>',
  plate: '<path d="M12 0v20"/><path class="thick" d="M2 20h20"/>',
  concrete:
    '<path d="M12 0v18"/><rect x="1" y="10" width="22" height="18"/><path class="thick" d="M4 19h16"/><path d="M4 14h1M9 24h1M17 14h1M19 25h1"/>',
  ring: '<path d="M12 0v12"/><ellipse class="thick" cx="12" cy="20" rx="11" ry="8"/>',
  "water-pipe": '<path d="M12 0v12M0 12h24M0 20h24M0 12q3 4 0 8M24 12q3 4 0 8"/>',
  electrode: '<path d="M12 0v12M2 12h20M6 17h12M10 22h4"/>',
  frame: '<path d="M4 4h16M4 8h16M4 24h16M4 28h16M10 8v16M14 8v16M4 4v4M20 4v4M4 24v4M20 24v4M12 0v4"/>',
  pipe: '<path d="M0 8h24M0 16h24M0 8q4 4 0 8M24 8q-4 4 0 8"/>',
  termination:
    '<path d="M2 8h20v8H2z"/><circle cx="7" cy="12" r="2"/><circle cx="12" cy="12" r="2"/><circle cx="17" cy="12" r="2"/>',
};

function round(value: number): number {
  return Math.round(value * 100) / 100;
}
