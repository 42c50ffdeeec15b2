import type {
  DrawnArrow,
  DrawnGround,
  DrawnLabel,
  DrawnLine,
  DrawnOutline,
  DrawnSymbol,
  LineStyle,
  Point,
  SymbolKind,
} from "./drawing.js";
import { SYMBOL_SIZES } from "./drawing.js";
import type { Marked } from "./group.js";
import { LINE_HEIGHT, wrap } from "./wrap.js";
import { labelOf } from "./write.js";

/** The shapes of a sheet while it is drawn. */
export interface Canvas {
  readonly outlines: DrawnOutline[];
  readonly lines: DrawnLine[];
  readonly joints: Point[];
  readonly arrows: DrawnArrow[];
  readonly symbols: DrawnSymbol[];
  readonly grounds: DrawnGround[];
  readonly labels: DrawnLabel[];
  readonly conductors: Set<string>;
  /** Where the sheet may be divided. */
  readonly cuts: Cut[];
}

/** A height at which a sheet may be divided, the better the less deep it is in the tree. */
export interface Cut {
  readonly y: number;
  readonly depth: number;
}

export function newCanvas(): Canvas {
  return {
    outlines: [],
    lines: [],
    joints: [],
    arrows: [],
    symbols: [],
    grounds: [],
    labels: [],
    conductors: new Set(),
    cuts: [],
  };
}

/** A line; what is no line, because its ends are one, is left out. */
export function line(canvas: Canvas, style: LineStyle, points: readonly Point[], conductor?: string): void {
  const corners = points.filter(({ x, y }, i) => x !== points[i - 1]?.x || y !== points[i - 1]?.y);
  if (corners.length < 2) return;
  canvas.lines.push({ style, points: corners, ...(conductor !== undefined && { conductor }) });
  if (conductor !== undefined) canvas.conductors.add(conductor);
}

/** A horizontal line. */
export function across(canvas: Canvas, style: LineStyle, y: number, from: number, to: number): void {
  line(canvas, style, [
    { x: from, y },
    { x: to, y },
  ]);
}

/** A vertical line. */
export function down(canvas: Canvas, style: LineStyle, x: number, from: number, to: number): void {
  line(canvas, style, [
    { x, y: from },
    { x, y: to },
  ]);
}

/** A line of a conductor, with an arrow for the way back of a fault on its part from the corner with this number. */
export function conductorLine(
  canvas: Canvas,
  { conductor }: Marked,
  points: readonly Point[],
  arrow: "to-start" | "to-end" | undefined,
  part = 0,
): void {
  const { id, result } = conductor;
  line(canvas, result.purpose, points, id);
  const [a, b] = [points[part], points[part + 1]];
  const carries = result.purpose === "fault-path" || result.purpose === "equalizing";
  if (arrow === undefined || a === undefined || b === undefined || !carries) return;
  const [from, to] = arrow === "to-start" ? [b, a] : [a, b];
  const length = Math.abs(a.x - b.x) + Math.abs(a.y - b.y);
  if (length < 12) return;
  const direction = from.x === to.x ? (from.y > to.y ? "up" : "down") : from.x > to.x ? "left" : "right";
  canvas.arrows.push({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2, to: direction, conductor: id });
}

export function rectangle(
  canvas: Canvas,
  kind: DrawnOutline["kind"],
  of: string,
  [left, top, right, bottom]: readonly [number, number, number, number],
): void {
  const points = [
    { x: left, y: top },
    { x: right, y: top },
    { x: right, y: bottom },
    { x: left, y: bottom },
  ];
  canvas.outlines.push({ kind, points, of });
}

/** A symbol, by the middle of its upper edge. */
export function symbol(canvas: Canvas, kind: SymbolKind, middle: number, y: number): void {
  canvas.symbols.push({ kind, x: middle - SYMBOL_SIZES[kind][0] / 2, y });
}

/** What a label says beside its text. */
interface Said {
  readonly isStrong?: boolean;
  readonly conductor?: string;
  readonly forbidden?: string | undefined;
}

/** A column of labels, one below the other. */
export interface Stack {
  readonly x: number;
  readonly width: number;
  /** The lower end of what it holds. */
  y: number;
}

/** Adds a label below the others of a column. */
export function say(
  canvas: Canvas,
  stack: Stack,
  text: string,
  { isStrong, conductor, forbidden }: Said = {},
): void {
  const lines = wrap(text, stack.width);
  if (lines.length > 0) {
    canvas.labels.push({
      x: stack.x,
      y: stack.y,
      width: stack.width,
      height: lines.length * LINE_HEIGHT,
      lines,
      strong: isStrong === true ? lines.length : 0,
      ...(conductor !== undefined && { conductor }),
    });
    stack.y += lines.length * LINE_HEIGHT + 1;
  }
  if (conductor !== undefined) canvas.conductors.add(conductor);
  if (forbidden === undefined) return;
  const marks = wrap(`not permitted: ${forbidden}`, stack.width - 8);
  const height = marks.length * LINE_HEIGHT;
  canvas.labels.push({
    x: stack.x + 4,
    y: stack.y + 2,
    width: stack.width - 8,
    height,
    lines: marks,
    strong: 0,
    isViolation: true,
  });
  stack.y += height + 7;
}

/** Adds the label of a conductor, with its mark and the violations that it has a part in. */
export function sayConductor(canvas: Canvas, stack: Stack, marked: Marked): void {
  const { conductor, forbidden } = marked;
  say(canvas, stack, labelOf(marked), { conductor: conductor.id, forbidden });
}
