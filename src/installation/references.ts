import { circuitCycles, runCycles } from "./cycles.js";
import { dangling } from "./dangling.js";
import type { Installation } from "./document.js";
import { electrodeIds } from "./electrodes-of.js";
import { type Fault, fault, type Keys } from "./fault.js";
import { sharedElectrodeFaults } from "./shared-faults.js";

type Service = NonNullable<Installation["services"]>[number];
type Derived = NonNullable<Installation["derivedSystems"]>[number];
/** References of an installation that point nowhere, or in a circle. */
export function referenceFaults(installation: Installation): readonly Fault[] {
  return [
    ...(installation.services ?? []).flatMap((service, i) => serviceFaults(service, ["services", i])),
    ...(installation.derivedSystems ?? []).flatMap((system, i) =>
      derivedFaults(system, ["derivedSystems", i]),
    ),
    ...otherFaults(installation),
    ...circuitCycles(installation),
    ...sharedElectrodeFaults(installation),
  ];
}

function serviceFaults(service: Service, at: Keys): readonly Fault[] {
  const boxes = [...idsOf(service.boxes), ...idsOf(service.buses)];
  const ahead = service.disconnects.filter(
    ({ designation }) => designation === "meter-disconnect" || designation === "emergency-disconnect",
  );
  const places = [...boxes, ...idsOf(service.disconnects)];
  const common = service.commonElectrodeConductor ? [service.commonElectrodeConductor.id] : [];
  const along = idsOf(service.runs);
  return [
    ...runFaults(service, at, [service.utility.id, ...boxes, ...idsOf(ahead)], places),
    ...unreached(service.runs, service.utility.id, [
      ...withKeys(service.boxes, [...at, "boxes"]),
      ...withKeys(service.buses, [...at, "buses"]),
      ...withKeys(service.disconnects, [...at, "disconnects"]).filter(
        (_, i) => service.disconnects[i]?.bus === undefined,
      ),
    ]),
    ...service.disconnects.flatMap(({ bus }, i) =>
      bus === undefined ? [] : dangling([...at, "disconnects", i, "bus"], bus, idsOf(service.buses)),
    ),
    ...startFaults(service, at, [...places, ...along, ...common, ...impedanceOf(service)]),
    ...(service.boxesWithoutSupply ?? []).flatMap(({ beside }, i) =>
      dangling([...at, "boxesWithoutSupply", i, "beside"], beside, places),
    ),
  ];
}

function derivedFaults(system: Derived, at: Keys): readonly Fault[] {
  const places = idsOf(system.disconnects);
  const common = system.commonElectrodeConductor ? [system.commonElectrodeConductor.id] : [];
  return [
    ...runFaults(system, at, [system.source.id], places),
    ...unreached(system.runs, system.source.id, withKeys(system.disconnects, [...at, "disconnects"])),
    ...startFaults(system, at, [system.source.id, ...places, ...common, ...impedanceOf(system)]),
  ];
}

function impedanceOf({ impedance }: Service | Derived): readonly string[] {
  return impedance?.id === undefined ? [] : [impedance.id];
}

function runFaults(
  { runs, sharedRaceways }: Service | Derived,
  at: Keys,
  starts: readonly string[],
  ends: readonly string[],
): readonly Fault[] {
  return [
    ...runs.flatMap(({ in: shared }, i) =>
      shared === undefined ? [] : dangling([...at, "runs", i, "in"], shared, idsOf(sharedRaceways)),
    ),
    ...runs.flatMap(({ from, to }, i) => [
      ...dangling([...at, "runs", i, "from"], from, starts),
      ...dangling([...at, "runs", i, "to"], to, ends),
    ]),
    ...runCycles(runs, at),
  ];
}

interface Place {
  readonly id: string;
  readonly keys: Keys;
}

/** Every box and disconnect hangs on a run that comes, over others, from the source. */
function unreached(runs: Service["runs"], source: string, places: readonly Place[]): readonly Fault[] {
  const reached = new Set([source]);
  for (const place of reached) for (const run of runs) if (run.from === place) reached.add(run.to);
  return places
    .filter(({ id }) => !reached.has(id))
    .map(({ id, keys }) =>
      fault("dangling-reference", keys, `a run from "${source}" to it`, id, "add the run that supplies it"),
    );
}

/** Where conductors to electrodes start: at a place of the system, or at an electrode of its list. */
function startFaults(of: Pick<Service, "electrodes">, at: Keys, places: readonly string[]): readonly Fault[] {
  const starts = [...places, ...electrodeIds(of)];
  return (of.electrodes ?? []).flatMap(({ from }, i) =>
    dangling([...at, "electrodes", i, "from"], from, starts),
  );
}

function otherFaults(installation: Installation): readonly Fault[] {
  const { services = [], derivedSystems = [], buildings = [], circuits = [] } = installation;
  const disconnects = [...services, ...derivedSystems].flatMap((one) => idsOf(one.disconnects));
  const switches = idsOf(installation.transferSwitches);
  const starts = [
    ...idsOf(installation.existing),
    ...disconnects,
    ...switches,
    ...derivedSystems.flatMap(({ source }) => (source.deviceAmperes === undefined ? [] : [source.id])),
    ...idsOf(installation.generators),
    ...idsOf(buildings),
    ...circuits.flatMap(({ id, to }) => [id, to]),
  ];
  const owners = [services, derivedSystems, buildings].flatMap(idsOf);
  const terminations = [
    ...owners,
    ...disconnects,
    ...services.flatMap(({ boxes, buses }) => [...idsOf(boxes), ...idsOf(buses)]),
  ];
  const owned = (list: "piping" | "structuralMetal"): readonly Fault[] =>
    (installation[list] ?? []).flatMap((one, i) =>
      "of" in one ? ownerFaults(one.of, [list, i, "of"], owners) : [],
    );
  const among = new Set(starts);
  const amongCircuits = new Set(idsOf(circuits));
  return [
    ...circuits.flatMap((one, i) => dangling(["circuits", i, "from"], one.from, starts, among)),
    ...buildings.flatMap((one, i) => [
      ...(one.circuit === undefined
        ? []
        : dangling(["buildings", i, "circuit"], one.circuit, idsOf(circuits))),
      ...(one.disconnect === undefined
        ? []
        : dangling(
            ["buildings", i, "disconnect"],
            one.disconnect,
            derivedSystems.flatMap((system) => idsOf(system.disconnects)),
          )),
      ...startFaults(one, ["buildings", i], [one.id]),
    ]),
    ...derivedSystems.flatMap(({ transferSwitch }, i) =>
      transferSwitch === undefined
        ? []
        : dangling(["derivedSystems", i, "transferSwitch"], transferSwitch, switches),
    ),
    ...(installation.loadSideJumpers ?? []).flatMap((one, i) =>
      one.circuits.flatMap((id, n) =>
        dangling(["loadSideJumpers", i, "circuits", n], id, idsOf(circuits), amongCircuits),
      ),
    ),
    ...owned("piping"),
    ...owned("structuralMetal"),
    ...loadSidePlaces(installation),
    ...(installation.intersystem ?? []).flatMap((one, i) =>
      dangling(["intersystem", i, "at"], one.at, terminations),
    ),
  ];
}

/** Load-side connections are at the end of a circuit, at a building, or at a disconnect of a derived system. */
function loadSidePlaces({
  loadSideConnections = [],
  circuits = [],
  buildings = [],
  derivedSystems = [],
}: Installation): readonly Fault[] {
  const sources = new Set(derivedSystems.map(({ source }) => source.id));
  const ends = [
    ...circuits.map(({ to }) => to).filter((to) => !sources.has(to)),
    ...idsOf(buildings),
    ...derivedSystems.flatMap(({ disconnects }) => idsOf(disconnects)),
  ];
  const among = new Set(ends);
  return loadSideConnections.flatMap(({ at }, i) =>
    dangling(["loadSideConnections", i, "at"], at, ends, among),
  );
}

function ownerFaults(
  of: string | readonly string[],
  keys: Keys,
  owners: readonly string[],
): readonly Fault[] {
  if (typeof of === "string") return dangling(keys, of, owners);
  return of.flatMap((one, i) => dangling([...keys, i], one, owners));
}

function idsOf(
  list:
    | readonly {
        /** Stable id. */
        readonly id: string;
      }[]
    | undefined,
): readonly string[] {
  return (list ?? []).map(({ id }) => id);
}

function withKeys(
  list:
    | readonly {
        /** Stable id. */
        readonly id: string;
      }[]
    | undefined,
  at: Keys,
): readonly Place[] {
  return (list ?? []).map(({ id }, i) => ({ id, keys: [...at, i, "id"] }));
}
