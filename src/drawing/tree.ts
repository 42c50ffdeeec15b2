import { MOST_INDENTS } from "./columns.js";
import type { Group, Link, Place } from "./group.js";

/** A place with what hangs on it. */
export interface Branch {
  readonly place: Place;
  /** What leads to it; absent of a place that nothing leads to. */
  readonly link?: Link;
  /** Enclosures that it supplies. */
  readonly children: readonly Branch[];
  /** Metal parts, and places that are drawn elsewhere. */
  readonly leaves: readonly Leaf[];
  /** Conductors to electrodes and common electrode conductors. */
  readonly exits: readonly Link[];
  /** Conductors to electrodes that start on the run to it. */
  readonly exitsOfRun: readonly Link[];
}

export interface Leaf {
  readonly link: Link;
  readonly place: Place;
  readonly isElsewhere: boolean;
  /** Jumpers of a metal part around what is likely to be taken out of it. */
  readonly jumpers: readonly Link[];
}

/** The enclosures of a sheet as trees, and what is too deep for it, to be drawn on further sheets. */
export interface Forest {
  readonly roots: readonly Branch[];
  readonly indents: number;
  readonly continued: readonly Place[];
}

/** Places one behind the other on a sheet; what follows is drawn on the next one. */
const MOST_LEVELS = 40;

const enclosed = (place: Place | undefined): boolean =>
  place !== undefined && (place.kind === "enclosure" || place.kind === "elsewhere");

/** Sorts the places of a group by what they hang on, from those that nothing leads to, or from the ones that are given. */
export function forestsOf(group: Group): readonly Forest[] {
  const places = new Map(group.places.map((one) => [one.key, one]));
  const byStart = new Map<string, Link[]>();
  const reached = new Set<string>();
  const runs = new Set(group.links.flatMap(({ id }) => (id === undefined ? [] : [id])));
  for (const link of group.links) {
    const same = byStart.get(link.from);
    if (same === undefined) byStart.set(link.from, [link]);
    else same.push(link);
    reached.add(link.to);
  }
  const seen = new Set<string>();
  const enclosures = group.places.filter(
    (one) => enclosed(one) && !(runs.has(one.key) && !reached.has(one.key) && one.inside.length === 0),
  );
  const starts = enclosures.filter(({ key }) => !reached.has(key));
  const shown = new Set<string>();
  const forests: Forest[] = [];
  let isContinued = false;
  let open: readonly Place[] = starts;
  do {
    const continued: Place[] = [];
    let indents = 0;
    const branchOf = (place: Place, link: Link | undefined, level: number, indent: number): Branch => {
      seen.add(place.key);
      indents = Math.max(indents, indent);
      const out = byStart.get(place.key) ?? [];
      const inner = out.filter(({ to }) => enclosed(places.get(to)) || places.get(to)?.kind === "part");
      const inside = inner.length > 1 || inner.some(({ to }) => places.get(to)?.kind === "part");
      const below = indent + (inside ? (hasAssembly(inner) ? 2 : 1) : 0);
      const children: Branch[] = [];
      const leaves: Leaf[] = [];
      for (const next of inner) {
        const to = places.get(next.to);
        if (to === undefined) continue;
        const isTooDeep = below > MOST_INDENTS || level >= MOST_LEVELS;
        if (to.kind === "part") leaves.push(leafOf(next, to));
        else if (seen.has(to.key)) leaves.push({ link: next, place: to, isElsewhere: true, jumpers: [] });
        else if (isTooDeep && isLarge(to.key)) {
          seen.add(to.key);
          continued.push(to);
          leaves.push({ link: next, place: to, isElsewhere: true, jumpers: [] });
        } else children.push(branchOf(to, next, level + 1, below));
      }
      indents = Math.max(indents, below);
      return {
        place,
        ...(link && { link }),
        children,
        leaves,
        exits: out.filter((one) => !inner.includes(one)),
        exitsOfRun:
          link?.id === undefined || link.id === link.from || link.id === link.to
            ? []
            : (byStart.get(link.id) ?? []),
      };
    };
    const leafOf = (link: Link, place: Place): Leaf => {
      const isElsewhere = shown.has(place.key);
      shown.add(place.key);
      return { link, place, isElsewhere, jumpers: isElsewhere ? [] : (byStart.get(place.key) ?? []) };
    };
    const hasAssembly = (links: readonly Link[]): boolean =>
      links.some(({ to }) => places.get(to)?.assembly !== undefined);
    const isLarge = (key: string): boolean => (byStart.get(key) ?? []).length > 0;
    const roots = open.flatMap((one) =>
      !isContinued && seen.has(one.key) ? [] : [branchOf(one, undefined, 0, 0)],
    );
    forests.push({ roots, indents, continued });
    // What is still left hangs on itself.
    open = continued.length > 0 ? continued : enclosures.filter(({ key }) => !seen.has(key));
    isContinued = continued.length > 0;
  } while (open.length > 0);
  return forests;
}
