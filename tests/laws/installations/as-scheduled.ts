import { endName, type Installation, type ScheduledConductor } from "bondmil";
import type { Built } from "./built.js";
import type { Installed } from "./parts.js";

/** Which alternative of the arrangements that a system compares is built. */
export type Chosen = (conductor: ScheduledConductor) => boolean;

/** Everything that the schedule names, installed exactly so; what no one conductor can be is left out. */
export function installedAsScheduled({ schedule }: Built, isChosen: Chosen): readonly Installed[] {
  return schedule.conductors.filter(isChosen).flatMap(({ id, quantity, result }): Installed[] => {
    const { outcome, material } = result;
    if (outcome.kind !== "conductor" || quantity === 0) return [];
    return [{ conductor: id, size: outcome.size, material, ...(quantity > 1 && { quantity }) }];
  });
}

/** One alternative throughout, by its place among those that there are. */
export function oneAlternative(jumperAtSource: boolean): Chosen {
  const wanted = jumperAtSource ? "jumper-at-source" : "jumper-in-each-enclosure";
  return ({ alternative }) => alternative === undefined || alternative === wanted;
}

/** An alternative of its own for every other derived system. */
export function eachItsOwn({ derivedSystems = [] }: Installation, jumperAtSource: boolean): Chosen {
  const own = derivedSystems.map(
    ({ source, disconnects, runs, electrodes = [] }) =>
      new Set([source, ...disconnects, ...runs, ...electrodes].map(({ id }) => id)),
  );
  return (conductor) => {
    const { subject, from, to } = conductor;
    const i = own.findIndex((ids) => [subject, endName(from), endName(to)].some((id) => ids.has(id)));
    return oneAlternative(jumperAtSource === (i % 2 === 0))(conductor);
  };
}
