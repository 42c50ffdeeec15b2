import { type ConductorEnd, idsOfEnd } from "../conductor-identity.js";
import type { Installation } from "../document.js";
import type { Schedule, ScheduledConductor } from "../schedule.js";
import { enclosuresOf } from "../service.js";

/** The ids of an installation by which the places of a conductor may be called. */
export function endIds(
  installation: Installation,
  schedule: Schedule,
): (line: ScheduledConductor) => readonly string[] {
  const together = new Map(
    (installation.services ?? []).flatMap((service) =>
      enclosuresOf({ installation, code: schedule.code, service })
        .filter(({ disconnects, isBus }) => isBus || disconnects.length > 1)
        .map(({ id, disconnects }) => [id, disconnects] as const),
    ),
  );
  const idsOf = (end: ConductorEnd): readonly string[] => [
    ...idsOfEnd(end),
    ...(end.kind === "assembly" ? (together.get(end.of) ?? []) : []),
    ...(end.kind === "place" ? (together.get(end.id) ?? []) : []),
  ];
  return ({ from, to, place }) => [...idsOf(from), ...idsOf(to), ...(place === undefined ? [] : [place])];
}

/** Of which system, and on which side of it, a place is. */
export type Side = "supply-side" | "service-load-side" | "derived";

/** Tells of places where they lie: ahead of a service disconnect, in a derived system ahead of its circuits, or beyond. */
export function sidesOf({
  services = [],
  derivedSystems = [],
  circuits = [],
  buildings = [],
}: Installation): (place: string) => Side {
  const supply = new Set(
    services.flatMap(({ utility, boxes, boxesWithoutSupply, buses, runs, sharedRaceways }) => [
      utility.id,
      ...idsOf(boxes, boxesWithoutSupply, buses, runs, sharedRaceways),
    ]),
  );
  const derived = new Set(
    derivedSystems.flatMap(({ id, source, disconnects, runs, sharedRaceways }) => [
      id,
      source.id,
      ...idsOf(disconnects, runs, sharedRaceways),
    ]),
  );
  const fedBy = new Map([
    ...circuits.flatMap(({ id, from, to }) => [[id, from] as const, [to, from] as const]),
    ...buildings.map(({ id, circuit, disconnect }) => [id, circuit ?? disconnect] as const),
  ]);
  return (place) => {
    if (supply.has(place)) return "supply-side";
    const seen = new Set<string>();
    for (let at: string | undefined = place; at !== undefined && !seen.has(at); at = fedBy.get(at)) {
      if (derived.has(at)) return "derived";
      seen.add(at);
    }
    return "service-load-side";
  };
}

function idsOf(...lists: readonly (readonly { readonly id: string }[] | undefined)[]): readonly string[] {
  return lists.flatMap((list = []) => list.map(({ id }) => id));
}
