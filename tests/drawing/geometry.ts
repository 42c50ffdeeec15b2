import type {
  DrawnLabel,
  DrawnLine,
  DrawnOutline,
  Point,
  Rectangle,
  Sheet,
} from "../../src/drawing/drawing.js";
import { GROUNDED_LEADS, SYMBOL_SIZES } from "../../src/drawing/drawing.js";

/** A straight part of a line or an outline. */
export interface Segment {
  readonly a: Point;
  readonly b: Point;
}

export function overlap(a: Rectangle, b: Rectangle): boolean {
  return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
}

export function segmentsOf(points: readonly Point[], isClosed = false): readonly Segment[] {
  const all = isClosed ? [...points, ...points.slice(0, 1)] : points;
  return all.slice(1).map((b, i) => ({ a: all[i] ?? b, b }));
}

const isClosed = ({ kind, part }: DrawnOutline): boolean => kind !== "raceway" && part !== "edge";

function box({ a, b }: Segment): Rectangle {
  const [x, y] = [Math.min(a.x, b.x), Math.min(a.y, b.y)];
  return { x, y, width: Math.max(Math.abs(a.x - b.x), 0.1), height: Math.max(Math.abs(a.y - b.y), 0.1) };
}

function labelName({ lines }: DrawnLabel): string {
  return lines.join(" ");
}

/** Pairs of labels of a sheet that overlap, by their text, and labels on a symbol. */
export function overlapping({ labels, symbols }: Sheet): readonly string[] {
  const sorted = [...labels].sort((one, other) => one.y - other.y);
  const pairs = sorted.flatMap((one, i) => {
    const found: string[] = [];
    for (const other of sorted.slice(i + 1)) {
      if (other.y >= one.y + one.height) break;
      if (overlap(one, other)) found.push(`${labelName(one)} / ${labelName(other)}`);
    }
    return found;
  });
  const onSymbols = symbols.flatMap(({ kind, x, y }) => {
    const [width, height] = SYMBOL_SIZES[kind];
    return labels
      .filter((label) => overlap(label, { x, y, width, height }))
      .map((label) => `${labelName(label)} / symbol ${kind}`);
  });
  return [...pairs, ...onSymbols];
}

/** Labels that a line, an outline or an arrow runs through, by their text. */
export function crossed({ labels, lines, outlines, arrows }: Sheet): readonly string[] {
  const through = [
    ...lines.flatMap(({ points }) => segmentsOf(points)),
    ...outlines.filter(({ part }) => part !== "area").flatMap((one) => segmentsOf(one.points, isClosed(one))),
  ].map(box);
  const tips = arrows.map(({ x, y }) => ({ x: x - 5, y: y - 5, width: 10, height: 10 }));
  return labels.filter((label) => [...through, ...tips].some((one) => overlap(label, one))).map(labelName);
}

/** Conductors that lie on one another, so that they look like one. */
export function lyingOn({ lines }: Sheet): readonly string[] {
  const segments = lines.flatMap(({ points, conductor, style }, line) =>
    segmentsOf(points).map((one) => ({ ...one, line, name: conductor ?? style })),
  );
  return segments.flatMap((one, i) =>
    segments.slice(i + 1).flatMap((other) => {
      if (one.line === other.line) return [];
      const isAcross = one.a.y === one.b.y && other.a.y === other.b.y && one.a.y === other.a.y;
      const isDown = one.a.x === one.b.x && other.a.x === other.b.x && one.a.x === other.a.x;
      const [p, q] = isAcross
        ? [range(one.a.x, one.b.x), range(other.a.x, other.b.x)]
        : [range(one.a.y, one.b.y), range(other.a.y, other.b.y)];
      const shared = Math.min(p[1], q[1]) - Math.max(p[0], q[0]);
      return (isAcross || isDown) && shared > 0.5 ? [`${one.name} on ${other.name}`] : [];
    }),
  );
}

function range(one: number, other: number): readonly [number, number] {
  return one < other ? [one, other] : [other, one];
}

/** What sticks out of a sheet. */
export function outside({ width, height, labels, lines, outlines }: Sheet): readonly string[] {
  const isIn = ({ x, y }: Point): boolean => x >= 0 && y >= 0 && x <= width && y <= height;
  return [
    ...labels
      .filter(({ x, y, width: w, height: h }) => !isIn({ x, y }) || !isIn({ x: x + w, y: y + h }))
      .map(labelName),
    ...lines.filter(({ points }) => !points.every(isIn)).map(({ conductor, style }) => conductor ?? style),
    ...outlines.filter(({ points }) => !points.every(isIn)).map(({ of }) => of),
  ];
}

/** Whether a point lies on a segment. */
export function isOn({ x, y }: Point, { a, b }: Segment): boolean {
  const [left, right] = range(a.x, b.x);
  const [top, bottom] = range(a.y, b.y);
  return x >= left && x <= right && y >= top && y <= bottom && (a.x === b.x || a.y === b.y);
}

/** Lines that are the way of a fault: of metal, and of the conductors that carry it. */
const carrying: readonly DrawnLine["style"][] = ["fault-path", "equalizing", "load", "bar", "bond"];

/** What a finger follows on a sheet: lines, outlines of metal and symbols of windings, each with whatever one of its ends lies on. */
export interface Tracing {
  /** Names of outlines and conductors by their numbers. */
  readonly names: readonly string[];
  readonly metal: readonly number[];
  readonly sources: readonly number[];
  /** Everything that is reached from one of them. */
  readonly from: (start: number) => ReadonlySet<number>;
}

/** Where a finger can go: from one line to another only where one of them ends on the other. */
export function traced(sheet: Sheet, styles: readonly DrawnLine["style"][] = carrying): Tracing {
  const lines = sheet.lines.filter(({ style }) => styles.includes(style));
  const outlines = sheet.outlines.filter(({ kind }) => kind !== "assembly");
  const nodes = [
    ...lines.map(({ points, conductor, style }) => ({
      name: conductor ?? style,
      segments: segmentsOf(points),
      ends: [points[0], points.at(-1)],
    })),
    ...outlines.map((one) => ({
      name: `${one.kind} ${one.of}`,
      segments: segmentsOf(one.points, isClosed(one)),
      ends: one.kind === "raceway" ? [one.points[0], one.points.at(-1)] : [],
    })),
  ];
  const beside: number[][] = nodes.map(() => []);
  nodes.forEach((one, i) => {
    for (const end of one.ends) {
      nodes.forEach((other, j) => {
        if (end === undefined || i === j || !other.segments.some((segment) => isOn(end, segment))) return;
        beside[i]?.push(j);
        beside[j]?.push(i);
      });
    }
  });
  // What is drawn again elsewhere on a sheet is the same metal.
  outlines.forEach(({ kind, of }, i) => {
    const first = outlines.findIndex(
      (one) => one.of === of && (one.kind === "part" || one.kind === "enclosure"),
    );
    if (kind !== "elsewhere" || first < 0) return;
    beside[lines.length + i]?.push(lines.length + first);
    beside[lines.length + first]?.push(lines.length + i);
  });
  const leads = sheet.symbols.flatMap(({ kind, x, y }) =>
    kind in GROUNDED_LEADS
      ? [{ x: x + GROUNDED_LEADS[kind as keyof typeof GROUNDED_LEADS], y: y + SYMBOL_SIZES[kind][1] / 2 }]
      : [],
  );
  const sources = nodes.flatMap(({ ends: [start] }, i) =>
    leads.some(({ x, y }) => start?.x === x && start.y === y) ? [i] : [],
  );
  return {
    names: nodes.map(({ name }) => name),
    metal: nodes.flatMap((_, i) => (i < lines.length ? [] : [i])),
    sources,
    from: (start) => {
      const reached = new Set([start]);
      for (const one of reached) for (const next of beside[one] ?? []) reached.add(next);
      return reached;
    },
  };
}

/** Enclosures, raceways and metal parts of a sheet from which no drawn way leads to the grounded lead of its windings, by name. */
export function withoutWayBack(sheet: Sheet): readonly string[] {
  const { names, metal, sources, from } = traced(sheet);
  const reached = new Set(sources.flatMap((one) => [...from(one)]));
  return metal.filter((one) => !reached.has(one)).map((one) => names[one] ?? "");
}
