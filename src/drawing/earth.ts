import type { Sketch } from "./block.js";
import { conductorLine, line, rectangle, type Stack, say, sayConductor, symbol } from "./canvas.js";
import { LANE, MARGIN } from "./columns.js";
import type { Point } from "./drawing.js";
import { leavingOf } from "./exits.js";
import type { Group, Link, Marked, Place } from "./group.js";
import { LINE_HEIGHT } from "./wrap.js";
import { isThere } from "./write.js";

/** A conductor down to an electrode, in a column of its own. */
interface Strand {
  readonly marked: Marked | undefined;
  readonly around: readonly Marked[];
  /** The electrode; absent where the conductor only meets what is drawn elsewhere. */
  readonly place: Place | undefined;
  readonly elsewhere?: string;
  /** From where it comes: corners up to its lane, a common conductor, or the strand of another electrode. */
  readonly points?: readonly Point[];
  readonly parent?: Strand;
  readonly isFromCommon?: true;
}

/** A conductor that ends on the first electrode conductor. */
interface Join {
  readonly marked: Marked;
  readonly points: readonly Point[];
}

/** The most electrodes side by side above one ground line. */
export const MOST_BESIDE = 5;
const WIDEST = 230;

/** Draws what goes to electrodes: lanes, common conductors, and the electrodes below a ground line; gives the lower end. */
export function drawEarth(sketch: Sketch, group: Group, isFirst: boolean, top: number): number {
  const { canvas, columns, exits, tops } = sketch;
  const places = new Map(group.places.map((one) => [one.key, one]));
  const common = group.places.find(({ kind }) => kind === "common");
  const seen = new Set<string>();
  const strands: Strand[] = [];
  const links = new Map<string, Link[]>();
  for (const link of group.links) {
    const same = links.get(link.from);
    if (same === undefined) links.set(link.from, [link]);
    else same.push(link);
  }

  const follow = (key: string, parent: Strand | undefined): void => {
    for (const link of links.get(key) ?? []) {
      const to = places.get(link.to);
      if (to === undefined) continue;
      for (const { marked, around } of leavingOf(link)) {
        const from = parent === undefined ? { isFromCommon: true as const } : { parent };
        add({ marked, around, place: to, ...from });
      }
    }
  };
  const add = (strand: Strand): void => {
    const { place } = strand;
    if (place === undefined || seen.has(place.key)) {
      strands.push({ ...strand, place: undefined, elsewhere: strand.elsewhere ?? place?.name ?? "" });
      return;
    }
    seen.add(place.key);
    strands.push(strand);
    follow(place.key, strand);
  };

  const taps = exits.filter(({ to, kind }) => kind === "electrode" && to === common?.key);
  const hasCommon = common !== undefined && (taps.length > 0 || isFirst);
  const others = exits
    .filter((one) => !taps.includes(one))
    .sort((a, b) => (b.points.at(-1)?.y ?? 0) - (a.points.at(-1)?.y ?? 0));
  const ofPlaces = others.filter(({ kind }) => kind === "place");
  const down = others.filter(({ kind }) => kind !== "place");
  const first = hasCommon ? 1 : 0;
  const busX = columns.laneOf(0);
  if (hasCommon) {
    follow(common.key, undefined);
    if (strands.length === 0)
      strands.push({
        marked: undefined,
        around: [],
        place: undefined,
        elsewhere: common.name,
        isFromCommon: true,
      });
  }
  for (const tap of taps) {
    const y = tap.points.at(-1)?.y ?? 0;
    conductorLine(canvas, tap.marked, [...tap.points, { x: busX, y }], undefined);
  }
  const joins: Join[] = [];
  const hasConductor = down.some(({ kind }) => kind === "electrode");
  down.forEach((exit, i) => {
    const x = columns.laneOf(first + i);
    const y = exit.points.at(-1)?.y ?? 0;
    const place = exit.kind === "electrode" ? places.get(exit.to) : undefined;
    if (exit.kind === "electrode-conductor" && hasConductor) {
      joins.push({ marked: exit.marked, points: [...exit.points, { x, y }] });
      return;
    }
    add({
      marked: exit.marked,
      around: exit.around,
      place,
      elsewhere: exit.to,
      points: [...exit.points, { x, y }],
    });
  });
  ofPlaces.forEach((exit, i) => {
    const x = columns.laneOf(first + down.length + i);
    const y = exit.points.at(-1)?.y ?? 0;
    const at = tops.get(exit.to);
    const end = { x: columns.right, y: (at ?? y) + 10 + 3 * i };
    const points =
      at === undefined ? [...exit.points, { x, y }] : [...exit.points, { x, y }, { x, y: end.y }, end];
    conductorLine(canvas, exit.marked, points, "to-start");
    if (at !== undefined) canvas.joints.push(end);
  });
  for (const { points } of exits) {
    const start = points[0];
    if (points.length === 1 && start?.x === columns.right) canvas.joints.push(start);
  }
  if (strands.length === 0) return top;
  let y = top + 8;
  if (common !== undefined && hasCommon) {
    const from = Math.min(y, ...taps.map(({ points }) => points.at(-1)?.y ?? y));
    const name: Stack = { x: columns.grounding, width: columns.right - columns.grounding - 4, y };
    say(canvas, name, `${common.name}: ${common.details.join(", ")}`, {
      isStrong: true,
      forbidden: common.forbidden,
    });
    y = name.y + 2;
    const end = drawShelves(sketch, strands, joins, y, busX, first + down.length + ofPlaces.length);
    line(canvas, "bar", [
      { x: busX, y: from },
      { x: busX, y: Math.max(end.bus, y) },
    ]);
    return end.bottom;
  }
  return drawShelves(sketch, strands, joins, y, busX, first + down.length + ofPlaces.length).bottom;
}

function drawShelves(
  sketch: Sketch,
  strands: readonly Strand[],
  joins: readonly Join[],
  top: number,
  busX: number,
  lanesUsed: number,
): { readonly bottom: number; readonly bus: number } {
  const { canvas, columns } = sketch;
  const columnX = new Map<Strand, { readonly x: number; readonly shelf: number }>();
  const shelves = Math.ceil(strands.length / MOST_BESIDE);
  const each = Math.ceil(strands.length / shelves);
  const width = Math.min(WIDEST, Math.floor((columns.right - MARGIN) / each));
  strands.forEach((one, i) => {
    columnX.set(one, {
      x: columns.right - each * width + 14 + (i % each) * width,
      shelf: Math.floor(i / each),
    });
  });
  const xOf = (one: Strand | undefined): number => (one && columnX.get(one)?.x) ?? 0;
  const shelfOf = (one: Strand | undefined): number => (one && columnX.get(one)?.shelf) ?? 0;
  let lane = lanesUsed;
  const onward = new Map<Strand, readonly Point[]>();
  const left = [...joins];
  let y = top;
  let bus = top;
  for (let shelf = 0; shelf < shelves; shelf++) {
    if (shelf > 0) canvas.cuts.push({ y, depth: 0 });
    const own = strands.slice(shelf * each, (shelf + 1) * each);
    const starts = new Map<Strand, readonly Point[]>();
    for (const one of own) {
      const { points, isFromCommon, parent } = one;
      const before = onward.get(one) ?? points;
      if (before === undefined && isFromCommon !== true) continue;
      if (parent !== undefined && before === undefined) continue;
      y += LANE;
      const last = before?.at(-1) ?? { x: busX, y };
      if (isFromCommon === true) bus = y;
      starts.set(one, [...(before ?? []), { x: last.x, y }, { x: xOf(one), y }]);
    }
    const joined = own.find(({ points }) => points !== undefined);
    for (const { marked, points } of joined === undefined || left.length === 0 ? [] : left.splice(0)) {
      y += LANE;
      const x = points.at(-1)?.x ?? busX;
      conductorLine(canvas, marked, [...points, { x, y }, { x: xOf(joined), y }], undefined);
    }
    // Of jumpers side by side the rightmost takes the uppermost row, so that none crosses what the others reach.
    for (const one of [...own].reverse()) {
      if (one.parent === undefined || shelfOf(one.parent) !== shelf || starts.has(one)) continue;
      y += LANE;
      starts.set(one, [
        { x: xOf(one.parent), y },
        { x: xOf(one), y },
      ]);
    }
    for (const later of strands.slice((shelf + 1) * each)) {
      if (later.parent === undefined || !own.includes(later.parent)) continue;
      y += LANE;
      const x = columns.laneOf(lane++);
      onward.set(later, [
        { x: xOf(later.parent), y },
        { x, y },
      ]);
    }
    y = drawShelf(sketch, own, starts, xOf, width, y + 6);
  }
  return { bottom: y, bus };
}

function drawShelf(
  { canvas, columns }: Sketch,
  own: readonly Strand[],
  starts: ReadonlyMap<Strand, readonly Point[]>,
  xOf: (one: Strand) => number,
  width: number,
  top: number,
): number {
  const stacks = own.map(
    (one): Stack => ({
      x: xOf(one) + (one.around.length > 0 ? 22 : 10),
      width: width - (one.around.length > 0 ? 38 : 26),
      y: top,
    }),
  );
  own.forEach((one, i) => {
    const stack = stacks[i];
    if (stack === undefined) return;
    if (one.marked !== undefined) sayConductor(canvas, stack, one.marked);
    for (const around of one.around) sayConductor(canvas, stack, around);
  });
  const ground = Math.max(top + 24, ...stacks.map((stack) => stack.y)) + 12;
  let bottom = ground + 40;
  own.forEach((one) => {
    const x = xOf(one);
    const { place, marked, around, elsewhere } = one;
    const isElsewhere = place === undefined;
    const end = isElsewhere ? ground - 12 : ground;
    const points = [...(starts.get(one) ?? []), { x, y: end }];
    if (marked === undefined) line(canvas, "bar", points);
    else conductorLine(canvas, marked, points, undefined);
    if (around.some(isThere)) drawAround(canvas, x, top, end, around.filter(isThere), one);
    const below: Stack = { x: x + 20, width: width - 36, y: ground + 6 };
    if (isElsewhere) {
      rectangle(canvas, "elsewhere", elsewhere ?? "", [x - 8, end, x + 8, end + 10]);
      say(canvas, below, `${elsewhere ?? ""}: drawn elsewhere`);
    } else {
      symbol(canvas, place.symbol ?? "electrode", x, ground);
      say(canvas, below, place.name, { isStrong: true, forbidden: place.forbidden });
      say(canvas, below, place.details.join(", "));
    }
    bottom = Math.max(bottom, below.y + 6);
  });
  canvas.grounds.push({ x: MARGIN - 6, y: ground, width: columns.right - MARGIN + 6 });
  return bottom;
}

/** A piece of the ferrous raceway around a conductor, with the jumper from its end to the conductor inside. */
function drawAround(
  canvas: Sketch["canvas"],
  x: number,
  top: number,
  bottom: number,
  around: readonly Marked[],
  { marked }: Strand,
): void {
  const end = Math.min(bottom - 14, top + 2 * LINE_HEIGHT);
  for (const side of [x - 5, x + 5]) {
    canvas.outlines.push({
      kind: "raceway",
      of: `raceway of ${marked?.conductor.subject ?? ""}`,
      points: [
        { x: side, y: top },
        { x: side, y: end },
      ],
    });
  }
  around.forEach((one, i) => {
    const from = { x: x + 5, y: end - 4 - 8 * i };
    const turn = x + 10 + 4 * i;
    const to = { x, y: end + 6 + 4 * i };
    conductorLine(canvas, one, [from, { x: turn, y: from.y }, { x: turn, y: to.y }, to], undefined);
    canvas.joints.push(from);
  });
}
