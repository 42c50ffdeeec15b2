import type { Drawing } from "../installation/document.js";
import type { Schedule } from "../installation/schedule.js";
import type { Group, Link, Marked, Place } from "./group.js";
import { place, placesOfLinks } from "./places.js";
import { impedanceKey, type Slots, slotsOf, subjectOf } from "./slots.js";
import { writeDrawnSupply } from "./write.js";

type Service = NonNullable<Drawing["services"]>[number];
type Derived = NonNullable<Drawing["derivedSystems"]>[number];
type Electrodes = Service["electrodes"];

/** What is drawn together: each service, each arrangement of a derived system, and what follows them. */
export function groupsOf(drawing: Drawing, schedule: Schedule): readonly Group[] {
  const slots = slotsOf(schedule);
  const groups = [
    ...(drawing.services ?? []).map((one) => serviceGroup(one, slots)),
    ...(drawing.derivedSystems ?? []).flatMap((one) => derivedGroups(one, slots)),
    ...commonGroups(drawing, slots),
    circuitGroup(drawing, slots),
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
    place(box.id, [box.kind], box.kind === "meter" ? "meter" : undefined, slots.take("inside", box.id)),
  );
  const ofAssembly = slots.take("inside", id);
  const disconnectPlaces = disconnects.map(({ id: of, designation, amperes }, i) =>
    place(of, [`${designation}, ${amperes} A`], "disconnect", [
      ...slots.take("inside", of),
      ...(i === 0 ? ofAssembly : []),
    ]),
  );
  const commonPlaces =
    common === undefined ? [] : [{ ...place(common.id, ["common conductor"]), isCommon: true }];
  const starts = [source, ...boxPlaces, ...disconnectPlaces, ...commonPlaces];
  const links = [
    ...runLinks(runs, slots),
    ...impedanceLinks(id, utility.id, slots),
    ...disconnects.flatMap((one) => tapLinks(one.id, slots)),
    ...electrodeLinks(electrodes, slots),
    ...starts.flatMap(({ key }) => unnamedElectrodeLinks(key, slots)),
  ];
  const places = [...starts, ...impedancePlaces(id, slots), ...electrodePlaces(electrodes)];
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
        title: `Derived system ${id}${alternative === undefined ? "" : `: ${alternative}`}`,
      };
    });
}

function derivedGroup(system: Derived, slots: Slots, alternative: string | undefined): Group {
  const { id, source, disconnects, runs, commonElectrodeConductor: common } = system;
  const electrodes = (system.electrodes ?? []).filter(({ from }) => from !== common?.id);
  const kind = source.kind === "other" ? "source" : source.kind;
  const starts = [
    place(source.id, [kind], kind, slots.take("inside", source.id, alternative)),
    ...disconnects.map(({ id: of, amperes }) =>
      place(of, [`disconnect, ${amperes} A`], "disconnect", slots.take("inside", of, alternative)),
    ),
  ];
  const links = [
    ...runLinks(runs, slots, alternative),
    ...impedanceLinks(id, source.id, slots),
    ...starts.flatMap(({ key }) => tapLinks(key, slots, alternative)),
    ...electrodeLinks(electrodes, slots, alternative),
    ...starts.flatMap(({ key }) => unnamedElectrodeLinks(key, slots)),
  ];
  const commonPlaces =
    common === undefined ? [] : [{ ...place(common.id, ["common conductor"]), isCommon: true }];
  const places = [...starts, ...commonPlaces, ...impedancePlaces(id, slots), ...electrodePlaces(electrodes)];
  return { title: id, places: placesOfLinks(places, links), links };
}

/** Common electrode conductors of derived systems, with their electrodes; the taps are on the sheets of the systems. */
function commonGroups({ derivedSystems = [] }: Drawing, slots: Slots): readonly Group[] {
  const ids = [...new Set(derivedSystems.flatMap((one) => one.commonElectrodeConductor?.id ?? []))];
  return ids.map((id) => {
    const electrodes = derivedSystems.flatMap((one) =>
      one.commonElectrodeConductor?.id === id ? (one.electrodes ?? []) : [],
    );
    const links = [...electrodeLinks(electrodes, slots), ...unnamedElectrodeLinks(id, slots)];
    const places = [place(id, ["common conductor"]), ...electrodePlaces(electrodes)];
    return { title: `Common electrode conductor ${id}`, places: placesOfLinks(places, links), links };
  });
}

/** Feeders and branch circuits, generators, and the electrodes of the buildings that they supply. */
function circuitGroup({ circuits = [], generators = [], buildings = [] }: Drawing, slots: Slots): Group {
  const endOf = (id: string): string => circuits.find((one) => one.id === id)?.to ?? id;
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
      ...unnamedElectrodeLinks(id, slots),
    ]),
  ];
  const places = [
    ...generators.map(({ id }) => place(id, ["generator"], "generator")),
    ...buildings.flatMap(({ id, electrodes }) => [place(id, ["building"]), ...electrodePlaces(electrodes)]),
  ];
  return { title: "Circuits, generators and buildings", places: placesOfLinks(places, links), links };
}

/** Metal parts and terminations, and whatever no other sheet shows, from one end to the other as the schedule says. */
function restGroup(slots: Slots): Group {
  const links = slots.left().map((one): Link => {
    const { from, to } = one.conductor;
    const isOfMetal = one.conductor.result.purpose !== "electrode-system";
    return { from: isOfMetal ? to : from, to: isOfMetal ? from : to, conductors: [one] };
  });
  return { title: "Metal parts and terminations", places: placesOfLinks([], links), links };
}

function runLinks(runs: Service["runs"], slots: Slots, alternative?: string): readonly Link[] {
  return runs.map(({ id, from, to, supply }) => ({
    from,
    to,
    conductors: slots.take("along", id, alternative),
    context: `${id}: ${writeDrawnSupply(supply)}`,
  }));
}

/** The conductors to each electrode, from wherever they start in the arrangement that is drawn. */
function electrodeLinks(electrodes: Electrodes = [], slots: Slots, alternative?: string): readonly Link[] {
  return electrodes.flatMap(({ id, from }) => {
    const taken = slots.take("to-electrode", id, alternative);
    const starts = new Set(taken.map(({ conductor }) => conductor.from));
    return [...(starts.size === 0 ? [from] : starts)].map((start) => ({
      from: start,
      to: id,
      conductors: taken
        .filter(({ conductor }) => conductor.from === start)
        .flatMap((one) => [one, ...slots.take("around", subjectOf(one.conductor), alternative)]),
    }));
  });
}

function electrodePlaces(electrodes: Electrodes = []): readonly Place[] {
  return electrodes.map(({ id, kind }) => place(id, [kind], kind === "structural-metal" ? "frame" : "earth"));
}

function unnamedElectrodeLinks(from: string, slots: Slots): readonly Link[] {
  return linkIfAny(from, `${from}\nelectrodes`, slots.take("to-electrodes", from));
}

function tapLinks(from: string, slots: Slots, alternative?: string): readonly Link[] {
  return slots
    .take("tap", from, alternative)
    .map((tap) => ({ from, to: tap.conductor.to, conductors: [tap] }));
}

function impedanceLinks(system: string, source: string, slots: Slots): readonly Link[] {
  return linkIfAny(source, impedanceKey(system), slots.take("to-impedance", system));
}

function impedancePlaces(system: string, slots: Slots): readonly Place[] {
  const inside = slots.take("inside", impedanceKey(system));
  return inside.length === 0 ? [] : [place(impedanceKey(system), ["grounding impedance"], undefined, inside)];
}

function linkIfAny(from: string, to: string, conductors: readonly Marked[]): readonly Link[] {
  return conductors.length === 0 ? [] : [{ from, to, conductors }];
}
