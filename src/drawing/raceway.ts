import { type Canvas, conductorLine } from "./canvas.js";
import { type Columns, LANE, MARGIN } from "./columns.js";
import type { Link, Marked } from "./group.js";
import type { Lane } from "./lanes.js";
import { isAtFitting } from "./ports.js";
import { isThere } from "./write.js";

/** The walls of a metal raceway: where they leave the trunk or the place above, and where they come down. */
export interface Walls {
  /** The right wall of the trunk that the raceway leaves; absent where it comes straight down. */
  readonly from: number | undefined;
  readonly left: number;
  readonly right: number;
  /** Heights at which the outer and the inner wall start. */
  readonly outer: number;
  readonly inner: number;
}

/** How far the wall of a raceway ends above the place, where a jumper bonds its fitting. */
const GAP = 5;

export const fittingsOf = ({ conductors }: Link): readonly Marked[] =>
  conductors.filter((one) => isThere(one) && isAtFitting(one));

/** The walls around the conductors of a run; `undefined` of a run that is in no metal. */
export function wallsOf(
  columns: Columns,
  link: Link,
  lanes: readonly Lane[],
  trunk: number | undefined,
  top: number,
): Walls | undefined {
  const fittings = fittingsOf(link);
  if (link.isInMetal !== true && fittings.length === 0) return undefined;
  const isWide = fittings.length === 0 && lanes.some(({ column }) => column === "grounding");
  return {
    from: trunk,
    left: columns.ungrounded - 12,
    right: isWide ? columns.right - 2 * MARGIN : columns.raceway,
    outer: trunk === undefined ? top : top + 3,
    inner: trunk === undefined ? top : top + LANE * lanes.length + 4,
  };
}

/** Draws both walls down to the place, or to the fitting that a jumper bonds. */
export function drawRaceway(
  canvas: Canvas,
  walls: Walls,
  of: string,
  bottom: number,
  hasJumper: boolean,
): void {
  const { from, left, right, outer, inner } = walls;
  const end = hasJumper ? bottom - GAP : bottom;
  const wall = (x: number, y: number): void => {
    const start = from === undefined ? [] : [{ x: from, y }];
    canvas.outlines.push({ kind: "raceway", of, points: [...start, { x, y }, { x, y: end }] });
  };
  wall(left, inner);
  wall(right, outer);
}

/** The short jumpers at the fitting of a raceway, from its wall to the place below. */
export function drawFittings(
  canvas: Canvas,
  { right }: Walls,
  fittings: readonly Marked[],
  bottom: number,
): void {
  fittings.forEach((one, i) => {
    const dot = { x: right, y: bottom - 15 - 7 * i };
    const turn = right + 10 + 5 * i;
    conductorLine(canvas, one, [dot, { x: turn, y: dot.y }, { x: turn, y: bottom }], undefined);
    canvas.joints.push(dot, { x: turn, y: bottom });
  });
}
