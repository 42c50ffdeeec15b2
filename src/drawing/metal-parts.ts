import type { Installation } from "../installation/document.js";
import type { SymbolKind } from "./drawing.js";
import type { Group, Link, Marked, Place } from "./group.js";
import { place, placeOfEnd } from "./places.js";
import { isThere } from "./write.js";

/** What the ends of conductors are on a sheet that holds them. */
type Ends = (marked: Marked, group: Group) => string | undefined;

/** Metal parts and terminations, each with the first sheet that shows what it is bonded to. */
export function withMetal(
  installation: Installation,
  groups: readonly Group[],
  left: readonly Marked[],
): readonly Group[] {
  const kinds = kindsOf(installation);
  const taken = new Set<Marked>();
  const attached = groups.map((group) => {
    const keys = new Set(group.places.map(({ key }) => key));
    const own = left.flatMap((one) => {
      const at = taken.has(one) || !isOfMetal(one) ? undefined : bondedAt(one, group);
      if (at === undefined || !keys.has(at)) return [];
      taken.add(one);
      return [{ one, at }];
    });
    const parts = own.map(({ one }) => partOf(one, kinds));
    const places = new Map([...parts, ...group.places].map((part) => [part.key, part]));
    const links = own.map(
      ({ one, at }, i): Link => ({ from: at, to: parts[i]?.key ?? at, conductors: [one] }),
    );
    return { ...group, places: [...places.values()], links: [...group.links, ...links] };
  });
  const groupsWithFittings = attached.map((group) => withFittings(group, left, taken));
  const rest = restGroup(
    left.filter((one) => !taken.has(one)),
    kinds,
  );
  return rest.links.length === 0 ? groupsWithFittings : [...groupsWithFittings, rest];
}

/** Jumpers around what is likely to be taken out of a part or an electrode, with the first sheet that shows it. */
function withFittings(group: Group, left: readonly Marked[], taken: Set<Marked>): Group {
  const kinds = new Map(group.places.map(({ key, kind }) => [key, kind]));
  const led = new Set(group.links.flatMap(({ to, conductors }) => (conductors.some(isThere) ? [to] : [])));
  const links = left.flatMap((one): readonly Link[] => {
    const { from } = one.conductor;
    if (taken.has(one) || from.kind !== "pipe-side") return [];
    const kind = kinds.get(from.of);
    const isShown = kind === "part" || (kind === "electrode" && led.has(from.of));
    if (!isShown) return [];
    taken.add(one);
    return [{ from: from.of, to: from.fitting, conductors: [one] }];
  });
  if (links.length === 0) return group;
  const fittings = links.map(({ from, to }) =>
    place(to, ["bridged"], { kind: kinds.get(from) ?? "part", symbol: "pipe" }),
  );
  return { ...group, places: [...group.places, ...fittings], links: [...group.links, ...links] };
}

const isOfMetal = ({ conductor }: Marked): boolean => conductor.result.purpose !== "electrode-system";

const bondedAt: Ends = ({ conductor: { to } }, group) => {
  if (to.kind === "place") return to.id;
  if (to.kind === "assembly" && to.of === group.id)
    return (
      group.places.find((one) => one.assembly !== undefined)?.key ??
      group.places.find(({ symbol }) => symbol === "disconnect")?.key
    );
  if (to.kind !== "electrode-connection" || to.of !== group.id) return undefined;
  const start = group.links
    .flatMap(({ conductors }) => conductors)
    .find(({ conductor }) => conductor.role === "grounding-electrode-conductor")?.conductor.from;
  return start?.kind === "place" ? start.id : undefined;
};

function partOf({ conductor: { from } }: Marked, kinds: ReadonlyMap<string, SymbolKind>): Place {
  const known = placeOfEnd(from);
  const symbol = kinds.get(known.key);
  return { ...known, kind: "part", ...(symbol && { symbol }) };
}

function kindsOf({
  piping = [],
  structuralMetal = [],
  intersystem = [],
}: Installation): ReadonlyMap<string, SymbolKind> {
  return new Map<string, SymbolKind>([
    ...piping.map(({ id }) => [id, "pipe"] as const),
    ...structuralMetal.map(({ id }) => [id, "frame"] as const),
    ...intersystem.map(({ id }) => [id, "termination"] as const),
  ]);
}

/** Whatever no other sheet shows, from one end to the other as the schedule says. */
function restGroup(left: readonly Marked[], kinds: ReadonlyMap<string, SymbolKind>): Group {
  const ends = left.map((one) => {
    const [from, to] = isOfMetal(one)
      ? [placeOfEnd(one.conductor.to), partOf(one, kinds)]
      : [placeOfEnd(one.conductor.from), placeOfEnd(one.conductor.to, "electrode")];
    return { from, to, one };
  });
  const links = ends.map(({ from, to, one }): Link => ({ from: from.key, to: to.key, conductors: [one] }));
  const places = new Map(ends.flatMap(({ from, to }) => [from, to]).map((one) => [one.key, one]));
  return {
    title: "Metal parts and terminations",
    places: [...places.values()].map((one) =>
      one.kind === "enclosure" ? place(one.key, ["elsewhere"]) : one,
    ),
    links,
  };
}
