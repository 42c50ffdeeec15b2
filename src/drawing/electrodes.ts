import type { Alternative, ConductorEnd } from "../installation/conductor-identity.js";
import type { DrawnElectrode } from "../installation/electrodes-of.js";
import type { Link, Place } from "./group.js";
import { place, placeOfEnd } from "./places.js";
import { aroundOf, type Slots } from "./slots.js";
import { electrodeNames, electrodeSymbols } from "./words.js";

type Electrodes = readonly DrawnElectrode[];

/** Whose conductors to electrodes are drawn: those of a system, or those that start where the electrodes of a list say, or where it is supplied. */
interface Whose {
  readonly system?: string;
  readonly suppliedFrom?: string | undefined;
  readonly alternative?: Alternative | undefined;
}

/** The conductors to each electrode, from wherever they start in the arrangement that is drawn. */
export function electrodeLinks(
  electrodes: Electrodes,
  slots: Slots,
  { system, suppliedFrom, alternative }: Whose = {},
): readonly Link[] {
  const startOf = (end: ConductorEnd): string => placeOfEnd(end).key;
  return [...new Set(electrodes.map(({ id }) => id))].flatMap((id) => {
    const drawn = electrodes.filter((one) => one.id === id).map(({ from }) => from);
    const taken = slots.take("to-electrode", id, alternative, (one) =>
      system === undefined ? [...drawn, suppliedFrom].includes(startOf(one.from)) : one.system === system,
    );
    const starts = new Set(taken.map(({ conductor }) => startOf(conductor.from)));
    return [...(starts.size === 0 ? drawn : starts)].map((start) => ({
      from: start,
      to: id,
      conductors: taken
        .filter(({ conductor }) => startOf(conductor.from) === start)
        .flatMap((one) => [one, ...slots.take("around", aroundOf(one.conductor), alternative)]),
    }));
  });
}

/** The electrodes of a list that hang on something, at first or second hand. */
export function hangingFrom(electrodes: Electrodes, id: string): Electrodes {
  const reached = new Set([id]);
  for (const one of reached) for (const { id: next, from } of electrodes) if (from === one) reached.add(next);
  return electrodes.filter(({ from }) => reached.has(from));
}

/** The electrodes that several conductors reach, each once. */
export function electrodePlaces(electrodes: Electrodes): readonly Place[] {
  const each = new Map(electrodes.map(({ id, kind }) => [id, kind]));
  return [...each].map(([id, kind]) =>
    place(id, [electrodeNames[kind]], { kind: "electrode", symbol: electrodeSymbols[kind] }),
  );
}

/** The electrodes of places whose drawing does not name them. */
export function unnamedElectrodes(
  starts: readonly Place[],
  slots: Slots,
  alternative?: Alternative,
): { readonly places: readonly Place[]; readonly links: readonly Link[] } {
  const found = starts.flatMap(({ key: from }) => {
    const conductors = slots.take("to-electrodes", from, alternative);
    return conductors.length === 0
      ? []
      : [{ at: placeOfEnd({ kind: "electrodes" }, "electrode", from), from, conductors }];
  });
  return {
    places: found.map(({ at }) => at),
    links: found.map(({ at, from, conductors }) => ({ from, to: at.key, conductors })),
  };
}
