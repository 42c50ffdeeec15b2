import type { Canvas, Stack } from "./canvas.js";
import { conductorLine, line, say, sayConductor } from "./canvas.js";
import { BESIDE, type Columns, LANE } from "./columns.js";
import type { Point } from "./drawing.js";
import type { Link } from "./group.js";
import { type Arriving, type Column, type End, type Lane, lanesOf } from "./lanes.js";
import { columnOf } from "./ports.js";
import { drawFittings, drawRaceway, fittingsOf, type Walls, wallsOf } from "./raceway.js";
import { isThere } from "./write.js";

/** Where lines leave what a run starts from. */
export interface Outlet {
  /** The corners of a line up to its column; beside a trunk only its x counts. */
  readonly from: (port: End, x: number) => readonly Point[];
  /** The right wall of a trunk, from which each line needs a row to reach its column; absent where lines come straight down. */
  readonly trunk?: number;
}

/** What is drawn on the way to a place before anything else, below a height; gives the lower end. */
export type DrawExits = (y: number, stack: Stack, isGrounded: boolean) => number;

/** Draws the run to a place from `top` down to the upper wall of it: rows to the columns, raceway, labels. */
export function drawRun(
  canvas: Canvas,
  columns: Columns,
  link: Link,
  outlet: Outlet,
  top: number,
  name: string,
  exitsAt: DrawExits,
): { readonly bottom: number; readonly arriving: readonly Arriving[] } {
  const lanes = lanesOf(link, columns);
  const fittings = fittingsOf(link);
  const walls = wallsOf(columns, link, lanes, outlet.trunk, top);
  const arriving = startLanes(canvas, lanes, outlet, top);
  const y = top + (outlet.trunk === undefined ? 0 : LANE * lanes.length) + 6;
  const stacks = stacksOf(columns, lanes, walls, y);
  const below = exitsAt(
    y,
    stacks.grounding,
    lanes.some(({ column }) => column === "grounded"),
  );
  for (const stack of Object.values(stacks)) stack.y = below;

  say(canvas, stacks.ungrounded, link.context ?? "", { forbidden: link.forbidden });
  const labeled = link.conductors.filter((one) => !fittings.includes(one));
  for (const one of labeled.filter(isThere)) sayConductor(canvas, stacks[columnOf(one)], one);
  for (const one of labeled.filter((other) => !isThere(other)))
    sayConductor(canvas, stacks[columnOf(one)], one);
  const x = Math.max((walls?.right ?? 0) + 22, stacks.grounding.x - BESIDE);
  const beside: Stack = { x, width: columns.right - BESIDE - x, y: stacks.grounding.y };
  for (const one of fittings) sayConductor(canvas, beside, one);
  const least = lanes.length === 0 ? 0 : 22;
  const bottom = Math.max(y + least, beside.y, ...Object.values(stacks).map((one) => one.y)) + 6;
  if (walls !== undefined) {
    drawRaceway(canvas, walls, link.id ?? name, bottom, fittings.length > 0);
    drawFittings(canvas, walls, fittings, bottom);
  }
  return { bottom, arriving };
}

/** The rightmost line takes the uppermost row, so that no row crosses a line that already came down. */
function startLanes(
  canvas: Canvas,
  lanes: readonly Lane[],
  { from, trunk }: Outlet,
  top: number,
): readonly Arriving[] {
  return lanes.map((lane, i) => {
    const start = from(lane.start, lane.x);
    if (trunk === undefined) return { ...lane, points: start };
    const y = top + LANE * (lanes.length - i);
    const first = { x: start[0]?.x ?? lane.x, y };
    if (lane.start === "metal") canvas.joints.push(first);
    return { ...lane, points: [first, { x: lane.x, y }] };
  });
}

/** The room for labels right of each column. */
function stacksOf(
  columns: Columns,
  lanes: readonly Lane[],
  walls: Walls | undefined,
  y: number,
): Readonly<Record<Column, Stack>> {
  const { grounded, grounding, raceway, right } = columns;
  const after = (column: Column): number =>
    Math.max(columns[column], ...lanes.filter((one) => one.column === column).map(({ x }) => x)) + BESIDE;
  const stack = (x: number, end: number): Stack => ({ x, width: end - x, y });
  const end = walls !== undefined && walls.right > grounding ? walls.right : right;
  return {
    ungrounded: stack(after("ungrounded"), grounded - BESIDE),
    grounded: stack(after("grounded"), raceway - 6),
    grounding: stack(after("grounding"), end - BESIDE),
  };
}

/** Draws a line on its way down to its end at a height. */
export function arrive(canvas: Canvas, { points, marked, column, x, start }: Arriving, y: number): void {
  const all = [...points, { x, y }];
  if (marked !== undefined) conductorLine(canvas, marked, all, "to-start", all.length - 2);
  else line(canvas, column === "ungrounded" ? "context" : start === "metal" ? "bond" : "bar", all);
}
