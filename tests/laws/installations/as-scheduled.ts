import type { Installation, ScheduledConductor } from "bondmil";
import { type Built, idAt } from "./built.js";
import { placeOfEnd } from "./electrodes.js";
import type { Installed } from "./parts.js";

/** Which alternative of the arrangements that a system compares is built. */
export type Chosen = (conductor: ScheduledConductor) => boolean;

/** What was found of a conductor of the schedule, whose id it goes by here. */
export interface Listed {
  readonly id: string;
  readonly found: Installed;
}

/** Everything that the schedule names, found exactly so. */
export function listedAsScheduled({ schedule }: Built, isChosen: Chosen): readonly Listed[] {
  return schedule.conductors.filter(isChosen).flatMap((line): Listed[] => {
    const { id, role, subject, place, part, from, quantity, result } = line;
    const { outcome, material, requiredArea } = result;
    if (quantity === 0) return [];
    const form = outcome.kind === "conductor" ? { size: outcome.size } : { busArea: requiredArea };
    const isAlone =
      schedule.conductors.filter((one) => one.role === role && one.subject === subject).length === 1;
    const at = place ?? (isAlone && part !== "tap" ? undefined : idAt(from));
    const found = { role, of: subject, ...(at !== undefined && { at }), ...form, material };
    return [{ id, found: quantity > 1 ? { ...found, quantity } : found }];
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
      new Set([source, ...disconnects, ...runs, ...electrodes].flatMap(({ id }) => id ?? [])),
  );
  return (conductor) => {
    const { subject, from, to } = conductor;
    const ofSystem = derivedSystems.findIndex(({ id }) => id === conductor.system);
    const i =
      ofSystem >= 0
        ? ofSystem
        : own.findIndex((ids) => [subject, placeOfEnd(from), placeOfEnd(to)].some((id) => ids.has(id)));
    return oneAlternative(jumperAtSource === (i % 2 === 0))(conductor);
  };
}
