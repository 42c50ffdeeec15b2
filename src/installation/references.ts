import { nearest } from "../input/nearest.js";
import { circuitCycles, electrodeCycles, runCycles } from "./cycles.js";
import type { Installation } from "./document.js";
import { type Fault, fault, type Keys } from "./fault.js";

type Service = NonNullable<Installation["services"]>[number];
type Derived = NonNullable<Installation["derivedSystems"]>[number];
/** Ids among which a near one is looked for; an installation with more has to do without the hint for the rest. */
const mostCompared = 100;

type Electrodes = NonNullable<Service["electrodes"]>;

/** References of an installation that point nowhere, or in a circle. */
export function referenceFaults(installation: Installation): readonly Fault[] {
  return [
    ...(installation.services ?? []).flatMap((service, i) => serviceFaults(service, ["services", i])),
    ...(installation.derivedSystems ?? []).flatMap((system, i) =>
      derivedFaults(system, ["derivedSystems", i]),
    ),
    ...otherFaults(installation),
    ...circuitCycles(installation),
  ];
}

function serviceFaults(service: Service, at: Keys): readonly Fault[] {
  const boxes = idsOf(service.boxes);
  const ahead = service.disconnects.filter(
    ({ designation }) => designation === "meter-disconnect" || designation === "emergency-disconnect",
  );
  const places = [...boxes, ...idsOf(service.disconnects)];
  const common = service.commonElectrodeConductor ? [service.commonElectrodeConductor.id] : [];
  return [
    ...runFaults(service, at, [service.utility.id, ...boxes, ...idsOf(ahead)], places),
    ...unreached(service.runs, service.utility.id, [
      ...withKeys(service.boxes, [...at, "boxes"]),
      ...withKeys(service.disconnects, [...at, "disconnects"]),
    ]),
    ...electrodeFaults(service.electrodes ?? [], at, [...places, ...common]),
  ];
}

function derivedFaults(system: Derived, at: Keys): readonly Fault[] {
  const places = idsOf(system.disconnects);
  const common = system.commonElectrodeConductor ? [system.commonElectrodeConductor.id] : [];
  return [
    ...runFaults(system, at, [system.source.id], places),
    ...unreached(system.runs, system.source.id, withKeys(system.disconnects, [...at, "disconnects"])),
    ...electrodeFaults(system.electrodes ?? [], at, [system.source.id, ...places, ...common]),
  ];
}

function runFaults(
  { runs }: Service | Derived,
  at: Keys,
  starts: readonly string[],
  ends: readonly string[],
): readonly Fault[] {
  return [
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

function electrodeFaults(electrodes: Electrodes, at: Keys, places: readonly string[]): readonly Fault[] {
  const known = [...places, ...idsOf(electrodes)];
  return [
    ...electrodes.flatMap(({ from }, i) => dangling([...at, "electrodes", i, "from"], from, known)),
    ...electrodeCycles(electrodes, [...at, "electrodes"]),
  ];
}

function otherFaults(installation: Installation): readonly Fault[] {
  const { services = [], derivedSystems = [], buildings = [], circuits = [] } = installation;
  const disconnects = [...services, ...derivedSystems].flatMap((one) => idsOf(one.disconnects));
  const starts = [
    ...idsOf(installation.existing),
    ...disconnects,
    ...idsOf(installation.generators),
    ...idsOf(buildings),
    ...circuits.flatMap(({ id, to }) => [id, to]),
  ];
  const owners = [services, derivedSystems, buildings].flatMap(idsOf);
  const terminations = [...owners, ...disconnects, ...services.flatMap(({ boxes }) => idsOf(boxes))];
  const owned = (list: "piping" | "structuralMetal"): readonly Fault[] =>
    (installation[list] ?? []).flatMap((one, i) =>
      "of" in one ? dangling([list, i, "of"], one.of, owners) : [],
    );
  const among = known(starts);
  return [
    ...circuits.flatMap((one, i) => dangling(["circuits", i, "from"], one.from, starts, among)),
    ...buildings.flatMap((one, i) => [
      ...dangling(["buildings", i, "circuit"], one.circuit, idsOf(circuits)),
      ...electrodeFaults(one.electrodes ?? [], ["buildings", i], [one.id]),
    ]),
    ...owned("piping"),
    ...owned("structuralMetal"),
    ...(installation.intersystem ?? []).flatMap((one, i) =>
      dangling(["intersystem", i, "at"], one.at, terminations),
    ),
  ];
}

function known(ids: readonly string[]): ReadonlySet<string> {
  return new Set(ids);
}

function dangling(
  keys: Keys,
  id: string,
  ids: readonly string[],
  among: ReadonlySet<string> = known(ids),
): readonly Fault[] {
  if (among.has(id)) return [];
  const near = nearest(id, ids.slice(0, mostCompared));
  const shown = near === undefined ? ids.slice(0, 6) : [near];
  const more = near === undefined && ids.length > shown.length ? ` or ${ids.length - shown.length} more` : "";
  const expected =
    shown.length === 0 ? "an id of this document" : `${shown.map((one) => `"${one}"`).join(", ")}${more}`;
  return [fault("dangling-reference", keys, expected, id, "name something that is there")];
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
