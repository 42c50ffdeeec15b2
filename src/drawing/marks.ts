import type { Violation } from "../installation/violation.js";
import type { DrawnViolation } from "./drawing.js";
import type { Group, Link, Marked, Place } from "./group.js";

/**
 * Marks each violation at the places, runs and conductors that it names, and keeps it with every sheet that shows one of them. What names a
 * whole system, or nothing that is drawn, stands with the sheet of the system, or with the first one.
 */
export function withViolations(groups: readonly Group[], violations: readonly Violation[]): readonly Group[] {
  const drawn = violations.map((violation, i): DrawnViolation => ({ mark: `V${i + 1}`, violation }));
  if (drawn.length === 0) return groups;
  const shown = new Set<string>();
  const byId = new Map<string, DrawnViolation[]>();
  for (const one of drawn) {
    for (const id of new Set(one.violation.at)) byId.set(id, [...(byId.get(id) ?? []), one]);
  }
  const marked = groups.map((group) => markedGroup(group, drawn, byId, shown));
  const left = drawn.filter(({ mark }) => !shown.has(mark));
  return marked.map((group, i) =>
    i === 0
      ? { ...group, violations: drawn.filter((one) => group.violations?.includes(one) || left.includes(one)) }
      : group,
  );
}

function markedGroup(
  group: Group,
  drawn: readonly DrawnViolation[],
  byId: ReadonlyMap<string, readonly DrawnViolation[]>,
  shown: Set<string>,
): Group {
  const own = new Set<DrawnViolation>();
  const of = (id: string): string | undefined => {
    const found = byId.get(id) ?? [];
    for (const one of found) {
      own.add(one);
      shown.add(one.mark);
    }
    return found.length === 0 ? undefined : found.map(({ mark }) => mark).join(", ");
  };
  const conductor = (one: Marked): Marked => {
    const forbidden = of(one.conductor.id);
    return forbidden === undefined ? one : { ...one, forbidden };
  };
  const place = (one: Place): Place => {
    const forbidden = of(one.key);
    const inside = one.inside.map(conductor);
    return forbidden === undefined ? { ...one, inside } : { ...one, inside, forbidden };
  };
  const link = (one: Link): Link => {
    const forbidden = one.id === undefined ? undefined : of(one.id);
    const conductors = one.conductors.map(conductor);
    return forbidden === undefined ? { ...one, conductors } : { ...one, conductors, forbidden };
  };
  const places = group.places.map(place);
  const links = group.links.map(link);
  const ofSystem = group.id === undefined ? undefined : of(group.id);
  return {
    ...group,
    title: ofSystem === undefined ? group.title : `${group.title} (not permitted: ${ofSystem})`,
    places,
    links,
    violations: drawn.filter((one) => own.has(one)),
  };
}
