import type { Canvas, Stack } from "./canvas.js";
import { across, say, symbol } from "./canvas.js";
import { BESIDE, type Columns } from "./columns.js";
import { GROUNDED_LEADS, SYMBOL_SIZES } from "./drawing.js";
import { type Frame, PAD } from "./frame.js";
import type { Windings } from "./group.js";
import { arrive } from "./incoming.js";
import type { Arriving } from "./lanes.js";
import type { Branch } from "./tree.js";

/** Draws the name of a place and what it is; gives the lower end. */
export function drawTitle(
  canvas: Canvas,
  columns: Columns,
  { place }: Branch,
  { left, top, arriving }: Frame,
): number {
  const { ungrounded: u, grounded: n, grounding: g, right } = columns;
  const comes = (column: Arriving["column"]): boolean => arriving.some((one) => one.column === column);
  const isIn = comes("ungrounded");
  const x = isIn ? u + (place.symbol === undefined ? BESIDE : 18) : left + BESIDE;
  const end = isIn || comes("grounded") ? n - 12 : comes("grounding") ? g - 12 : right - BESIDE;
  const stack: Stack = { x, width: end - x, y: top + PAD };
  say(canvas, stack, place.name, { isStrong: true });
  say(canvas, stack, place.details.join(", "));
  if (place.windings !== undefined) say(canvas, stack, place.windings.words);
  say(canvas, stack, "", { forbidden: place.forbidden });
  return stack.y;
}

/** Ungrounded conductors down to where they go on; gives the height. */
export function drawUngrounded(
  canvas: Canvas,
  columns: Columns,
  { place }: Branch,
  { top, arriving, starts }: Frame,
  titleEnd: number,
): number {
  const { ungrounded: u } = columns;
  const coming = arriving.find((one) => one.column === "ungrounded");
  const kind = place.symbol;
  if (coming === undefined) {
    if (kind === "generator" && place.windings === undefined) {
      symbol(canvas, "generator", u, titleEnd + 2);
      return titleEnd + 26;
    }
    return top + 24;
  }
  const hasSymbol = kind === "disconnect" || kind === "meter" || kind === "generator";
  const at = top + (hasSymbol ? 8 : 14);
  arrive(canvas, coming, at);
  if (hasSymbol && kind !== undefined) symbol(canvas, kind, u, at);
  else if (!starts.has("ungrounded")) canvas.joints.push({ x: u, y: at });
  return hasSymbol ? at + 24 : at;
}

/** Draws the windings of a source with their grounded lead; gives the heights of the lead and of the lower end. */
export function drawWindings(
  canvas: Canvas,
  { ungrounded, grounded }: Columns,
  { kind, isGrounded }: Windings,
  isGenerator: boolean,
  top: number,
): { readonly lead: number; readonly bottom: number } {
  const [width, height] = SYMBOL_SIZES[kind];
  const left = ungrounded - 8;
  symbol(canvas, kind, left + width / 2, top);
  if (isGenerator) symbol(canvas, "generator", ungrounded + 84, top - 2);
  const lead = top + height / 2;
  if (isGrounded) {
    across(canvas, "bond", lead, left + GROUNDED_LEADS[kind], grounded);
    canvas.joints.push({ x: grounded, y: lead });
  }
  return { lead, bottom: top + height };
}
