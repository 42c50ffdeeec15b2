import type { Installation } from "../installation/document.js";
import { electrodesOf } from "../installation/electrodes-of.js";
import { electrodeLinks, electrodePlaces, unnamedElectrodes } from "./electrodes.js";
import type { Group, Link } from "./group.js";
import { place, placesOfLinks } from "./places.js";
import type { Slots } from "./slots.js";
import { transferNames } from "./words.js";
import { writeDrawnSupply } from "./write.js";

/** Feeders and branch circuits, generators, and the electrodes of the buildings that they supply. */
export function circuitGroup(installation: Installation, slots: Slots): Group {
  const { circuits = [], generators = [], buildings = [], derivedSystems = [] } = installation;
  const { transferSwitches = [], loadSideJumpers = [] } = installation;
  const endOf = (id: string): string => circuits.find((one) => one.id === id)?.to ?? id;
  const unnamed = unnamedElectrodes(
    [...generators, ...buildings].map(({ id }) => place(id, [])),
    slots,
  );
  const links: Link[] = [
    ...circuits.map(({ id, from, to, conductors }) => ({
      id,
      from: endOf(from),
      to,
      conductors: slots.take("along", id),
      context: conductors === undefined ? `circuit ${id}` : `circuit ${id}: ${writeDrawnSupply(conductors)}`,
    })),
    ...generators.map(({ id, to, supply }) => ({
      id,
      from: id,
      to,
      conductors: slots.take("along", id),
      context: writeDrawnSupply(supply),
    })),
    ...derivedSystems.flatMap(({ source, transferSwitch }) =>
      transferSwitch === undefined
        ? []
        : [{ from: source.id, to: transferSwitch, conductors: [], context: "supplies" }],
    ),
    ...loadSideJumpers.map(({ id, from, to }) => ({ from, to, conductors: slots.take("along", id) })),
    ...buildings.flatMap((one) => [
      ...supplyLink(one.id, one.circuit === undefined ? one.disconnect : endOf(one.circuit), slots),
      ...electrodeLinks(electrodesOf(installation, one), slots),
    ]),
    ...unnamed.links,
  ];
  const places = [
    ...generators.map(({ id }) => place(id, ["generator"], "generator", slots.take("inside", id))),
    ...transferSwitches.map(({ id, groundedConductor: how }) =>
      place(id, ["transfer switch", transferNames[how]]),
    ),
    ...buildings.flatMap((one) => [
      place(one.id, ["building"], undefined, slots.take("inside", one.id)),
      ...electrodePlaces(electrodesOf(installation, one)),
    ]),
    ...unnamed.places,
  ];
  return { title: "Circuits, generators and buildings", places: placesOfLinks(places, links), links };
}

/** From what supplies a building to it, with what is not run there. */
function supplyLink(id: string, from: string | undefined, slots: Slots): readonly Link[] {
  const conductors = slots.take("along", id);
  if (from === undefined || (from === id && conductors.length === 0)) return [];
  return [{ from, to: id, conductors, context: "supplies" }];
}
