import { pathOf } from "../input/place.js";
import type { Installation } from "./document.js";
import { type Fault, fault, type Keys } from "./fault.js";

/** A place in a document that names something. */
interface Named {
  readonly id: string;
  readonly keys: Keys;
}

/** Ids that are given twice. */
export function duplicateIds(installation: Installation): readonly Fault[] {
  const first = new Map<string, Keys>();
  return [...allIds(installation), ...commonOfDerived(installation)].flatMap(({ id, keys }) => {
    const before = first.get(id);
    if (before === undefined) {
      first.set(id, keys);
      return [];
    }
    const advice = `${pathOf(before)} has it already; give one of them a different id`;
    return [fault("duplicate-id", keys, "an id of its own", id, advice)];
  });
}

function allIds(installation: Installation): readonly Named[] {
  return [
    ...listed(["existing"], installation.existing),
    ...listed(["services"], installation.services),
    ...(installation.services ?? []).flatMap((service, i) => idsOfService(service, ["services", i])),
    ...listed(["derivedSystems"], installation.derivedSystems),
    ...(installation.derivedSystems ?? []).flatMap((system, i) => {
      const at = ["derivedSystems", i];
      return [
        { id: system.source.id, keys: [...at, "source", "id"] },
        ...listed([...at, "runs"], system.runs),
        ...listed([...at, "disconnects"], system.disconnects),
        ...listed([...at, "electrodes"], system.electrodes),
      ];
    }),
    ...listed(["generators"], installation.generators),
    ...listed(["circuits"], installation.circuits),
    ...listed(["buildings"], installation.buildings),
    ...(installation.buildings ?? []).flatMap((building, i) =>
      listed(["buildings", i, "electrodes"], building.electrodes),
    ),
    ...listed(["piping"], installation.piping),
    ...listed(["structuralMetal"], installation.structuralMetal),
    ...listed(["intersystem"], installation.intersystem),
  ];
}

function idsOfService(service: NonNullable<Installation["services"]>[number], at: Keys): readonly Named[] {
  const common = service.commonElectrodeConductor;
  return [
    { id: service.utility.id, keys: [...at, "utility", "id"] },
    ...listed([...at, "boxes"], service.boxes),
    ...listed([...at, "runs"], service.runs),
    ...listed([...at, "disconnects"], service.disconnects),
    ...(common === undefined ? [] : [{ id: common.id, keys: [...at, "commonElectrodeConductor", "id"] }]),
    ...listed([...at, "electrodes"], service.electrodes),
  ];
}

/** Several derived systems name the same common conductor, so it counts once. */
function commonOfDerived({ derivedSystems = [] }: Installation): readonly Named[] {
  const seen = new Set<string>();
  return derivedSystems.flatMap(({ commonElectrodeConductor: common }, i) => {
    if (common === undefined || seen.has(common.id)) return [];
    seen.add(common.id);
    return [{ id: common.id, keys: ["derivedSystems", i, "commonElectrodeConductor", "id"] }];
  });
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
