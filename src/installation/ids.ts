import { pathOf } from "../input/place.js";
import type { Installation } from "./document.js";
import { metalKind, namedIn } from "./electrodes-of.js";
import { type Fault, fault, type Keys } from "./fault.js";

/** A place in a document that names something. */
interface Named {
  readonly id: string;
  readonly keys: Keys;
}

interface Doubled extends Named {
  /** Where the id was given first. */
  readonly before: Keys;
}

/** Ids that are given twice; of something that was copied whole, its own id alone. */
export function duplicateIds(installation: Installation): readonly Fault[] {
  const first = new Map<string, Keys>();
  const doubled = [...allIds(installation), ...commonOfDerived(installation)].flatMap(
    ({ id, keys }): readonly Doubled[] => {
      const before = first.get(id);
      if (before === undefined) first.set(id, keys);
      return before === undefined ? [] : [{ id, keys, before }];
    },
  );
  const copies = new Map(
    doubled.filter(isOfList).map(({ keys, before }) => [ownerOf(keys), ownerOf(before)]),
  );
  return doubled
    .filter((one) => isOfList(one) || copies.get(ownerOf(one.keys)) !== ownerOf(one.before))
    .map(({ id, keys, before }) => {
      const isElectrode = [keys, before].every((one) => one.includes("electrodes"));
      const once = `, or let one name the other: { "electrode": ${JSON.stringify(id)} }`;
      const advice = `${pathOf(before)} has it already; give one of them a different id${isElectrode ? once : ""}`;
      return fault("duplicate-id", keys, "an id of its own", id, advice);
    });
}

/** Whether an id is that of an item of one of the installation's lists, not of something within. */
function isOfList({ keys, before }: Doubled): boolean {
  return keys.length === 3 && before.length === 3;
}

/** The item of the installation's lists in which a place is. */
function ownerOf(keys: Keys): string {
  return JSON.stringify(keys.slice(0, 2));
}

/** Every id of an installation with its place. */
export function allIds(installation: Installation): readonly Named[] {
  return [
    ...listed(["existing"], installation.existing),
    ...listed(["services"], installation.services),
    ...(installation.services ?? []).flatMap((service, i) => idsOfService(service, ["services", i])),
    ...listed(["derivedSystems"], installation.derivedSystems),
    ...(installation.derivedSystems ?? []).flatMap((system, i) => {
      const at = ["derivedSystems", i];
      return [
        { id: system.source.id, keys: [...at, "source", "id"] },
        ...idOfImpedance(system, at),
        ...listed([...at, "runs"], system.runs),
        ...listed([...at, "sharedRaceways"], system.sharedRaceways),
        ...listed([...at, "disconnects"], system.disconnects),
        ...electrodesListed([...at, "electrodes"], system),
        ...removableIn([...at, "electrodes"], system.electrodes),
      ];
    }),
    ...listed(["generators"], installation.generators),
    ...listed(["transferSwitches"], installation.transferSwitches),
    ...listed(["circuits"], installation.circuits),
    ...listed(["loadSideJumpers"], installation.loadSideJumpers),
    ...listed(["buildings"], installation.buildings),
    ...listed(["loadSideConnections"], installation.loadSideConnections),
    ...(installation.buildings ?? []).flatMap((building, i) => [
      ...electrodesListed(["buildings", i, "electrodes"], building),
      ...listed(["buildings", i, "electrodesNotConnected"], building.electrodesNotConnected),
      ...removableIn(["buildings", i, "electrodes"], building.electrodes),
    ]),
    ...listed(["piping"], installation.piping),
    ...removableIn(["piping"], installation.piping),
    ...listed(["structuralMetal"], installation.structuralMetal),
    ...listed(["intersystem"], installation.intersystem),
  ];
}

function idsOfService(service: NonNullable<Installation["services"]>[number], at: Keys): readonly Named[] {
  const common = service.commonElectrodeConductor;
  return [
    { id: service.utility.id, keys: [...at, "utility", "id"] },
    ...idOfImpedance(service, at),
    ...listed([...at, "boxes"], service.boxes),
    ...listed([...at, "buses"], service.buses),
    ...listed([...at, "boxesWithoutSupply"], service.boxesWithoutSupply),
    ...listed([...at, "runs"], service.runs),
    ...listed([...at, "sharedRaceways"], service.sharedRaceways),
    ...listed([...at, "disconnects"], service.disconnects),
    ...(common === undefined ? [] : [{ id: common.id, keys: [...at, "commonElectrodeConductor", "id"] }]),
    ...electrodesListed([...at, "electrodes"], service),
    ...listed([...at, "electrodesNotConnected"], service.electrodesNotConnected),
    ...removableIn([...at, "electrodes"], service.electrodes),
  ];
}

function idOfImpedance(
  { impedance }: Pick<NonNullable<Installation["services"]>[number], "impedance">,
  at: Keys,
): readonly Named[] {
  return impedance?.id === undefined ? [] : [{ id: impedance.id, keys: [...at, "impedance", "id"] }];
}

/** Several derived systems name the same common conductor, so it counts once; a metal part that serves as one has its id already. */
function commonOfDerived(installation: Installation): readonly Named[] {
  const seen = new Set<string>();
  return (installation.derivedSystems ?? []).flatMap(({ commonElectrodeConductor: common }, i) => {
    if (common === undefined || seen.has(common.id)) return [];
    if (metalKind(installation, common.id) !== undefined) return [];
    seen.add(common.id);
    return [{ id: common.id, keys: ["derivedSystems", i, "commonElectrodeConductor", "id"] }];
  });
}

/** What is likely to be taken out of water pipes. */
function removableIn(at: Keys, pipes: readonly object[] | undefined): readonly Named[] {
  return (pipes ?? []).flatMap((pipe, i) => {
    const fittings = "removable" in pipe ? (pipe.removable as readonly Pick<Named, "id">[]) : undefined;
    return listed([...at, i, "removable"], fittings);
  });
}

/** Electrodes that a list names; a conductor to one that is named elsewhere has no id of its own. */
function electrodesListed(at: Keys, of: Parameters<typeof namedIn>[0]): readonly Named[] {
  return namedIn(of).map(({ id, i }) => ({ id, keys: [...at, i, "id"] }));
}

function listed(
  at: Keys,
  items:
    | readonly {
        /** Stable id. */
        readonly id: string;
      }[]
    | undefined,
): readonly Named[] {
  return (items ?? []).map(({ id }, i) => ({ id, keys: [...at, i, "id"] }));
}
