import type { Columns } from "./columns.js";
import { LANE } from "./columns.js";
import type { Point } from "./drawing.js";
import type { Link, Marked } from "./group.js";
import { columnOf, isAtFitting, type Port, portOf } from "./ports.js";
import { isThere } from "./write.js";

export type Column = "ungrounded" | "grounded" | "grounding";

/** What a line meets at a place, at either of its ends. */
export type End = Port | "ungrounded";

/** What runs to a place, with its column and the x at which it comes down. */
export interface Lane {
  readonly column: Column;
  readonly x: number;
  readonly start: End;
  readonly end: End;
  /** The conductor that it is; absent of ungrounded conductors, of buses and of what no conductor of the schedule connects. */
  readonly marked?: Marked;
}

/** A line on its way to a place: its corners so far, the last one in its column. */
export interface Arriving extends Lane {
  readonly points: readonly Point[];
}

/** What of a run comes down in a column; a short jumper at a fitting does not. */
export function lanesOf({ conductors, context, shared = [] }: Link, columns: Columns): readonly Lane[] {
  const running = conductors.filter((one) => isThere(one) && !isAtFitting(one));
  const inColumn = (column: "grounded" | "grounding"): readonly Lane[] => [
    ...running
      .filter((one) => columnOf(one) === column)
      .map((marked, i) => ({
        column,
        x: columns[column] + i * LANE,
        start: portOf(marked, marked.conductor.from),
        end: portOf(marked, marked.conductor.to),
        marked,
      })),
    ...(shared.includes(column) ? [{ column, x: columns[column], start: column, end: column }] : []),
  ];
  const ungrounded: Lane = {
    column: "ungrounded",
    x: columns.ungrounded,
    start: "ungrounded",
    end: "ungrounded",
  };
  const metal: Lane = { column: "grounding", x: columns.grounding, start: "metal", end: "metal" };
  return [
    ...(context === undefined ? [] : [ungrounded]),
    ...inColumn("grounded"),
    ...inColumn("grounding"),
    ...(shared.includes("metal") ? [metal] : []),
  ];
}

/** The ports of what a run starts from at which its conductors start. */
export function startsOf(link: Link, columns: Columns): readonly End[] {
  return lanesOf(link, columns).map(({ start }) => start);
}
