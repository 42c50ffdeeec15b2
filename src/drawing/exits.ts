import type { Canvas, Stack } from "./canvas.js";
import { say, sayConductor } from "./canvas.js";
import { BESIDE, type Columns } from "./columns.js";
import type { Point } from "./drawing.js";
import type { Link, Marked } from "./group.js";
import { type Port, portOf } from "./ports.js";
import { isThere, nameOf } from "./write.js";

/** A conductor that leaves a place to the right, before it is known in which lane it goes on. */
export interface Exit {
  /** Its corners up to the right of all enclosures, the last one on its row. */
  readonly points: readonly Point[];
  readonly marked: Marked;
  /** Where it goes: an electrode, a common conductor, or a place by its wall. */
  readonly to: string;
  readonly kind: "electrode" | "place" | "electrode-conductor";
  /** Jumpers of the raceway around it. */
  readonly around: readonly Marked[];
}

/** An exit before it has its row. */
export interface Leaving {
  readonly marked: Marked;
  readonly around: readonly Marked[];
  readonly to: string;
  readonly kind: Exit["kind"];
  readonly port: Port;
  /** Whether it is labeled in full at its electrode. */
  readonly isToElectrode: boolean;
}

/** The conductor of a link to an electrode, and those of its raceway. */
export function leavingOf({ conductors, to }: Link): readonly Leaving[] {
  const around = conductors.filter(isAround);
  return conductors
    .filter((one) => !isAround(one) && isThere(one))
    .map((marked, i) => ({
      marked,
      around: i === 0 ? around : [],
      to,
      kind: "electrode",
      isToElectrode: marked.conductor.part !== "tap",
      port: portOf(marked, marked.conductor.from),
    }));
}

export const isAround = ({ conductor }: Marked): boolean =>
  conductor.role === "electrode-raceway-bonding-jumper";

/** Conductors of links to electrodes that are not required, which only a label tells. */
export function sayMissing(canvas: Canvas, stack: Stack, links: readonly Link[]): void {
  for (const { conductors } of links)
    for (const one of conductors)
      if (!isThere(one) && !(isAround(one) && conductors.some((other) => other !== one && isThere(other))))
        sayConductor(canvas, stack, one);
}

/** From where on a place exits start: the ends of its bars, and its right wall. */
export interface ExitStarts {
  readonly grounded: Point | undefined;
  readonly grounding: Point | undefined;
  /** Whether the grounded conductor has a bar, at which each exit has a place of its own. */
  readonly isBar: boolean;
}

const STEP = 8;

/** Gives every exit of a place a row below `y`, its label above the row; gives the lower end. */
export function drawExits(
  canvas: Canvas,
  columns: Columns,
  leaving: readonly Leaving[],
  starts: ExitStarts,
  y: number,
  exits: Exit[],
  links: readonly Link[] = [],
): number {
  const of = (port: Port): readonly Leaving[] =>
    leaving.filter(
      (one) =>
        (starts[one.port === "metal" ? "grounded" : one.port] === undefined ? "metal" : one.port) === port,
    );
  const grounding = of("grounding");
  const grounded = of("grounded");
  const metal = leaving.filter((one) => !grounding.includes(one) && !grounded.includes(one));
  let row = y;
  const x = columns.grounding + BESIDE + (grounding.length > 0 ? 4 + STEP * grounding.length : 0);
  const stack: Stack = { x, width: columns.right - BESIDE - x, y: row };
  sayMissing(canvas, stack, links);
  row = stack.y;
  const rowOf = (one: Leaving): number => {
    stack.y = row + 4;
    if (one.isToElectrode)
      say(canvas, stack, `${nameOf(one.marked)} to ${one.to}`, { conductor: one.marked.conductor.id });
    else sayConductor(canvas, stack, one.marked);
    if (one.kind !== "electrode") say(canvas, stack, `to ${one.to}`);
    row = stack.y + 6;
    return row;
  };
  const leave = ({ marked, around, to, kind }: Leaving, points: readonly Point[]): void => {
    exits.push({ points, marked, around, to, kind });
  };
  const risers = (list: readonly Leaving[], start: Point | undefined, isBar: boolean): void =>
    list.forEach((one, i) => {
      if (start === undefined) return;
      const x = isBar ? start.x + 4 + STEP * (list.length - i) : start.x;
      const end = { x, y: rowOf(one) };
      leave(one, isBar ? [{ x, y: start.y }, end] : [end]);
    });
  risers(grounding, starts.grounding, true);
  risers(grounded, starts.grounded, starts.isBar);
  for (const one of metal) leave(one, [{ x: columns.right, y: rowOf(one) }]);
  return row;
}
