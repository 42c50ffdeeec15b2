import type { Alternative } from "../installation/conductor-identity.js";
import { alternativeNames } from "../installation/conductor-words.js";
import type { Installation } from "../installation/document.js";
import { electrodesOf } from "../installation/electrodes-of.js";
import type { Schedule } from "../installation/schedule.js";
import { circuitGroup } from "./circuit-group.js";
import { electrodeLinks, electrodePlaces, unnamedElectrodes } from "./electrodes.js";
import type { Group, Link, Place } from "./group.js";
import { withViolations } from "./marks.js";
import { place, placeOfEnd, placesOfLinks } from "./places.js";
import { type Slots, slotsOf } from "./slots.js";
import { boxNames, disconnectNames } from "./words.js";
import { writeDrawnSupply } from "./write.js";

type Service = NonNullable<Installation["services"]>[number];
type Derived = NonNullable<Installation["derivedSystems"]>[number];

/** What is drawn together: each service, each arrangement of a derived system, and what follows them. */
export function groupsOf(installation: Installation, schedule: Schedule): readonly Group[] {
  const slots = slotsOf(schedule);
  const groups = [
    ...(installation.services ?? []).map((one) => serviceGroup(installation, one, slots)),
    ...(installation.derivedSystems ?? []).flatMap((one) => derivedGroups(installation, one, slots)),
    ...commonGroups(installation, slots),
    circuitGroup(installation, slots),
  ];
  const rest = restGroup(slots);
  const drawn = [...groups, rest].filter(({ places }) => places.length > 0);
  return withViolations(drawn, schedule.violations);
}

function serviceGroup(installation: Installation, service: Service, slots: Slots): Group {
  const { id, utility, boxes = [], disconnects, runs, commonElectrodeConductor: common } = service;
  const electrodes = electrodesOf(installation, service);
  const source = place(utility.id, ["utility source"], "transformer");
  const boxPlaces = boxes.map((box) =>
    place(
      box.id,
      [boxNames[box.kind]],
      box.kind === "meter" ? "meter" : undefined,
      slots.take("inside", box.id),
    ),
  );
  const besidePlaces = (service.boxesWithoutSupply ?? []).map((box) =>
    place(
      box.id,
      [`${boxNames[box.kind]} without supply conductors`],
      undefined,
      slots.take("inside", box.id),
    ),
  );
  const besideLinks = (service.boxesWithoutSupply ?? []).map(({ id: to, beside }) => ({
    from: beside,
    to,
    conductors: [],
    context: "wiring without supply conductors",
  }));
  const ofAssembly = slots.take("inside", id);
  const busPlaces = (service.buses ?? []).map((bus) =>
    place(bus.id, ["bus of a switchboard"], undefined, slots.take("inside", bus.id)),
  );
  const busLinks = disconnects.flatMap(({ id: to, bus }) =>
    bus === undefined ? [] : [{ from: bus, to, conductors: [], context: "section on the bus" }],
  );
  const disconnectPlaces = disconnects.map(({ id: of, designation, amperes }, i) =>
    place(of, [`${disconnectNames[designation]}, ${amperes} A`], "disconnect", [
      ...slots.take("inside", of),
      ...(i === 0 ? ofAssembly : []),
    ]),
  );
  const impedance = impedancePlaces(id, slots, service.impedance?.id);
  const commonPlaces =
    common === undefined ? [] : [{ ...place(common.id, ["common conductor"]), isCommon: true }];
  const starts = [source, ...boxPlaces, ...busPlaces, ...disconnectPlaces, ...commonPlaces];
  const unnamed = unnamedElectrodes(starts, slots);
  const links = [
    ...runLinks(runs, slots),
    ...impedanceLinks(impedance, utility.id, id, slots),
    ...[...disconnects, ...(service.buses ?? [])].flatMap((one) => tapLinks(one.id, slots)),
    ...electrodeLinks(electrodes, slots, { system: id }),
    ...unnamed.links,
    ...busLinks,
    ...besideLinks,
  ];
  const places = [
    ...starts,
    ...besidePlaces,
    ...impedance,
    ...electrodePlaces(electrodes),
    ...unnamed.places,
  ];
  return { id, title: `Service ${id}`, places: placesOfLinks(places, links), links };
}

function derivedGroups(installation: Installation, system: Derived, slots: Slots): readonly Group[] {
  const { id, source, disconnects, runs } = system;
  const found = slots.alternatives([
    source.id,
    ...disconnects.map((one) => one.id),
    ...runs.map((one) => one.id),
  ]);
  const alternatives = found.length === 0 ? [undefined] : found;
  return alternatives
    .map((alternative) => derivedGroup(installation, system, slots, alternative))
    .map((group, i) => {
      const alternative = alternatives[i];
      return {
        ...group,
        title: `Derived system ${id}${alternative === undefined ? "" : `: ${alternativeNames[alternative]}`}`,
      };
    });
}

function derivedGroup(
  installation: Installation,
  system: Derived,
  slots: Slots,
  alternative: Alternative | undefined,
): Group {
  const { id, source, disconnects, runs, commonElectrodeConductor: common } = system;
  const electrodes = electrodesOf(installation, system).filter(({ from }) => from !== common?.id);
  const kind = source.kind === "other" ? "source" : source.kind;
  const starts = [
    place(source.id, [kind], kind, slots.take("inside", source.id, alternative)),
    ...disconnects.map(({ id: of, amperes }) =>
      place(of, [`disconnect, ${amperes} A`], "disconnect", slots.take("inside", of, alternative)),
    ),
  ];
  const impedance = impedancePlaces(id, slots, system.impedance?.id);
  const unnamed = unnamedElectrodes(starts, slots);
  const links = [
    ...runLinks(runs, slots, alternative),
    ...impedanceLinks(impedance, source.id, id, slots),
    ...starts.flatMap(({ key }) => tapLinks(key, slots, alternative)),
    ...electrodeLinks(electrodes, slots, { system: id, alternative }),
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
  return { id, title: id, places: placesOfLinks(places, links), links };
}

/** Common electrode conductors of derived systems, with their electrodes; the taps are on the sheets of the systems. */
function commonGroups(installation: Installation, slots: Slots): readonly Group[] {
  const { derivedSystems = [] } = installation;
  const ids = [...new Set(derivedSystems.flatMap((one) => one.commonElectrodeConductor?.id ?? []))];
  return ids.flatMap((id) => {
    const electrodes = derivedSystems.flatMap((one) =>
      one.commonElectrodeConductor?.id === id ? electrodesOf(installation, one) : [],
    );
    const found = slots.alternatives([id, ...electrodes.map((one) => one.id)]);
    const alternatives = found.length === 0 ? [undefined] : found;
    return alternatives.map((alternative) => {
      const bar = place(id, ["common conductor"]);
      const unnamed = unnamedElectrodes([bar], slots, alternative);
      const links = [...electrodeLinks(electrodes, slots, { alternative }), ...unnamed.links];
      const places = [bar, ...electrodePlaces(electrodes), ...unnamed.places];
      const arranged = alternative === undefined ? "" : `: ${alternativeNames[alternative]}`;
      const title = `Common electrode conductor ${id}${arranged}`;
      return { title, places: placesOfLinks(places, links), links };
    });
  });
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
  const drawn = new Set<string>();
  return runs.map(({ id, from, to, supply, in: shared }) => {
    const conductors = [...slots.take("along", id, alternative)];
    if (shared !== undefined && !drawn.has(shared)) {
      // What bonds a raceway that several runs share is drawn with the first of them.
      drawn.add(shared);
      conductors.push(
        ...slots.take("along", shared, alternative),
        ...slots.take("inside", shared, alternative),
      );
    }
    const within = shared === undefined ? "" : `, in ${shared}`;
    return { id, from, to, conductors, context: `${id}: ${writeDrawnSupply(supply)}${within}` };
  });
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

function impedancePlaces(system: string, slots: Slots, name?: string): readonly Place[] {
  const inside = slots.take("from-impedance", system);
  if (inside.length === 0) return [];
  return [
    name === undefined
      ? placeOfEnd({ kind: "impedance", of: system }, "", inside)
      : place(name, ["grounding impedance"], undefined, inside),
  ];
}
