import type { Installation } from "../installation/document.js";
import { electrodesOf } from "../installation/electrodes-of.js";
import { electrodeLinks, electrodePlaces, unnamedElectrodes } from "./electrodes.js";
import type { Link, Marked, Place } from "./group.js";
import { place } from "./places.js";
import type { Slots } from "./slots.js";
import { transferNames, wiringNames } from "./words.js";
import { shortMaterials, writeDrawnSupply, writeLength } from "./write.js";

/** What follows the systems, before it is known on whose sheet it is drawn. */
export interface Parts {
  readonly places: readonly Place[];
  readonly links: readonly Link[];
}

/** Feeders and branch circuits, generators, and the electrodes of the buildings that they supply. */
export function circuitParts(installation: Installation, slots: Slots): Parts {
  const { circuits = [], generators = [], buildings = [] } = installation;
  const { transferSwitches = [], loadSideJumpers = [] } = installation;
  const ends = new Map(circuits.map(({ id, to }) => [id, to]));
  const endOf = (id: string): string => ends.get(id) ?? id;
  const unnamed = unnamedElectrodes(
    [...generators, ...buildings].map(({ id }) => place(id, [])),
    slots,
  );
  const links: readonly Link[] = [
    ...circuits.map((one) => {
      const conductors = slots.take("along", one.id);
      return {
        id: one.id,
        from: endOf(one.from),
        to: one.to,
        conductors,
        context: writeCircuit(one),
        ...(conductors.some(isReplacedByRaceway) && ({ isInMetal: true, shared: ["metal"] } as const)),
      };
    }),
    ...generators.map(({ id, to, supply }) => ({
      id,
      from: id,
      to,
      conductors: slots.take("along", id),
      context: shortMaterials(writeDrawnSupply(supply)),
    })),
    ...loadSideJumpers.map(({ id, from, to }) => ({ from, to, conductors: slots.take("along", id) })),
    ...buildings.flatMap((one) => {
      const suppliedFrom = one.circuit === undefined ? one.disconnect : endOf(one.circuit);
      return [
        ...supplyLink(one.id, suppliedFrom, slots),
        ...electrodeLinks(electrodesOf(installation, one), slots, { suppliedFrom }),
      ];
    }),
    ...unnamed.links,
  ];
  const places = [
    ...generators.map(({ id }) =>
      place(id, ["generator"], { symbol: "generator" }, slots.take("inside", id)),
    ),
    ...transferSwitches.map(({ id, groundedConductor: how }) =>
      place(id, ["transfer switch", transferNames[how]]),
    ),
    ...buildings.flatMap((one) => [
      place(one.id, ["building"], {}, slots.take("inside", one.id)),
      ...electrodePlaces(electrodesOf(installation, one)),
    ]),
    ...unnamed.places,
  ];
  return { places, links };
}

/** Whether the metal raceway serves as the equipment grounding conductor. */
function isReplacedByRaceway({ conductor: { result } }: Marked): boolean {
  const { outcome } = result;
  return outcome.kind === "not-required" && outcome.why === "metal-raceway-serves";
}

function writeCircuit({
  id,
  conductors,
  wiring,
  raceways,
  lengthFeet,
}: NonNullable<Installation["circuits"]>[number]): string {
  const what = conductors === undefined ? "" : `: ${shortMaterials(writeDrawnSupply(conductors))}`;
  const many = raceways === undefined || raceways === 1 ? "" : `${raceways} `;
  return `${id}${what}, ${many}${wiringNames[wiring]}${writeLength(lengthFeet)}`;
}

/** From what supplies a building to it, with what is not run there. */
function supplyLink(id: string, from: string | undefined, slots: Slots): readonly Link[] {
  const conductors = slots.take("along", id);
  if (from === undefined || (from === id && conductors.length === 0)) return [];
  return [{ from, to: id, conductors, context: "supplies", shared: ["metal"] }];
}
