import type { Canvas, Stack } from "./canvas.js";
import { rectangle, say, sayConductor } from "./canvas.js";
import { BESIDE, type Columns } from "./columns.js";
import type { Marked } from "./group.js";
import type { Branch } from "./tree.js";
import { widthOf } from "./wrap.js";
import { isThere } from "./write.js";

/** A place that is drawn, and those that are alike but for their sizes. */
interface Fold {
  readonly drawn: Branch;
  readonly folded: readonly Branch[];
}

/** Widest column of names in a table, and widest and narrowest cell of a conductor. */
const MOST_NAME = 130;
const MOST_CELL = 140;
const LEAST_CELL = 84;

/** Fewer than these alike are drawn each. */
const LEAST = 3;

/** Places that hang on one trunk, those that are alike together: the first to be drawn, the others to be told in a table. */
export function foldsOf(branches: readonly Branch[]): readonly Fold[] {
  const alike = new Map<string, Branch[]>();
  branches.forEach((one, i) => {
    const key = likenessOf(one) ?? `${i}`;
    const same = alike.get(key);
    if (same === undefined) alike.set(key, [one]);
    else same.push(one);
  });
  return [...alike.values()].flatMap((same): readonly Fold[] => {
    const [drawn, ...folded] = same;
    if (drawn === undefined) return [];
    return same.length < LEAST ? same.map((one) => ({ drawn: one, folded: [] })) : [{ drawn, folded }];
  });
}

/** What two places that are alike have in common; `undefined` of one that is never folded. */
function likenessOf({ place, link, children, leaves, exits, exitsOfRun }: Branch): string | undefined {
  const conductors = [
    ...(link?.conductors ?? []),
    ...place.inside,
    ...exits.flatMap((one) => one.conductors),
  ];
  const isMarked =
    place.forbidden !== undefined ||
    link?.forbidden !== undefined ||
    conductors.some(({ forbidden }) => forbidden !== undefined);
  const isSimple = children.length === 0 && leaves.length === 0 && exitsOfRun.length === 0;
  const isTapping = exits.every(({ conductors: [one] }) => one?.conductor.part === "tap");
  if (isMarked || !isSimple || !isTapping || place.assembly !== undefined || link === undefined)
    return undefined;
  const ends = ({ conductor: { from, to, role } }: Marked): unknown => [
    role,
    from.kind,
    "on" in from ? from.on : "",
    to.kind,
    "on" in to ? to.on : "",
  ];
  return JSON.stringify([
    place.symbol,
    place.bar,
    place.isBondedByGrounded,
    place.details.map((one) => one.replace(/\d+/g, "#")),
    link.context === undefined,
    link.isInMetal,
    link.shared,
    exits.map(({ to }) => to),
    conductors.map((one) => [...(ends(one) as unknown[]), isThere(one)]),
  ]);
}

/** A table of what is alike: a row for each place, with its conductors. */
export function drawFold(
  canvas: Canvas,
  columns: Columns,
  drawn: Branch,
  folded: readonly Branch[],
  left: number,
  top: number,
): number {
  const title: Stack = { x: left + BESIDE, width: columns.right - left - 2 * BESIDE, y: top + 4 };
  const names = [folded[0], folded.at(-1)].map((one) => one?.place.name ?? "");
  const range = folded.length === 1 ? (names[0] ?? "") : `${names.join(" to ")} (${folded.length})`;
  say(canvas, title, `${range} like ${drawn.place.name}`, { isStrong: true });
  let y = title.y + 2;
  const many = conductorsOf(drawn).length;
  const name = Math.min(MOST_NAME, 14 + Math.max(...folded.map(({ place }) => widthOf(place.name))));
  const room = columns.right - left - BESIDE - name;
  const each = Math.min(MOST_CELL, room / (many + 1));
  for (const one of folded) {
    canvas.cuts.push({ y: y - 1, depth: left + 1 });
    const cells =
      each < LEAST_CELL
        ? wide(canvas, one, left, columns, y)
        : narrow(canvas, one, [left + BESIDE, name, room - many * each, each], y);
    y = cells + 3;
  }
  rectangle(canvas, "elsewhere", range, [left, top, columns.right, y + 2]);
  return y + 2;
}

const conductorsOf = ({ link, place, exits }: Branch): readonly Marked[] => [
  ...(link?.conductors ?? []),
  ...place.inside,
  ...exits.flatMap((one) => one.conductors),
];

function whatOf({ place, link }: Branch): string {
  return [...place.details, ...(link?.context === undefined ? [] : [link.context])].join("; ");
}

/** A row with the name, what it is, and a cell for each conductor. */
function narrow(
  canvas: Canvas,
  one: Branch,
  [left, name, what, each]: readonly [number, number, number, number],
  y: number,
): number {
  const first: Stack = { x: left, width: name - 4, y };
  const second: Stack = { x: left + name, width: what - 10, y };
  say(canvas, first, one.place.name, { isStrong: true });
  say(canvas, second, whatOf(one));
  const cells = conductorsOf(one).map((marked, i) => {
    const stack: Stack = { x: left + name + what + i * each, width: each - 10, y };
    sayConductor(canvas, stack, marked);
    return stack;
  });
  return Math.max(first.y, second.y, ...cells.map((stack) => stack.y));
}

/** So many conductors that they stand one below the other. */
function wide(canvas: Canvas, one: Branch, left: number, columns: Columns, y: number): number {
  const name: Stack = { x: left + BESIDE, width: 180, y };
  say(canvas, name, one.place.name, { isStrong: true });
  const rest: Stack = { x: left + BESIDE + 190, width: columns.right - left - 2 * BESIDE - 190, y };
  say(canvas, rest, whatOf(one));
  for (const marked of conductorsOf(one)) sayConductor(canvas, rest, marked);
  return Math.max(name.y, rest.y);
}
