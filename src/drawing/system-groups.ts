import type { Alternative } from "../installation/conductor-identity.js";
import { alternativeNames } from "../installation/conductor-words.js";
import type { Installation } from "../installation/document.js";
import { electrodesOf } from "../installation/electrodes-of.js";
import { electrodeLinks, electrodePlaces, hangingFrom, unnamedElectrodes } from "./electrodes.js";
import type { Group, Link, Place } from "./group.js";
import { place, placeOfEnd, placesOfLinks } from "./places.js";
import type { Slots } from "./slots.js";
import { barNames, boxNames, disconnectNames, windingsOf } from "./words.js";
import { writeRun } from "./write.js";

type Service = NonNullable<Installation["services"]>[number];
type Derived = NonNullable<Installation["derivedSystems"]>[number];

/** A service from the utility's source to its disconnects and electrodes. */
export function serviceGroup(installation: Installation, service: Service, slots: Slots): Group {
  const { id, utility, boxes = [], disconnects, buses = [], boxesWithoutSupply = [] } = service;
  const { commonElectrodeConductor: common } = service;
  const electrodes = electrodesOf(installation, service);
  const bar = barNames[service.grounding];
  const windings = windingsOf(service);
  const source = place(utility.id, ["utility source"], { windings });
  const assembled = disconnects.filter(
    (one) => one.designation === "service-disconnect" && one.bus === undefined,
  );
  const isAssembly = service.housing === "listed-assembly" && assembled.length > 1;
  const ofAssembly = slots.take("inside", id);
  const holder = assembled[0] ?? disconnects[0];
  const shared: Link["shared"] =
    windings.isGrounded && service.grounding !== "impedance" ? ["grounded", "grounding"] : ["grounding"];
  const links = [
    ...runLinks(service, slots),
    ...disconnects.flatMap(({ id: to, bus }): readonly Link[] =>
      bus === undefined ? [] : [{ from: bus, to, conductors: [], context: "section on the bus", shared }],
    ),
    ...boxesWithoutSupply.map(({ id: to, beside }) => ({
      from: beside,
      to,
      conductors: [],
      context: "wiring without supply conductors",
      shared: ["metal"] as const,
    })),
  ];
  const starts = [
    source,
    ...boxes.map((box) =>
      place(
        box.id,
        [boxNames[box.kind]],
        {
          bar,
          ...(box.kind === "meter" && { symbol: "meter" }),
          ...(box.bondedBy === "grounded-conductor" && { isBondedByGrounded: true }),
        },
        slots.take("inside", box.id),
      ),
    ),
    ...buses.map((bus) => place(bus.id, ["bus of a switchboard"], { bar }, slots.take("inside", bus.id))),
    ...disconnects.map((one) =>
      place(
        one.id,
        [`${disconnectNames[one.designation]}, ${one.amperes} A`],
        {
          symbol: "disconnect",
          bar,
          ...(one.bondedBy === "grounded-conductor" && { isBondedByGrounded: true }),
          ...(isAssembly && assembled.includes(one) && { assembly: `assembly of ${id}` }),
        },
        [...slots.take("inside", one.id), ...(one === holder ? ofAssembly : [])],
      ),
    ),
  ];
  const others = [
    ...boxesWithoutSupply.map((box) =>
      place(box.id, [`${boxNames[box.kind]} without supply conductors`], {}, slots.take("inside", box.id)),
    ),
    ...commonPlaces(common?.id),
    ...electrodePlaces(electrodes),
  ];
  const group = grounded(installation, service, utility.id, starts, slots, undefined, links);
  const title = `Service ${id}, ${windings.words}`;
  const places = [...group.starts, ...others, ...group.places];
  return { id, title, places: placesOfLinks(places, group.links), links: group.links };
}

/** A derived system, once for each arrangement that is put side by side. */
export function derivedGroups(installation: Installation, system: Derived, slots: Slots): readonly Group[] {
  const { source, disconnects, runs } = system;
  const found = slots.alternatives([
    source.id,
    ...disconnects.map((one) => one.id),
    ...runs.map((one) => one.id),
  ]);
  const alternatives = found.length === 0 ? [undefined] : found;
  return alternatives.map((alternative) => derivedGroup(installation, system, slots, alternative));
}

function derivedGroup(
  installation: Installation,
  system: Derived,
  slots: Slots,
  alternative: Alternative | undefined,
): Group {
  const { id, source, disconnects, transferSwitch, commonElectrodeConductor: common } = system;
  const electrodes = ownElectrodes(installation, system);
  const bar = barNames[system.grounding];
  const windings = windingsOf(system);
  const starts = [
    place(
      source.id,
      [source.kind === "other" ? "source" : source.kind],
      { windings, bar, ...(source.kind === "generator" && { symbol: "generator" }) },
      slots.take("inside", source.id, alternative),
    ),
    ...disconnects.map(({ id: of, amperes }) =>
      place(
        of,
        [`disconnect, ${amperes} A`],
        { symbol: "disconnect", bar },
        slots.take("inside", of, alternative),
      ),
    ),
  ];
  const links: readonly Link[] = [
    ...runLinks(system, slots, alternative),
    ...(transferSwitch === undefined
      ? []
      : [{ from: source.id, to: transferSwitch, conductors: [], context: "supplies" }]),
  ];
  const group = grounded(installation, system, source.id, starts, slots, alternative, links);
  const others = [...commonPlaces(common?.id), ...electrodePlaces(electrodes)];
  const arranged = alternative === undefined ? "" : `: ${alternativeNames[alternative]}`;
  const title = `Derived system ${id}, ${windings.words}${arranged}`;
  const places = [...group.starts, ...others, ...group.places];
  return { id, title, places: placesOfLinks(places, group.links), links: group.links };
}

/** The electrodes of a derived system that do not hang on its common conductor, which has a sheet of its own. */
function ownElectrodes(installation: Installation, system: Derived): ReturnType<typeof electrodesOf> {
  const all = electrodesOf(installation, system);
  const common = system.commonElectrodeConductor;
  const hanging = common === undefined ? [] : hangingFrom(all, common.id);
  return all.filter((one) => !hanging.includes(one));
}

/** How a system is connected to ground: its impedance, taps, electrodes. */
function grounded(
  installation: Installation,
  system: Service | Derived,
  source: string,
  starts: readonly Place[],
  slots: Slots,
  alternative: Alternative | undefined,
  links: readonly Link[],
): { readonly starts: readonly Place[]; readonly places: readonly Place[]; readonly links: readonly Link[] } {
  const { id, commonElectrodeConductor: common } = system;
  const isDerived = "source" in system;
  const electrodes = isDerived ? ownElectrodes(installation, system) : electrodesOf(installation, system);
  const impedance = impedancePlaces(id, slots, system.impedance?.id);
  const to = slots.take("to-impedance", id);
  const all = [...starts, ...commonPlaces(common?.id)];
  const unnamed = unnamedElectrodes(isDerived ? starts : all, slots);
  return {
    starts,
    places: [...impedance, ...unnamed.places],
    links: [
      ...impedance.map(({ key }): Link => ({ from: source, to: key, conductors: to })),
      ...links,
      ...starts.flatMap(({ key }) => tapLinks(key, slots, alternative)),
      ...electrodeLinks(electrodes, slots, { system: id, alternative }),
      ...unnamed.links,
    ],
  };
}

/** Common electrode conductors of derived systems, with their electrodes; the taps are on the sheets of the systems. */
export function commonGroups(installation: Installation, slots: Slots): readonly Group[] {
  const { derivedSystems = [] } = installation;
  const ids = [...new Set(derivedSystems.flatMap((one) => one.commonElectrodeConductor?.id ?? []))];
  return ids.flatMap((id) => {
    const electrodes = derivedSystems.flatMap((one) =>
      one.commonElectrodeConductor?.id === id ? hangingFrom(electrodesOf(installation, one), id) : [],
    );
    const found = slots.alternatives([id, ...electrodes.map((one) => one.id)]);
    const alternatives = found.length === 0 ? [undefined] : found;
    return alternatives.map((alternative) => {
      const bar = commonPlaces(id);
      const unnamed = unnamedElectrodes(bar, slots, alternative);
      const links = [...electrodeLinks(electrodes, slots, { alternative }), ...unnamed.links];
      const places = [...bar, ...electrodePlaces(electrodes), ...unnamed.places];
      const arranged = alternative === undefined ? "" : `: ${alternativeNames[alternative]}`;
      const title = `Common electrode conductor ${id}${arranged}`;
      return { title, places: placesOfLinks(places, links), links };
    });
  });
}

function commonPlaces(id: string | undefined): readonly Place[] {
  return id === undefined ? [] : [place(id, ["common electrode conductor"], { kind: "common" })];
}

function runLinks(
  { runs, sharedRaceways = [] }: Service | Derived,
  slots: Slots,
  alternative?: Alternative,
): readonly Link[] {
  const drawn = new Set<string>();
  return runs.map((run): Link => {
    const { id, from, to, in: shared, raceways } = run;
    const conductors = [...slots.take("along", id, alternative)];
    if (shared !== undefined && !drawn.has(shared)) {
      // What bonds a raceway that several runs share is drawn with the first of them.
      drawn.add(shared);
      conductors.push(
        ...slots.take("along", shared, alternative),
        ...slots.take("inside", shared, alternative),
      );
    }
    const kind = raceways?.kind ?? sharedRaceways.find((one) => one.id === shared)?.kind;
    const isInMetal = kind === "nonflexible-metal" || kind === "flexible-metal";
    return { id, from, to, conductors, context: writeRun(run), ...(isInMetal && { isInMetal }) };
  });
}

function tapLinks(from: string, slots: Slots, alternative?: Alternative): readonly Link[] {
  return slots
    .take("tap", from, alternative)
    .map((tap) => ({ from, to: placeOfEnd(tap.conductor.to).key, conductors: [tap] }));
}

function impedancePlaces(system: string, slots: Slots, name?: string): readonly Place[] {
  const inside = slots.take("from-impedance", system);
  if (inside.length === 0) return [];
  return [
    name === undefined
      ? { ...placeOfEnd({ kind: "impedance", of: system }, "enclosure"), inside, symbol: "impedance" }
      : place(name, ["grounding impedance"], { symbol: "impedance" }, inside),
  ];
}
