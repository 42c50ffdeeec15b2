import {
  type Canvas,
  conductorLine,
  line,
  rectangle,
  type Stack,
  say,
  sayConductor,
  symbol,
} from "./canvas.js";
import { BESIDE, type Columns } from "./columns.js";
import type { Link } from "./group.js";
import type { End } from "./lanes.js";
import { type Port, portOf } from "./ports.js";
import type { Leaf } from "./tree.js";
import { LINE_HEIGHT } from "./wrap.js";
import { isThere } from "./write.js";

/** The ports at which what leads to a leaf starts. */
export function leafStarts(link: Leaf["link"]): readonly End[] {
  return [
    ...(link.context === undefined ? [] : ["ungrounded" as const]),
    ...link.conductors.filter(isThere).map((one) => startPort(one)),
  ];
}

/** Metal parts are listed from the part to what it is bonded to. */
function startPort(one: Leaf["link"]["conductors"][number]): Port {
  const { from, to, result } = one.conductor;
  return portOf(one, result.purpose === "equalizing" ? to : from);
}

/** A metal part, or what is drawn elsewhere: a row for each conductor, from the trunk to a small outline. */
export function drawLeaf(
  canvas: Canvas,
  columns: Columns,
  { link, place, isElsewhere, jumpers }: Leaf,
  top: number,
  laneX: (port: End) => number,
  left: number,
): { readonly bottom: number; readonly rows: ReadonlyMap<End, number> } {
  const box = left + 40;
  const stack: Stack = { x: box + 36, width: columns.right - BESIDE - box - 36, y: top + 2 };
  say(canvas, stack, place.name, { isStrong: true, forbidden: place.forbidden });
  const details = [...place.details, ...(isElsewhere ? ["drawn elsewhere"] : [])];
  say(canvas, stack, details.join(", "));
  const rows = new Map<End, number>();
  const rowOf = (text: () => void): number => {
    const row = stack.y + LINE_HEIGHT / 2;
    text();
    return row;
  };
  if (link.context !== undefined) {
    const context = link.context;
    const y = rowOf(() => say(canvas, stack, context));
    line(canvas, "context", [
      { x: laneX("ungrounded"), y },
      { x: box, y },
    ]);
    rows.set("ungrounded", y);
  }
  for (const one of link.conductors) {
    const y = rowOf(() => sayConductor(canvas, stack, one));
    if (!isThere(one)) continue;
    const port = startPort(one);
    conductorLine(
      canvas,
      one,
      [
        { x: laneX(port), y },
        { x: box, y },
      ],
      "to-start",
    );
    if (port === "metal") canvas.joints.push({ x: laneX(port), y });
    rows.set(port, Math.max(rows.get(port) ?? 0, y));
  }
  say(canvas, stack, "", { forbidden: link.forbidden });
  const bottom = stack.y + 4;
  rectangle(canvas, isElsewhere ? "elsewhere" : "part", place.name, [box, top + 2, box + 30, bottom - 4]);
  const kind = place.symbol;
  if (!isElsewhere && (kind === "pipe" || kind === "termination" || kind === "frame"))
    symbol(canvas, kind, box + 15, top + 5);
  return { bottom: drawAcross(canvas, columns, jumpers, box, bottom), rows };
}

/** Jumpers around what is likely to be taken out of a metal part, below it. */
function drawAcross(
  canvas: Canvas,
  columns: Columns,
  jumpers: readonly Link[],
  left: number,
  top: number,
): number {
  let y = top;
  for (const { to, conductors } of jumpers) {
    for (const one of conductors) {
      const stack: Stack = { x: left + 36, width: columns.right - BESIDE - left - 36, y: y + 2 };
      say(canvas, stack, to, { isStrong: true });
      sayConductor(canvas, stack, one);
      const start = { x: left + 15, y: y - 4 };
      if (isThere(one)) conductorLine(canvas, one, [start, { x: start.x, y: y + 10 }], undefined);
      const bottom = stack.y + 4;
      rectangle(canvas, "part", to, [left, y + 10, left + 30, bottom - 4]);
      y = bottom;
    }
  }
  return y;
}
