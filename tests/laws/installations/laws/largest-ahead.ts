import type { Installation, ScheduledConductor, Supply } from "bondmil";
import { type Built, nameOf } from "../built.js";
import { suppliesOf, together } from "../conductors.js";
import { endOf, placeOfEnd } from "../electrodes.js";
import type { Run, Service } from "../parts.js";
import { asked } from "./asked.js";
import type { Law } from "./law.js";

/**
 * What belongs to a whole service, or starts ahead of its disconnects, is not below what it would be by any conductors between: those
 * to its place, and those beyond it that all current to the service disconnects passes.
 */
export const largestAhead: Law = {
  name: "what starts ahead of the disconnects goes by the largest of the conductors on the way to them",
  breaches: (built) =>
    (built.installation.services ?? []).flatMap((service) =>
      built.schedule.conductors.flatMap((one) => {
        const place = placeOf(built, service, one);
        return place === undefined ? [] : breachesOf(built, service, one, place);
      }),
    ),
};

function breachesOf(
  built: Built,
  service: Service,
  one: ScheduledConductor,
  place: string,
): readonly string[] {
  const supplies = suppliesOf(built.installation);
  const supplyOf = (runs: readonly Run[]): Supply =>
    together(runs.flatMap(({ id }) => supplies.get(id) ?? []));
  const to = service.runs.filter((run) => run.to === place);
  return [...(to.length > 0 ? [to] : []), ...cutsBeyond(service, place)].flatMap((runs) => {
    const anew = asked(built, one, supplyOf(runs));
    if (anew === null || anew.requiredArea <= one.result.requiredArea) return [];
    const names = runs.map(({ id }) => id).join(" + ");
    return [`${nameOf(one)} has ${one.result.requiredArea}, by ${names} it would have ${anew.requiredArea}`];
  });
}

/** The utility for what belongs to the whole service, a box for its own jumper or for an electrode conductor from it. */
function placeOf({ installation }: Built, service: Service, one: ScheduledConductor): string | undefined {
  if (one.quantity === 0) return undefined;
  const { role, subject } = one;
  const [from, to] = [placeOfEnd(one.from), placeOfEnd(one.to)];
  const boxes = (service.boxes ?? []).map((box) => box.id);
  const electrodes = (service.electrodes ?? []).map(endOf);
  switch (role) {
    case "water-piping-bonding-jumper":
    case "structural-metal-bonding-jumper":
      return isOwned(installation, one, service) ? service.utility.id : undefined;
    case "electrode-bonding-jumper":
      return one.system === service.id ? service.utility.id : undefined;
    case "impedance-bonding-jumper":
      return subject === service.id ? service.utility.id : undefined;
    case "supply-side-bonding-jumper":
      return boxes.includes(to) && subject === to ? to : undefined;
    case "grounding-electrode-conductor":
      return electrodes.includes(to) && boxes.includes(from) ? from : undefined;
    default:
      return undefined;
  }
}

/** Whether the jumper of a metal part is that of a service. */
function isOwned(
  { piping = [], structuralMetal = [] }: Installation,
  one: ScheduledConductor,
  { id }: Service,
): boolean {
  const part = [...piping, ...structuralMetal].find((other) => other.id === one.subject);
  return (one.place ?? (part && "of" in part ? part.of : undefined)) === id;
}

/** Every set of runs that all ways from a place to the service disconnects pass, as ways lead out of a group of places. */
function cutsBeyond({ runs, disconnects }: Service, place: string): readonly (readonly Run[])[] {
  const ends = new Set(
    disconnects.filter(({ designation }) => designation === "service-disconnect").map(({ id }) => id),
  );
  const leads = (start: string): boolean =>
    ends.has(start) || runs.some(({ from, to }) => from === start && leads(to));
  const onTheWay = runs.filter(({ to }) => leads(to));
  const inner = new Set<string>([place]);
  for (const one of inner)
    for (const { from, to } of onTheWay) if (from === one && !ends.has(to)) inner.add(to);
  const others = [...inner].filter((one) => one !== place);
  const groups = Array.from({ length: 2 ** others.length }, (_, bits) =>
    others.filter((_one, i) => (bits >> i) % 2 === 1),
  );
  return groups.flatMap((group) => {
    const inside = new Set([place, ...group]);
    const out = onTheWay.filter(({ from, to }) => inside.has(from) && !inside.has(to));
    const isWhole = group.every((one) => onTheWay.some(({ from, to }) => to === one && inside.has(from)));
    return isWhole && out.length > 0 ? [out] : [];
  });
}
