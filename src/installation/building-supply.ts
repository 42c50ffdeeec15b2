import { ratingOf } from "../rules/protected-circuit.js";
import { servingToDisconnect } from "./derived-system.js";
import type { Installation } from "./document.js";
import type { InstallationInCode } from "./schedule.js";
import type { Serving } from "./serving.js";

/** A building of an installation. */
export type DrawnBuilding = NonNullable<Installation["buildings"]>[number];

/** A circuit of an installation. */
export type DrawnCircuit = NonNullable<Installation["circuits"]>[number];

/** The feeder or branch circuit of a building. */
export function circuitOf(
  { circuits = [] }: Installation,
  { circuit: id }: DrawnBuilding,
): DrawnCircuit | undefined {
  return id === undefined ? undefined : circuits.find((one) => one.id === id);
}

/** The derived system that supplies a building with no circuit between. */
export function derivedSystemOf(
  { derivedSystems = [] }: Installation,
  { disconnect }: DrawnBuilding,
): NonNullable<Installation["derivedSystems"]>[number] | undefined {
  if (disconnect === undefined) return undefined;
  return derivedSystems.find(({ disconnects }) => disconnects.some(({ id }) => id === disconnect));
}

/** The ungrounded conductors to a building; `undefined` where its circuit names none. */
export function servingOfBuilding(
  { installation, code }: InstallationInCode,
  building: DrawnBuilding,
): Serving | undefined {
  const system = derivedSystemOf(installation, building);
  if (system !== undefined)
    return servingToDisconnect({ installation, code, system }, building.disconnect ?? "");
  const circuit = circuitOf(installation, building);
  return circuit?.conductors && { by: [circuit.id], supply: circuit.conductors };
}

/** Rating of the device ahead of a building; `undefined` where no device stands there. */
export function deviceOfBuilding(installation: Installation, building: DrawnBuilding): number | undefined {
  const circuit = circuitOf(installation, building);
  return circuit === undefined
    ? derivedSystemOf(installation, building)?.source.deviceAmperes
    : ratingOf(circuit.device);
}

/** The disconnect of a building: the one that it names, or the end of its circuit. */
export function placeOfBuilding(installation: Installation, building: DrawnBuilding): string | undefined {
  return building.disconnect ?? circuitOf(installation, building)?.to;
}

/** The existing building at a place, its own id or that of its disconnect, whose grounded conductor is to stay the fault path. */
export function buildingKeeping(installation: Installation, place: string): DrawnBuilding | undefined {
  return (installation.buildings ?? []).find(
    (one) =>
      one.existingGroundedConductor !== undefined &&
      [one.id, placeOfBuilding(installation, one)].includes(place),
  );
}

/** Whether an existing building may keep its grounded conductor as the fault path. */
export function mayStayRebonded({ existingGroundedConductor: existing }: DrawnBuilding): boolean {
  return existing !== undefined && !Object.values(existing).includes(true);
}
