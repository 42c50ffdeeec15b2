import type { Cut } from "./canvas.js";
import type { DrawnLine, DrawnOutline, Point, Sheet } from "./drawing.js";

/** A sheet with the heights at which it may be divided. */
export type WholeSheet = Sheet & { readonly cuts: readonly Cut[] };

/** What a page of letter paper holds with text of 7 points, below a title. A4 holds more. */
export const MOST_HEIGHT = 1080;
/** What the key takes of the first page. */
const KEY_HEIGHT = 140;
/** What the list of violations takes, for each of them. */
const LIST_HEIGHT = 34;

/** Divides a sheet that is too high for a page; lines go on at the same place of the next part. */
export function partsOf({ cuts, ...sheet }: WholeSheet, hasKey = false): readonly Sheet[] {
  const first = MOST_HEIGHT - (hasKey ? KEY_HEIGHT : 0) - LIST_HEIGHT * (sheet.violations?.length ?? 0);
  const least = Math.max(first, MOST_HEIGHT / 2);
  if (sheet.height <= least) return [sheet];
  const at = chosen(cuts, sheet.height, least);
  const tops = [0, ...at];
  const spans = spansOf(sheet);
  return tops.map((top, i): Sheet => {
    const bottom = tops[i + 1] ?? sheet.height;
    const within = ({ y }: Point): boolean => y >= top && y < bottom;
    const moved = <T extends Point>(list: readonly T[]): readonly T[] =>
      list.filter(within).map((one) => ({ ...one, y: one.y - top }));
    const { violations, description, ...rest } = sheet;
    const labels = moved(sheet.labels);
    const lines = meeting(sheet.lines, spans, top, bottom).flatMap((one) => cutLine(one, top, bottom));
    const ids = [...labels, ...lines].flatMap(({ conductor }) => conductor ?? []);
    return {
      ...rest,
      title: `${sheet.title} (${i + 1} of ${tops.length})`,
      height: bottom - top,
      outlines: meeting(sheet.outlines, spans, top, bottom).flatMap((one) => cutOutline(one, top, bottom)),
      lines,
      joints: moved(sheet.joints),
      arrows: moved(sheet.arrows),
      symbols: moved(sheet.symbols),
      grounds: moved(sheet.grounds),
      labels,
      conductors: [...new Set(ids)],
      ...(i === 0 && violations && { violations }),
      description: i === 0 ? description : [],
    };
  });
}

interface Shape {
  readonly points: readonly Point[];
}

type Spans = ReadonlyMap<Shape, readonly [number, number]>;

/** From which height to which each shape reaches. */
function spansOf({ lines, outlines }: Sheet): Spans {
  const span = ({ points }: Shape): readonly [number, number] => {
    const ys = points.map(({ y }) => y);
    return [Math.min(...ys), Math.max(...ys)];
  };
  return new Map<Shape, readonly [number, number]>([...lines, ...outlines].map((one) => [one, span(one)]));
}

function meeting<T extends Shape>(
  list: readonly T[],
  spans: Spans,
  top: number,
  bottom: number,
): readonly T[] {
  return list.filter((one) => {
    const [first, last] = spans.get(one) ?? [0, 0];
    return last >= top && first <= bottom;
  });
}

/** How full a page must be before a place for a division is looked for. */
const LEAST_FULL = 0.6;

/** Heights at which pages end: of the places in the last part of a page the one that divides least. */
function chosen(cuts: readonly Cut[], height: number, first: number): readonly number[] {
  const sorted = cuts.filter(({ y }) => y > 0 && y < height).sort((a, b) => a.y - b.y);
  const at: number[] = [];
  let top = 0;
  for (;;) {
    const most = top + (at.length === 0 ? first : MOST_HEIGHT);
    if (height <= most) return at;
    const within = sorted.filter(({ y }) => y > top + 40 && y <= most);
    const late = within.filter(({ y }) => y >= top + LEAST_FULL * (most - top));
    const best = (late.length > 0 ? late : within.slice(-1)).reduce<Cut | undefined>(
      (one, other) => (one === undefined || other.depth <= one.depth ? other : one),
      undefined,
    );
    // What nothing divides stays as high as it is.
    const next = best ?? sorted.find(({ y }) => y > most);
    if (next === undefined) return at;
    at.push(next.y);
    top = next.y;
  }
}

function cutLine({ points, hops, ...line }: DrawnLine, top: number, bottom: number): readonly DrawnLine[] {
  const own = (hops ?? []).filter(({ y }) => y >= top && y < bottom).map(({ x, y }) => ({ x, y: y - top }));
  return cut(points, top, bottom).map((part) => ({
    ...line,
    points: part,
    ...(own.length > 0 && { hops: own.filter((hop) => isOn(hop, part)) }),
  }));
}

function isOn({ x, y }: Point, points: readonly Point[]): boolean {
  return points.some((b, i) => {
    const a = points[i - 1];
    return a !== undefined && a.y === y && b.y === y && x > Math.min(a.x, b.x) && x < Math.max(a.x, b.x);
  });
}

function cutOutline(outline: DrawnOutline, top: number, bottom: number): readonly DrawnOutline[] {
  const { points, kind } = outline;
  const ys = points.map(({ y }) => y);
  if (Math.min(...ys) >= top && Math.max(...ys) <= bottom)
    return [{ ...outline, points: points.map(({ x, y }) => ({ x, y: y - top })) }];
  const closed = kind === "raceway" ? points : [...points, ...points.slice(0, 1)];
  const edges = cut(closed, top, bottom).map(
    (one): DrawnOutline => ({ ...outline, points: one, part: "edge" }),
  );
  const area = areaOf(points, top, bottom);
  return kind === "raceway" || area.length < 3
    ? edges
    : [{ ...outline, points: area, part: "area" }, ...edges];
}

/** What of an area lies between two heights, measured from the upper one. */
function areaOf(points: readonly Point[], top: number, bottom: number): readonly Point[] {
  const within = clipped(clipped(points, top, 1), bottom, -1);
  return within.map(({ x, y }) => ({ x, y: y - top }));
}

/** An area of horizontal and vertical edges on one side of a height: below it with the side 1, above with -1. */
function clipped(points: readonly Point[], height: number, side: 1 | -1): readonly Point[] {
  const isIn = ({ y }: Point): boolean => (y - height) * side >= 0;
  return points.flatMap((b, i) => {
    const a = points.at(i - 1) ?? b;
    if (isIn(a) === isIn(b)) return isIn(b) ? [b] : [];
    const edge = { x: b.x, y: height };
    return isIn(b) ? [edge, b] : [edge];
  });
}

/** The parts of a line between two heights, measured from the upper one. */
function cut(points: readonly Point[], top: number, bottom: number): readonly (readonly Point[])[] {
  const parts: Point[][] = [];
  let part: Point[] = [];
  const end = (): void => {
    if (part.length > 1) parts.push(part);
    part = [];
  };
  points.slice(1).forEach((b, i) => {
    const a = points[i] ?? b;
    const [low, high] = [Math.max(Math.min(a.y, b.y), top), Math.min(Math.max(a.y, b.y), bottom)];
    const isWithin = a.y === b.y ? a.y >= top && a.y < bottom : low < high;
    if (!isWithin) {
      end();
      return;
    }
    const held = ({ x, y }: Point): Point => ({ x, y: Math.min(Math.max(y, top), bottom) - top });
    const [start, stop] = [held(a), held(b)];
    const last = part.at(-1);
    if (last === undefined || last.x !== start.x || last.y !== start.y) {
      end();
      part = [start];
    }
    part.push(stop);
    if (stop.y + top !== b.y) end();
  });
  end();
  return parts;
}
