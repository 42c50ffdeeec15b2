import type { DrawnLine, Point } from "./drawing.js";

interface Part {
  readonly line: number;
  readonly a: Point;
  readonly b: Point;
}

const between = (value: number, one: number, other: number): boolean =>
  value > Math.min(one, other) && value < Math.max(one, other);

/** Sorted by where they are, so that a line is only held against those that it can meet. */
function partsOf(lines: readonly DrawnLine[]): {
  readonly across: readonly Part[];
  readonly down: readonly Part[];
} {
  const parts = lines.flatMap(({ points }, line) =>
    points.slice(1).map((b, i): Part => ({ line, a: points[i] ?? b, b })),
  );
  return {
    across: parts.filter(({ a, b }) => a.y === b.y),
    down: parts.filter(({ a, b }) => a.x === b.x && a.y !== b.y).sort((one, other) => one.a.x - other.a.x),
  };
}

/** Where lines cross without being connected, the horizontal one hops; where one ends on another, a dot says that they are connected. */
export function joined(
  lines: readonly DrawnLine[],
  joints: readonly Point[],
): { readonly lines: readonly DrawnLine[]; readonly joints: readonly Point[] } {
  const { across, down } = partsOf(lines);
  const hops = new Map<number, Point[]>();
  for (const { line, a, b } of across) {
    for (let i = firstFrom(down, Math.min(a.x, b.x)); i < down.length; i++) {
      const other = down[i];
      if (other === undefined || other.a.x >= Math.max(a.x, b.x)) break;
      if (other.line === line || !between(other.a.x, a.x, b.x) || !between(a.y, other.a.y, other.b.y))
        continue;
      const same = hops.get(line) ?? [];
      same.push({ x: other.a.x, y: a.y });
      hops.set(line, same);
    }
  }
  const ends = lines.flatMap(({ points }, line) =>
    [points[0], points.at(-1)].flatMap((at) => (at === undefined ? [] : [{ at, line }])),
  );
  const rows = new Map<number, Part[]>();
  for (const part of across) {
    const same = rows.get(part.a.y);
    if (same === undefined) rows.set(part.a.y, [part]);
    else same.push(part);
  }
  const dots = ends
    .filter(({ at, line }) => {
      const meetsRow = (rows.get(at.y) ?? []).some(
        (one) => one.line !== line && between(at.x, one.a.x, one.b.x),
      );
      if (meetsRow) return true;
      for (let i = firstFrom(down, at.x); i < down.length; i++) {
        const one = down[i];
        if (one === undefined || one.a.x > at.x) return false;
        if (one.line !== line && one.a.x === at.x && between(at.y, one.a.y, one.b.y)) return true;
      }
      return false;
    })
    .map(({ at }) => at);
  const all = new Map([...joints, ...dots].map((one) => [`${one.x} ${one.y}`, one]));
  return {
    lines: lines.map((one, i) => {
      const own = hops.get(i);
      return own === undefined ? one : { ...one, hops: own };
    }),
    joints: [...all.values()],
  };
}

/** The number of the first part at or right of a position. */
function firstFrom(down: readonly Part[], x: number): number {
  let [low, high] = [0, down.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((down[middle]?.a.x ?? 0) < x) low = middle + 1;
    else high = middle;
  }
  return low;
}
