import { deviceOfBuilding, placeOfBuilding, servingOfBuilding } from "./building-supply.js";
import type { ConductorEnd } from "./conductor-identity.js";
import { derivedElectrodeStarts } from "./derived-electrodes.js";
import { jumperChoices, wholeServing } from "./derived-system.js";
import { landingAtDerived } from "./electrode-landing.js";
import { electrodesOf } from "./electrodes-of.js";
import type { InstallationInCode } from "./schedule.js";
import { tapPlaces } from "./schedule-common.js";
import { enclosuresOf, isAssembly, servingsOfService } from "./service.js";
import type { Serving } from "./serving.js";

/** Whose metal it is: the conductors that size the jumper, and where the jumper ends. */
export type MetalOwner =
  | {
      readonly system: "service" | "separately-derived";
      readonly servings: readonly Serving[];
      readonly landing: ConductorEnd;
    }
  | {
      readonly system: "building";
      readonly servings: readonly [Serving];
      readonly deviceAmperes?: number;
      readonly landing: ConductorEnd;
    };

/** The systems that a metal part belongs to. */
export function ownerIds({ of }: { readonly of: string | readonly string[] }): readonly string[] {
  return typeof of === "string" ? [of] : of;
}

/** The service, derived system or building with an id, for the jumper of a metal part. */
export function metalOwner({ installation, code }: InstallationInCode, id: string): MetalOwner {
  const service = installation.services?.find((one) => one.id === id);
  if (service !== undefined) {
    const at = { installation, code, service };
    const [first] = enclosuresOf(at);
    const disconnect = first?.disconnects[0] ?? service.disconnects[0]?.id ?? id;
    const landing: ConductorEnd = isAssembly(service)
      ? { kind: "assembly", of: id }
      : { kind: "place", id: disconnect };
    return { system: "service", servings: servingsOfService(at), landing };
  }
  const system = installation.derivedSystems?.find((one) => one.id === id);
  if (system !== undefined) {
    const at = { installation, code, system };
    return { system: "separately-derived", servings: [wholeServing(at)], landing: electrodeConnection(at) };
  }
  const building = installation.buildings?.find((one) => one.id === id);
  const serving = building && servingOfBuilding({ installation, code }, building);
  if (building === undefined || serving === undefined)
    throw new TypeError("an installation is read before it is built from");
  const deviceAmperes = deviceOfBuilding(installation, building);
  return {
    system: "building",
    servings: [serving],
    ...(deviceAmperes === undefined ? {} : { deviceAmperes }),
    landing: { kind: "place", id: placeOfBuilding(installation, building) ?? id },
  };
}

/**
 * Where the electrode conductor of a derived system is connected, at which its metal is bonded (250.104(D)); where arrangements that differ in it
 * are put side by side, the connection itself.
 */
function electrodeConnection(at: Parameters<typeof wholeServing>[0]): ConductorEnd {
  const { installation, system } = at;
  const electrodes = electrodesOf(installation, system);
  const places = new Set(
    jumperChoices(at).map((arrangement) => {
      const starts = electrodes.flatMap((one) => derivedElectrodeStarts(at, electrodes, one));
      const own = starts.find(({ alternative }) => alternative === arrangement.alternative);
      const [tap = system.source.id] = tapPlaces(at, arrangement);
      return own?.from ?? tap;
    }),
  );
  const [place, ...others] = places;
  return place === undefined || others.length > 0
    ? { kind: "electrode-connection", of: system.id }
    : landingAtDerived(system, place);
}
