import { drawBand } from "./band.js";
import type { Canvas, Stack } from "./canvas.js";
import { line, rectangle, say } from "./canvas.js";
import { BAR, type Columns, INDENT, LANE, TRUNK } from "./columns.js";
import { drawExits, type Exit, leavingOf, sayMissing } from "./exits.js";
import { drawFold, foldsOf } from "./folds.js";
import type { Band, Frame } from "./frame.js";
import { drawRun, type Outlet } from "./incoming.js";
import { type Arriving, type End, startsOf } from "./lanes.js";
import { drawLeaf, leafStarts } from "./leaf.js";
import type { Branch } from "./tree.js";

/** What is drawn on, and what is gathered while it is drawn. */
export interface Sketch {
  readonly canvas: Canvas;
  readonly columns: Columns;
  readonly exits: Exit[];
  /** The upper walls of the places, by their keys. */
  readonly tops: Map<string, number>;
}

/** Lanes of a trunk from its left wall, in the order in which none of them crosses another where they leave the place. */
const lanes: readonly End[] = ["ungrounded", "grounded", "grounding"];

/** Draws a place and all that hangs on it; gives the lower end. */
export function drawBlock(
  sketch: Sketch,
  branch: Branch,
  left: number,
  top: number,
  arriving: readonly Arriving[] = [],
  buses?: Frame["buses"],
): number {
  const { canvas, columns, tops } = sketch;
  const { place, children, leaves } = branch;
  tops.set(place.key, top);
  const hanging = [...children, ...leaves].flatMap(({ link }) => (link === undefined ? [] : [link]));
  const starts = new Set<End>([
    ...hanging.flatMap((link) => startsOf(link, columns)),
    ...leaves.flatMap(({ link }) => leafStarts(link)),
  ]);
  const frame: Frame = { left, top, arriving, starts, ...(buses && { buses }) };
  const band = drawBand(canvas, columns, branch, frame, sketch.exits);
  const kind = place.kind === "elsewhere" ? "elsewhere" : "enclosure";
  const only = children[0];
  if (leaves.length === 0 && children.length <= 1) {
    rectangle(canvas, kind, place.name, [left, top, columns.right, band.bottom]);
    if (only === undefined) return band.bottom;
    const y = {
      ungrounded: band.ungrounded,
      grounded: band.grounded,
      grounding: band.grounding,
      metal: band.bottom,
    };
    const outlet: Outlet = {
      from: (port, x) => turned(port, { x: columnAt(columns, port, x), y: y[port] }, x, band.bottom, canvas),
    };
    return drawChild(sketch, only, left, band.bottom, outlet);
  }
  return drawTrunk(sketch, branch, left, top, band, starts, kind);
}

/** A line from a port straight down, or first across where its column is another one. */
function turned(port: End, start: { x: number; y: number }, x: number, bottom: number, canvas: Canvas) {
  if (port === "metal") canvas.joints.push(start);
  return start.x === x ? [start] : [start, { x: start.x, y: bottom - 3 }, { x, y: bottom - 3 }];
}

/** Several lines of one column start side by side on a bar. */
function columnAt(columns: Columns, port: End, x: number): number {
  return port === "metal" || Math.abs(x - columns[port]) < BAR ? x : columns[port];
}

function drawTrunk(
  sketch: Sketch,
  branch: Branch,
  left: number,
  top: number,
  band: Band,
  starts: ReadonlySet<End>,
  kind: "enclosure" | "elsewhere",
): number {
  const { canvas, columns } = sketch;
  const { place, children, leaves } = branch;
  const right = left + TRUNK;
  const inner = left + INDENT;
  const used = lanes.filter((one) => starts.has(one));
  const laneX = (port: End): number => (port === "metal" ? right : left + LANE * (used.indexOf(port) + 1));
  let out = band.bottom - 4;
  const turns = used.map((port) => {
    out += LANE;
    return { port, y: out };
  });
  const bandBottom = out + 8;
  const outlet: Outlet = {
    trunk: right,
    from: (port) => [{ x: laneX(port), y: 0 }],
  };
  const reached = new Map<End, number>();
  let y = bandBottom + 4;
  const note = (ports: readonly End[], at: number): void => {
    ports.forEach((port, i) => {
      const row = at + LANE * (ports.length - i);
      reached.set(port, Math.max(reached.get(port) ?? 0, row));
    });
  };
  const assembled = children.filter((one) => one.place.assembly !== undefined);
  const isAssembly = assembled.length > 1;
  const rest = isAssembly ? children.filter((one) => !assembled.includes(one)) : children;
  const one = (child: Branch, at: number, buses?: Frame["buses"]): number => {
    const ports = child.link === undefined ? [] : startsOf(child.link, columns);
    note(ports, y);
    return drawChild(sketch, child, at, y, outlet, buses) + 10;
  };
  for (const leaf of leaves) {
    const { bottom, rows } = drawLeaf(canvas, columns, leaf, y, laneX, inner);
    for (const [port, row] of rows) reached.set(port, Math.max(reached.get(port) ?? 0, row));
    y = bottom;
  }
  for (const { drawn, folded } of foldsOf(rest)) {
    y = one(drawn, inner);
    if (folded.length > 0) y = drawFold(canvas, columns, drawn, folded, inner, y) + 8;
  }
  if (isAssembly) {
    const start = y;
    const name: Stack = { x: inner + 34, width: columns.right - inner - 44, y: start + 4 };
    say(canvas, name, assembled[0]?.place.assembly ?? "", { isStrong: true });
    y = name.y + 2;
    const buses = { grounded: inner + LANE, grounding: inner + 2 * LANE };
    const from = canvas.lines.length;
    for (const child of assembled) y = one(child, inner + INDENT - 8, buses);
    drawBuses(canvas, buses, from);
    rectangle(canvas, "assembly", assembled[0]?.place.assembly ?? "", [
      inner,
      start,
      columns.right + 5,
      y - 4,
    ]);
    y += 6;
  }
  const end = Math.max(bandBottom, ...reached.values()) + 6;
  for (const { port, y: turn } of turns) {
    const x = laneX(port);
    const start =
      port === "ungrounded"
        ? { x: columns.ungrounded, y: band.ungrounded }
        : port === "grounded"
          ? { x: columns.grounded, y: band.grounded }
          : { x: columns.grounding, y: band.grounding };
    line(canvas, port === "ungrounded" ? "context" : "bar", [
      start,
      { x: start.x, y: turn },
      { x, y: turn },
      { x, y: Math.max(turn, reached.get(port) ?? turn) },
    ]);
  }
  canvas.outlines.push({
    kind,
    of: place.name,
    points: [
      { x: left, y: top },
      { x: columns.right, y: top },
      { x: columns.right, y: bandBottom },
      { x: right, y: bandBottom },
      { x: right, y: end },
      { x: left, y: end },
    ],
  });
  return Math.max(y - 4, end);
}

/** The buses of an assembly, from the first of its compartments that meets them to the last. */
function drawBuses(
  canvas: Canvas,
  buses: { readonly grounded: number; readonly grounding: number },
  from: number,
): void {
  for (const x of [buses.grounded, buses.grounding]) {
    const rows = canvas.lines.slice(from).flatMap(({ points: [start] }) => (start?.x === x ? [start.y] : []));
    if (rows.length > 1)
      line(canvas, "bar", [
        { x, y: Math.min(...rows) },
        { x, y: Math.max(...rows) },
      ]);
  }
}

function drawChild(
  sketch: Sketch,
  child: Branch,
  left: number,
  top: number,
  outlet: Outlet,
  buses?: Frame["buses"],
): number {
  const { canvas, columns, exits } = sketch;
  canvas.cuts.push({ y: top + 1, depth: left });
  if (child.link === undefined) return drawBlock(sketch, child, left, top, [], buses);
  const ofRun = (y: number, stack: Stack, isGrounded: boolean): number => {
    const leaving = child.exitsOfRun.flatMap(leavingOf).map((one) => ({ ...one, port: "grounded" as const }));
    sayMissing(canvas, stack, child.exitsOfRun);
    const grounded = isGrounded ? { x: columns.grounded, y } : undefined;
    return drawExits(
      canvas,
      columns,
      leaving,
      { grounded, grounding: undefined, isBar: false },
      stack.y,
      exits,
    );
  };
  const { bottom, arriving } = drawRun(canvas, columns, child.link, outlet, top, child.place.name, ofRun);
  return drawBlock(sketch, child, left, bottom, arriving, buses);
}
