import type { Installation } from "../installation/document.js";
import type { Schedule } from "../installation/schedule.js";
import { circuitParts, type Parts } from "./circuit-parts.js";
import type { Group, Link } from "./group.js";
import { withViolations } from "./marks.js";
import { withMetal } from "./metal-parts.js";
import { placesOfLinks } from "./places.js";
import { slotsOf } from "./slots.js";
import { commonGroups, derivedGroups, serviceGroup } from "./system-groups.js";

/** What is drawn together: each service and each arrangement of a derived system with what follows it, and what follows none of them. */
export function groupsOf(installation: Installation, schedule: Schedule): readonly Group[] {
  const slots = slotsOf(schedule);
  const systems = [
    ...(installation.services ?? []).map((one) => serviceGroup(installation, one, slots)),
    ...(installation.derivedSystems ?? []).flatMap((one) => derivedGroups(installation, one, slots)),
  ];
  const common = commonGroups(installation, slots);
  const parts = circuitParts(installation, slots);
  const taken = new Set<Link>();
  const followed = systems.map((group) => withFollowing(group, parts, taken));
  const links = parts.links.filter((link) => !taken.has(link));
  const places = placesOfLinks(
    parts.places.filter(({ key }) => links.some(({ from, to }) => from === key || to === key)),
    links,
  );
  const alone = parts.places.filter(
    (one) =>
      !places.includes(one) &&
      one.kind === "enclosure" &&
      !followed.some((group) => group.places.some(({ key }) => key === one.key)),
  );
  const rest = { title: "Circuits, generators and buildings", places: [...places, ...alone], links };
  const groups = [...followed, ...common, rest].filter((group) => group.places.length > 0);
  return withViolations(withMetal(installation, groups, slots.left()), schedule.violations);
}

/** A system with the circuits that start from it, and what follows these. */
function withFollowing(group: Group, parts: Parts, taken: Set<Link>): Group {
  const starting = new Map<string, Link[]>();
  for (const link of parts.links) {
    if (taken.has(link)) continue;
    const same = starting.get(link.from);
    if (same === undefined) starting.set(link.from, [link]);
    else same.push(link);
  }
  const reached = new Set(group.places.map(({ key }) => key));
  const own: Link[] = [];
  for (const key of reached) {
    for (const link of starting.get(key) ?? []) {
      taken.add(link);
      own.push(link);
      reached.add(link.to);
    }
  }
  if (own.length === 0) return group;
  const known = new Set(group.places.map(({ key }) => key));
  const more = parts.places.filter(({ key }) => reached.has(key) && !known.has(key));
  const links = [...group.links, ...own];
  return { ...group, places: placesOfLinks([...group.places, ...more], links), links };
}
