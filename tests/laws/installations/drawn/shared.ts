import type { Installation } from "bondmil";
import type { Dice } from "../dice.js";
import { endOf, listsOf } from "../electrodes.js";
import type { Derived, ElectrodeEntry, Service } from "../parts.js";

/** Some systems with a further conductor to an electrode, pipe or frame that is named elsewhere. */
export function withSharedElectrodes(dice: Dice, installation: Installation): Installation {
  if (dice.chance(60)) return installation;
  const { services = [], derivedSystems = [], piping = [], structuralMetal = [] } = installation;
  const named = listsOf(installation).flatMap((list) =>
    (list.electrodes ?? []).flatMap(({ id }) => id ?? []),
  );
  const metal = [...piping.filter(({ kind }) => kind === "water"), ...structuralMetal].map(({ id }) => id);
  const ends = [...named, ...metal, ...metal];
  if (ends.length === 0) return installation;
  const put = <T extends Service | Derived>(system: T, places: readonly string[]): T => {
    if (dice.chance(50)) return system;
    const further: ElectrodeEntry = { electrode: dice.pick(ends), from: dice.pick(places) };
    const { electrodes = [] } = system;
    const isDrawn = electrodes.some((one) => endOf(one) === further.electrode && one.from === further.from);
    return isDrawn ? system : { ...system, electrodes: [...electrodes, further] };
  };
  const drawn: Installation = {
    ...installation,
    ...(installation.services && {
      services: services.map((one) =>
        put(
          one,
          [...(one.boxes ?? []), ...one.disconnects].map(({ id }) => id),
        ),
      ),
    }),
    ...(installation.derivedSystems && {
      derivedSystems: derivedSystems.map((one) =>
        put(
          one,
          [one.source, one.source, ...one.disconnects].map(({ id }) => id),
        ),
      ),
    }),
  };
  const reached = new Set(listsOf(drawn).flatMap((list) => (list.electrodes ?? []).map(endOf)));
  const unsaid = <T extends { readonly id: string }>(one: T): T => {
    if (!reached.has(one.id)) return one;
    const { isElectrode: _, ...rest } = one as T & { readonly isElectrode?: boolean };
    return rest as T;
  };
  return {
    ...drawn,
    ...(installation.piping && { piping: piping.map(unsaid) }),
    ...(installation.structuralMetal && { structuralMetal: structuralMetal.map(unsaid) }),
  };
}
