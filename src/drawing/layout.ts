import { InputError } from "../input/input-error.js";
import { conductorWords } from "../installation/conductor-words.js";
import { fault } from "../installation/fault.js";
import type { DrawnBox, DrawnLabel, DrawnLine, DrawnSymbol, LineStyle, Sheet } from "./drawing.js";
import { SYMBOL_SIZE } from "./drawing.js";
import type { Group, Link, Marked, Place } from "./group.js";
import { LINE_HEIGHT, wrap } from "./wrap.js";
import { writeSize } from "./write.js";

const BOX = 138;
const GAP = 222;
const COLUMN = BOX + GAP;
const MARGIN = 16;
const PAD = 8;
/**
 * Where the vertical part of a line is, right of the place that it leaves: one for each style, and one for grounded conductors, which
 * are not connected to the jumpers beside them wherever no jumper joins them.
 */
const trunks: Readonly<Record<LineStyle | "grounded", number>> = {
  context: 10,
  grounded: 20,
  load: 20,
  "fault-path": 30,
  equalizing: 40,
  "electrode-system": 50,
};
const LABEL_START = 60;
const LABEL_WIDTH = GAP - LABEL_START - 8;

interface Shapes {
  readonly boxes: DrawnBox[];
  readonly lines: DrawnLine[];
  readonly symbols: DrawnSymbol[];
  readonly labels: DrawnLabel[];
}

/** One line into a place, with its label. */
interface Strand {
  readonly style: LineStyle;
  readonly trunk: number;
  readonly lines: readonly string[];
  readonly strong: number;
  readonly conductor?: string;
  readonly isDrawn: boolean;
}

/** A place of the tree, in the column after the place that it hangs on. */
interface Branch {
  readonly place: Place;
  readonly isElsewhere: boolean;
  readonly strands: readonly Strand[];
  readonly children: readonly Branch[];
  readonly taps: readonly Strand[];
}

/**
 * Lays a group out in layers from left to right. Every line and every label has rows of its own, and vertical parts of lines stay left
 * of the labels, so nothing can overlap; what is reached a second time is drawn again as a reference.
 */
export function sheetOf(group: Group): Sheet {
  const shapes: Shapes = { boxes: [], lines: [], symbols: [], labels: [] };
  const common = group.places.find(({ isCommon }) => isCommon);
  const seen = new Set<string>();
  const targets = new Set(group.links.map(({ to }) => to));
  const rootsOf = (places: readonly Place[]): readonly Branch[] =>
    places.flatMap((place) =>
      seen.has(place.key) || place === common ? [] : [branchOf(place, [], group, common, seen)],
    );
  const starts = rootsOf(group.places.filter(({ key }) => !targets.has(key)));
  const bar = common && branchOf(common, [], group, undefined, seen);
  const roots = [...starts, ...rootsOf(group.places)];
  const depth = Math.max(0, ...roots.map(depthOf));
  const barX = MARGIN + depth * COLUMN;
  const taps: number[] = [];
  let y = MARGIN;
  for (const root of roots) {
    y = drawBranch(root, MARGIN, y, barX, shapes, taps) + 2 * PAD;
  }
  let columns = depth;
  if (bar !== undefined) {
    const top = Math.max(MARGIN, (taps[0] ?? MARGIN) - 4 * LINE_HEIGHT);
    const end = drawBranch(bar, barX, top, barX, shapes, [], (taps.at(-1) ?? top) - top + PAD);
    y = Math.max(y, end + PAD);
    columns += depthOf(bar);
  }
  return {
    title: group.title,
    width: 2 * MARGIN + columns * COLUMN - GAP,
    height: y,
    ...shapes,
    ...(group.violations?.length && { violations: group.violations }),
    description: describe(group),
  };
}

/** Places one behind the other on a sheet; no installation is fed through so many, and each is a column of the sheet. */
const mostLevels = 500;

function tooDeep({ key }: Place): InputError {
  const expected = `at most ${mostLevels} places one behind the other`;
  return new InputError([
    fault("out-of-range", ["circuits"], expected, key, "divide the drawing, or mend what it hangs on"),
  ]);
}

function branchOf(
  place: Place,
  strands: readonly Strand[],
  group: Group,
  common: Place | undefined,
  seen: Set<string>,
  level = 1,
): Branch {
  if (level > mostLevels) throw tooDeep(place);
  if (seen.has(place.key)) return { place, isElsewhere: true, strands, children: [], taps: [] };
  seen.add(place.key);
  const out = group.links.filter(({ from }) => from === place.key);
  const children = out
    .filter(({ to }) => to !== common?.key)
    .flatMap((link) => {
      const next = group.places.find(({ key }) => key === link.to);
      return next === undefined ? [] : [branchOf(next, strandsOf(link), group, common, seen, level + 1)];
    });
  const taps = out.filter(({ to }) => to === common?.key).flatMap(strandsOf);
  return { place, isElsewhere: false, strands, children, taps };
}

function depthOf({ children }: Branch): number {
  return 1 + Math.max(0, ...children.map(depthOf));
}

function strandsOf({ conductors, context }: Link): readonly Strand[] {
  const drawn = conductors.map(conductorStrand);
  if (context === undefined) return drawn;
  const beside: Strand = {
    style: "context",
    trunk: trunks.context,
    lines: wrap(context, LABEL_WIDTH),
    strong: 0,
    isDrawn: true,
  };
  return [beside, ...drawn];
}

function conductorStrand({ mark, conductor, forbidden }: Marked): Strand {
  const { id, result } = conductor;
  const size = wrap(writeSize(conductor), LABEL_WIDTH);
  const name = wrap(`${mark}. ${conductorWords(conductor)}`, LABEL_WIDTH);
  return {
    style: result.purpose,
    trunk: conductor.role === "grounded-conductor" ? trunks.grounded : trunks[result.purpose],
    lines: [...size, ...name, ...forbiddenLines(forbidden, LABEL_WIDTH)],
    strong: size.length,
    conductor: id,
    isDrawn: result.outcome.kind !== "not-required",
  };
}

const strandHeight = ({ lines }: Strand): number => lines.length * LINE_HEIGHT + 2 * PAD;

/** Draws a place and all that hangs on it; gives the lower end of its rows. */
function drawBranch(
  branch: Branch,
  x: number,
  top: number,
  barX: number,
  shapes: Shapes,
  taps: number[],
  least = 0,
): number {
  const { strands, children } = branch;
  const incoming = strands.reduce((sum, one) => sum + strandHeight(one), 0);
  const boxEnd = drawPlace(branch, x, top, Math.max(incoming, least), shapes);
  let y = top;
  children.forEach((child) => {
    drawStrands(child.strands, x + BOX, top, y, x + COLUMN, shapes);
    y = drawBranch(child, x + COLUMN, y, barX, shapes, taps) + PAD;
  });
  branch.taps.forEach((tap) => {
    drawStrands([tap], x + BOX, top, y, barX, shapes);
    y += strandHeight(tap);
    taps.push(y - PAD);
  });
  return Math.max(boxEnd, y);
}

/** Lines from a place at `left`, whose top is `start`, into rows from `top` down, each under its label. */
function drawStrands(
  strands: readonly Strand[],
  left: number,
  start: number,
  top: number,
  right: number,
  shapes: Shapes,
): void {
  let y = top;
  for (const strand of strands) {
    const { style, lines, strong, conductor, isDrawn } = strand;
    const named = conductor === undefined ? {} : { conductor };
    shapes.labels.push({
      x: left + LABEL_START,
      y: y + PAD / 2,
      width: LABEL_WIDTH,
      height: lines.length * LINE_HEIGHT,
      lines,
      strong,
      ...named,
    });
    y += strandHeight(strand);
    if (!isDrawn) continue;
    const trunk = left + strand.trunk;
    const exit = start + 28 - strand.trunk / 2;
    const row = y - PAD;
    const points = [
      { x: left, y: exit },
      { x: trunk, y: exit },
      { x: trunk, y: row },
      { x: right, y: row },
    ];
    shapes.lines.push({ style, points, ...named });
  }
}

function drawPlace(branch: Branch, x: number, y: number, least: number, shapes: Shapes): number {
  const { place, isElsewhere } = branch;
  const symbol = isElsewhere ? undefined : place.symbol;
  const indent = symbol === undefined ? 0 : SYMBOL_SIZE + PAD;
  const name = wrap(place.name, BOX - 2 * PAD - indent);
  const details = isElsewhere ? ["drawn elsewhere"] : place.details;
  const small = details.flatMap((one) => wrap(one, BOX - 2 * PAD - indent));
  const head = Math.max((name.length + small.length) * LINE_HEIGHT, symbol === undefined ? 0 : SYMBOL_SIZE);
  shapes.labels.push({
    x: x + PAD + indent,
    y: y + PAD,
    width: BOX - 2 * PAD - indent,
    height: (name.length + small.length) * LINE_HEIGHT,
    lines: [...name, ...small],
    strong: name.length,
  });
  if (symbol !== undefined) shapes.symbols.push({ kind: symbol, x: x + PAD, y: y + PAD });
  let end = y + PAD + head + PAD;
  for (const marked of isElsewhere ? [] : place.inside) end = drawInside(marked, x, end, shapes);
  const height = Math.max(end - y, least + PAD);
  shapes.boxes.push({ kind: isElsewhere ? "elsewhere" : "place", x, y, width: BOX, height });
  return y + height;
}

/** A conductor within a place: a short line across it, over its size and name. */
function drawInside({ mark, conductor, forbidden }: Marked, x: number, y: number, shapes: Shapes): number {
  const { id, result } = conductor;
  const width = BOX - 2 * PAD;
  const size = wrap(writeSize(conductor), width);
  const lines = [
    ...size,
    ...wrap(`${mark}. ${conductorWords(conductor)}`, width),
    ...forbiddenLines(forbidden, width),
  ];
  if (result.outcome.kind !== "not-required") {
    const points = [
      { x: x + PAD, y: y + 2 },
      { x: x + BOX - PAD, y: y + 2 },
    ];
    shapes.lines.push({ style: result.purpose, points, conductor: id });
  }
  const height = lines.length * LINE_HEIGHT;
  shapes.labels.push({ x: x + PAD, y: y + PAD, width, height, lines, strong: size.length, conductor: id });
  return y + PAD + height + PAD;
}

function forbiddenLines(forbidden: string | undefined, width: number): readonly string[] {
  return forbidden === undefined ? [] : wrap(forbidden, width);
}

function describe({ places, links, violations = [] }: Group): string {
  const nameOf = (key: string): string => places.find((one) => one.key === key)?.name ?? key;
  const conductor = ({ mark, conductor: one }: Marked): string =>
    `${mark}. ${conductorWords(one)}: ${writeSize(one)}`;
  return [
    ...violations.map(
      ({ mark, violation }) => `Not permitted, ${mark}: ${violation.at.join(", ")} [${violation.section}].`,
    ),
    ...links.map(
      ({ from, to, conductors, context }) =>
        `From ${nameOf(from)} to ${nameOf(to)}: ${[...(context === undefined ? [] : [context]), ...conductors.map(conductor)].join("; ")}.`,
    ),
    ...places
      .filter(({ inside }) => inside.length > 0)
      .map(({ name, inside }) => `Within ${name}: ${inside.map(conductor).join("; ")}.`),
  ].join(" ");
}
