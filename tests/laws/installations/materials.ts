import type { Installation, ScheduledConductor } from "bondmil";
import { idAt } from "./built.js";
import { endOf, listOf, listsOf } from "./electrodes.js";

type Materials = Installation["materials"];
type Own = { readonly materials?: Partial<Materials> } | undefined;

/** The materials that a conductor meets: the installation's, replaced by those of what it belongs to, the nearest last. */
export function materialsAt(installation: Installation, scheduled: ScheduledConductor): Materials {
  return Object.assign(
    { ...installation.materials },
    ...around(installation, scheduled).map((one) => one?.materials ?? {}),
  );
}

function around(installation: Installation, one: ScheduledConductor): readonly Own[] {
  const { services = [], derivedSystems = [], generators = [], circuits = [], buildings = [] } = installation;
  const { piping = [], structuralMetal = [] } = installation;
  const { system: systemId, role, part } = one;
  const subject = pipeOf(installation, one.subject);
  const from = idAt(one.from);
  const named = <T extends { readonly id: string }>(list: readonly T[], id: string | undefined) =>
    list.find((item) => item.id === id);
  const commons = derivedSystems.flatMap(({ commonElectrodeConductor: common }) =>
    common && (common.id === from || subject === common.id) ? [common] : [],
  );
  const system = named([...services, ...derivedSystems], systemId);
  const places = [
    ...(system && "utility" in system ? (system.boxes ?? []) : []),
    ...(system?.disconnects ?? []),
    ...(system?.runs ?? []),
  ];
  const isElectrodes = role.startsWith("electrode-") || role === "grounding-electrode-conductor";
  const list = isElectrodes ? listOf(installation, { ...one, subject }) : undefined;
  const entries = list?.electrodes ?? [];
  const ends = new Set(listsOf(installation).flatMap(({ electrodes = [] }) => electrodes.map(endOf)));
  // An arrangement may have moved a conductor from where it is drawn, but not one that hangs on another electrode.
  const moved = (other: (typeof entries)[number]): boolean =>
    endOf(other) === subject && !ends.has(other.from);
  const entry =
    entries.find((other) => other.electrode === subject && other.from === one.place) ??
    (one.place === undefined ? undefined : entries.find(moved)) ??
    entries.find((other) => other.id === subject);
  const start = part === "tap" || role === "grounding-electrode-conductor" ? from : undefined;
  const onCommon = systemId === undefined && part === undefined && isElectrodes;
  const taps = ({ commonElectrodeConductor: common }: (typeof derivedSystems)[number]): boolean =>
    common !== undefined && (subject === common.id || isOn(installation, subject, common.id));
  return [
    system,
    ...(onCommon ? onlyOneOf(derivedSystems.filter(taps)) : []),
    ...(onCommon
      ? derivedSystems.filter(taps).map(({ commonElectrodeConductor }) => commonElectrodeConductor)
      : []),
    ...commons,
    ...(list && buildings.some(({ id }) => id === list.id) ? [named(buildings, list.id)] : []),
    // A pipe that the document names by itself has the jumpers around its fittings; that of an electrode belongs to the list of the electrode.
    ...(subject === one.subject || piping.some(({ id }) => id === subject) ? [] : [list as Own]),
    named(buildings, role === "grounding-electrode-conductor" ? subject : undefined),
    named(places, start ?? subject),
    entry,
    named(generators, subject),
    named(circuits, subject),
    named([...piping, ...structuralMetal], subject),
  ];
}

/** The electrode or pipe around whose fitting a jumper goes; of any other conductor its own subject. */
function pipeOf(installation: Installation, subject: string): string {
  const { piping = [] } = installation;
  const pipes: readonly object[] = [
    ...listsOf(installation).flatMap(({ electrodes = [] }) => electrodes),
    ...piping,
  ];
  const pipe = pipes.find(
    (one): one is { readonly id: string } =>
      "removable" in one && (one.removable as readonly { id: string }[]).some(({ id }) => id === subject),
  );
  return pipe?.id ?? subject;
}

/** Whether an electrode hangs on a common conductor, over others too. */
function isOn(installation: Installation, subject: string, common: string): boolean {
  const entries = (installation.derivedSystems ?? []).flatMap(({ electrodes = [] }) => electrodes);
  const starts = entries.filter((one) => endOf(one) === subject).map(({ from }) => from);
  return starts.some((from) => from === common || isOn(installation, from, common));
}

/** The one of a list that has no other. */
function onlyOneOf<T>(list: readonly T[]): readonly T[] {
  return list.length === 1 ? list : [];
}
