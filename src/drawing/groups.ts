import type { Alternative, ConductorEnd } from "../installation/conductor-identity.js";
import { alternativeNames } from "../installation/conductor-words.js";
import type { Installation } from "../installation/document.js";
import type { Schedule } from "../installation/schedule.js";
import type { Group, Link, Place } from "./group.js";
import { place, placeOfEnd, placesOfLinks } from "./places.js";
import { aroundOf, type Slots, slotsOf } from "./slots.js";
import { boxNames, disconnectNames, electrodeNames } from "./words.js";
import { writeDrawnSupply } from "./write.js";

type Service = NonNullable<Installation["services"]>[number];
type Derived = NonNullable<Installation["derivedSystems"]>[number];
type Electrodes = Service["electrodes"];

/** What is drawn together: each service, each arrangement of a derived system, and what follows them. */
export function groupsOf(installation: Installation, schedule: Schedule): readonly Group[] {
  const slots = slotsOf(schedule);
  const groups = [
    ...(installation.services ?? []).map((one) => serviceGroup(one, slots)),
    ...(installation.derivedSystems ?? []).flatMap((one) => derivedGroups(one, slots)),
    ...commonGroups(installation, slots),
    circuitGroup(installation, slots),
  ];
  const rest = restGroup(slots);
  return [...groups, rest].filter(({ places }) => places.length > 0);
}

function serviceGroup(service: Service, slots: Slots): Group {
  const {
    id,
    utility,
    boxes = [],
    disconnects,
    runs,
    electrodes,
    commonElectrodeConductor: common,
  } = service;
  const source = place(utility.id, ["utility source"], "transformer");
  const boxPlaces = boxes.map((box) =>
    place(
      box.id,
      [boxNames[box.kind]],
      box.kind === "meter" ? "meter" : undefined,
      slots.take("inside", box.id),
    ),
  );
  const ofAssembly = slots.take("inside", id);
  const disconnectPlaces = disconnects.map(({ id: of, designation, amperes }, i) =>
    place(of, [`${disconnectNames[designation]}, ${amperes} A`], "disconnect", [
      ...slots.take("inside", of),
      ...(i === 0 ? ofAssembly : []),
    ]),
  );
  const impedance = impedancePlaces(id, slots);
  const commonPlaces =
    common === undefined ? [] : [{ ...place(common.id, ["common conductor"]), isCommon: true }];
  const starts = [source, ...boxPlaces, ...disconnectPlaces, ...commonPlaces];
  const unnamed = unnamedElectrodes(starts, slots);
  const links = [
    ...runLinks(runs, slots),
    ...impedanceLinks(impedance, utility.id, id, slots),
    ...disconnects.flatMap((one) => tapLinks(one.id, slots)),
    ...electrodeLinks(electrodes, slots),
    ...unnamed.links,
  ];
  const places = [...starts, ...impedance, ...electrodePlaces(electrodes), ...unnamed.places];
  return { title: `Service ${id}`, places: placesOfLinks(places, links), links };
}

function derivedGroups(system: Derived, slots: Slots): readonly Group[] {
  const { id, source, disconnects, runs } = system;
  const found = slots.alternatives([
    source.id,
    ...disconnects.map((one) => one.id),
    ...runs.map((one) => one.id),
  ]);
  const alternatives = found.length === 0 ? [undefined] : found;
  return alternatives
    .map((alternative) => derivedGroup(system, slots, alternative))
    .map((group, i) => {
      const alternative = alternatives[i];
      return {
        ...group,
        title: `Derived system ${id}${alternative === undefined ? "" : `: ${alternativeNames[alternative]}`}`,
      };
    });
}

function derivedGroup(system: Derived, slots: Slots, alternative: Alternative | undefined): Group {
  const { id, source, disconnects, runs, commonElectrodeConductor: common } = system;
  const electrodes = (system.electrodes ?? []).filter(({ from }) => from !== common?.id);
  const kind = source.kind === "other" ? "source" : source.kind;
  const starts = [
    place(source.id, [kind], kind, slots.take("inside", source.id, alternative)),
    ...disconnects.map(({ id: of, amperes }) =>
      place(of, [`disconnect, ${amperes} A`], "disconnect", slots.take("inside", of, alternative)),
    ),
  ];
  const impedance = impedancePlaces(id, slots);
  const unnamed = unnamedElectrodes(starts, slots);
  const links = [
    ...runLinks(runs, slots, alternative),
    ...impedanceLinks(impedance, source.id, id, slots),
    ...starts.flatMap(({ key }) => tapLinks(key, slots, alternative)),
    ...electrodeLinks(electrodes, slots, alternative),
    ...unnamed.links,
  ];
  const commonPlaces =
    common === undefined ? [] : [{ ...place(common.id, ["common conductor"]), isCommon: true }];
  const places = [
    ...starts,
    ...commonPlaces,
    ...impedance,
    ...electrodePlaces(electrodes),
    ...unnamed.places,
  ];
  return { title: id, places: placesOfLinks(places, links), links };
}

/** Common electrode conductors of derived systems, with their electrodes; the taps are on the sheets of the systems. */
function commonGroups({ derivedSystems = [] }: Installation, slots: Slots): readonly Group[] {
  const ids = [...new Set(derivedSystems.flatMap((one) => one.commonElectrodeConductor?.id ?? []))];
  return ids.map((id) => {
    const electrodes = derivedSystems.flatMap((one) =>
      one.commonElectrodeConductor?.id === id ? (one.electrodes ?? []) : [],
    );
    const bar = place(id, ["common conductor"]);
    const unnamed = unnamedElectrodes([bar], slots);
    const links = [...electrodeLinks(electrodes, slots), ...unnamed.links];
    const places = [bar, ...electrodePlaces(electrodes), ...unnamed.places];
    return { title: `Common electrode conductor ${id}`, places: placesOfLinks(places, links), links };
  });
}

/** Feeders and branch circuits, generators, and the electrodes of the buildings that they supply. */
function circuitGroup({ circuits = [], generators = [], buildings = [] }: Installation, slots: Slots): Group {
  const endOf = (id: string): string => circuits.find((one) => one.id === id)?.to ?? id;
  const unnamed = unnamedElectrodes(
    buildings.map(({ id }) => place(id, [])),
    slots,
  );
  const links: Link[] = [
    ...circuits.map(({ id, from, to, conductors }) => ({
      from: endOf(from),
      to,
      conductors: slots.take("along", id),
      context: conductors === undefined ? `circuit ${id}` : `circuit ${id}: ${writeDrawnSupply(conductors)}`,
    })),
    ...generators.map(({ id, to, supply }) => ({
      from: id,
      to,
      conductors: slots.take("along", id),
      context: writeDrawnSupply(supply),
    })),
    ...buildings.flatMap(({ id, circuit, electrodes }) => [
      ...(endOf(circuit) === id
        ? []
        : [{ from: endOf(circuit), to: id, conductors: [], context: "supplies" }]),
      ...electrodeLinks(electrodes, slots),
    ]),
    ...unnamed.links,
  ];
  const places = [
    ...generators.map(({ id }) => place(id, ["generator"], "generator")),
    ...buildings.flatMap(({ id, electrodes }) => [place(id, ["building"]), ...electrodePlaces(electrodes)]),
    ...unnamed.places,
  ];
  return { title: "Circuits, generators and buildings", places: placesOfLinks(places, links), links };
}

/** Metal parts and terminations, and whatever no other sheet shows, from one end to the other as the schedule says. */
function restGroup(slots: Slots): Group {
  const ends = slots.left().map((one) => {
    const [from, to] = [placeOfEnd(one.conductor.from), placeOfEnd(one.conductor.to)];
    const isOfMetal = one.conductor.result.purpose !== "electrode-system";
    return { from: isOfMetal ? to : from, to: isOfMetal ? from : to, conductors: [one] };
  });
  const links = ends.map(({ from, to, conductors }): Link => ({ from: from.key, to: to.key, conductors }));
  const places = new Map(ends.flatMap(({ from, to }) => [from, to]).map((one) => [one.key, one]));
  return { title: "Metal parts and terminations", places: [...places.values()], links };
}

function runLinks(runs: Service["runs"], slots: Slots, alternative?: Alternative): readonly Link[] {
  return runs.map(({ id, from, to, supply }) => ({
    from,
    to,
    conductors: slots.take("along", id, alternative),
    context: `${id}: ${writeDrawnSupply(supply)}`,
  }));
}

/** The conductors to each electrode, from wherever they start in the arrangement that is drawn. */
function electrodeLinks(
  electrodes: Electrodes = [],
  slots: Slots,
  alternative?: Alternative,
): readonly Link[] {
  return electrodes.flatMap(({ id, from }) => {
    const taken = slots.take("to-electrode", id, alternative);
    const startOf = (end: ConductorEnd): string => placeOfEnd(end).key;
    const starts = new Set(taken.map(({ conductor }) => startOf(conductor.from)));
    return [...(starts.size === 0 ? [from] : starts)].map((start) => ({
      from: start,
      to: id,
      conductors: taken
        .filter(({ conductor }) => startOf(conductor.from) === start)
        .flatMap((one) => [one, ...slots.take("around", aroundOf(one.conductor), alternative)]),
    }));
  });
}

function electrodePlaces(electrodes: Electrodes = []): readonly Place[] {
  return electrodes.map(({ id, kind }) =>
    place(id, [electrodeNames[kind]], kind === "structural-metal" ? "frame" : "earth"),
  );
}

/** The electrodes of places whose drawing does not name them. */
function unnamedElectrodes(
  starts: readonly Place[],
  slots: Slots,
): { readonly places: readonly Place[]; readonly links: readonly Link[] } {
  const found = starts.flatMap(({ key: from }) => {
    const conductors = slots.take("to-electrodes", from);
    return conductors.length === 0
      ? []
      : [{ at: placeOfEnd({ kind: "electrodes" }, from), from, conductors }];
  });
  return {
    places: found.map(({ at }) => at),
    links: found.map(({ at, from, conductors }) => ({ from, to: at.key, conductors })),
  };
}

function tapLinks(from: string, slots: Slots, alternative?: Alternative): readonly Link[] {
  return slots
    .take("tap", from, alternative)
    .map((tap) => ({ from, to: placeOfEnd(tap.conductor.to).key, conductors: [tap] }));
}

function impedanceLinks(
  places: readonly Place[],
  source: string,
  system: string,
  slots: Slots,
): readonly Link[] {
  const conductors = slots.take("to-impedance", system);
  return places.map(({ key }) => ({ from: source, to: key, conductors }));
}

function impedancePlaces(system: string, slots: Slots): readonly Place[] {
  const inside = slots.take("from-impedance", system);
  return inside.length === 0 ? [] : [placeOfEnd({ kind: "impedance", of: system }, "", inside)];
}
