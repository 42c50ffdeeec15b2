import { drawBars, drawToMetal } from "./bars.js";
import type { Canvas, Stack } from "./canvas.js";
import { down, sayConductor, symbol } from "./canvas.js";
import { BESIDE, type Columns } from "./columns.js";
import { SYMBOL_SIZES } from "./drawing.js";
import { drawExits, type Exit, leavingOf } from "./exits.js";
import { type Band, type Frame, PAD } from "./frame.js";
import { arrive } from "./incoming.js";
import type { Arriving } from "./lanes.js";
import type { Port } from "./ports.js";
import { drawTitle, drawUngrounded, drawWindings } from "./title.js";
import type { Branch } from "./tree.js";
import { isBondedByGrounded, isWithBar, sortInside } from "./within.js";

/** Draws what is within the outline of a place, without the outline itself, which may reach further down. */
export function drawBand(
  canvas: Canvas,
  columns: Columns,
  branch: Branch,
  frame: Frame,
  exits: Exit[],
): Band {
  const { place, exits: links } = branch;
  const { top, arriving, starts, buses } = frame;
  const { grounded: n, grounding: g } = columns;
  const comes = (column: Arriving["column"]): boolean => arriving.some((one) => one.column === column);
  const within = sortInside(place.inside, links.flatMap(leavingOf));
  const leaving = within.leaving;
  const meets = (port: Port): boolean =>
    arriving.some((one) => one.end === port) || starts.has(port) || leaving.some((one) => one.port === port);
  const isImpedance = place.symbol === "impedance";
  const hasGrounded =
    meets("grounded") ||
    comes("grounded") ||
    within.toMetal.length > 0 ||
    within.toBar.length > 0 ||
    place.windings?.isGrounded === true;
  const hasBar =
    hasGrounded && !isImpedance && place.windings === undefined && isWithBar(branch, frame, within);
  const hasGrounding = meets("grounding") || within.toBar.length > 0 || buses !== undefined;

  const titleEnd = drawTitle(canvas, columns, branch, frame);
  let ungrounded = drawUngrounded(canvas, columns, branch, frame, titleEnd);
  let y = top + PAD;
  const isWide = !comes("ungrounded") && !comes("grounded");
  if (isWide) y = titleEnd;
  let node = y;
  if (place.windings !== undefined) {
    const drawn = drawWindings(canvas, columns, place.windings, place.symbol === "generator", titleEnd + 4);
    node = drawn.lead;
    ungrounded = drawn.bottom;
    y = Math.max(node + 6, y);
  }
  if (isImpedance) {
    symbol(canvas, "impedance", n, y + 6);
    node = y + 6 + SYMBOL_SIZES.impedance[1];
  }
  const first = node;
  const cell: Stack = { x: n + BESIDE, width: g - 12 - n - BESIDE, y };
  if (isImpedance) cell.y = node;
  for (const one of within.missing) sayConductor(canvas, cell, one);
  const isBonded = isBondedByGrounded(branch) && comes("grounded");
  const rows = drawToMetal(canvas, columns, within.toMetal, isBonded, cell);
  y = cell.y;
  const barY = drawBars(
    canvas,
    columns,
    frame,
    within.toBar,
    { hasBar, hasGrounding },
    y,
    place.bar ?? "N bar",
    buses === undefined ? 0 : titleEnd,
  );
  if (hasBar || hasGrounding) y = barY.bottom;
  node = hasBar
    ? barY.y
    : Math.max(first, ...rows, comes("grounded") && !isImpedance && rows.length === 0 ? y : 0);
  if (hasGrounded && !comes("grounded")) {
    // A grounded conductor without a bar starts from one piece.
    if (rows.length > 0 || place.windings !== undefined)
      down(canvas, "bar", n, Math.min(first, ...(hasBar ? [barY.y] : []), ...rows), node);
  }

  const isThrough = hasGrounded && !hasBar;
  const before = exits.length;
  y = drawExits(
    canvas,
    columns,
    isImpedance ? leaving.map((one) => ({ ...one, port: "grounded" })) : leaving,
    {
      grounded: hasGrounded ? { x: n, y: node } : undefined,
      grounding: hasGrounding ? { x: g, y: barY.y } : undefined,
      isBar: hasBar,
    },
    y,
    exits,
    links,
  );
  const goesOn = Math.max(
    node,
    ...exits.slice(before).flatMap(({ points: [start] }) => (isThrough && start?.x === n ? [start.y] : [])),
  );
  // Where no bar is, what starts from the grounded conductor is spliced to it on one piece.
  if (isThrough && goesOn > node) down(canvas, "bar", n, node, goesOn);
  for (const one of arriving) {
    if (one.column === "ungrounded") continue;
    const end = one.end === "grounding" && hasGrounding ? barY.y : one.end === "metal" ? top : node;
    arrive(canvas, one, isImpedance && one.column === "grounded" ? first - SYMBOL_SIZES.impedance[1] : end);
    if (one.end === "metal") canvas.joints.push({ x: one.x, y: top });
  }
  if (isThrough && starts.has("grounded") && comes("grounded")) canvas.joints.push({ x: n, y: goesOn });
  const bottom = Math.max(y, titleEnd, ungrounded, node) + PAD + 2;
  return { bottom, ungrounded, grounded: goesOn, grounding: barY.y };
}
