import {
  type ConductorEnd,
  endName,
  type Installation,
  type Electrode as PlainElectrode,
  type ScheduledConductor,
} from "bondmil";
import type { Electrode, ElectrodeEntry } from "./parts.js";

interface WithElectrodes {
  readonly id: string;
  readonly electrodes?: readonly ElectrodeEntry[];
}

/** Everything that has a list of electrodes. */
export function listsOf(installation: Installation): readonly WithElectrodes[] {
  const { services = [], derivedSystems = [], buildings = [] } = installation;
  return [...services, ...derivedSystems, ...buildings];
}

/** The id of the electrode that an entry is, or that it leads to. */
export function endOf(entry: ElectrodeEntry): string {
  return entry.electrode ?? entry.id;
}

/** The entries of a list as if each named its electrode itself. */
export function electrodesIn(installation: Installation, { electrodes = [] }: WithElectrodes): Electrode[] {
  return electrodes.map((entry) => {
    if (entry.electrode === undefined) return entry;
    const named = listsOf(installation)
      .flatMap((list) => list.electrodes ?? [])
      .find((one): one is Electrode => one.electrode === undefined && one.id === entry.electrode);
    const isPipe = installation.piping?.some(({ id }) => id === entry.electrode) === true;
    const kind = named?.kind ?? (isPipe ? "metal-water-pipe" : "structural-metal");
    const ring = named?.ringConductor && { ringConductor: named.ringConductor };
    const ohms = named?.ohms === undefined ? {} : { ohms: named.ohms };
    return { id: entry.electrode, kind, from: entry.from, ...ring, ...ohms };
  });
}

/** The list to which the conductor of a schedule to an electrode belongs. */
export function listOf(
  installation: Installation,
  { subject, place, system }: ScheduledConductor,
): WithElectrodes | undefined {
  const all = listsOf(installation).filter(({ electrodes = [] }) =>
    electrodes.some((one) => endOf(one) === subject),
  );
  const own = all.filter(({ id }) => system === undefined || id === system);
  return (
    own.find(({ electrodes = [] }) =>
      electrodes.some((one) => one.electrode === subject && one.from === place),
    ) ??
    own.find(({ electrodes = [] }) => electrodes.some((one) => one.id === subject)) ??
    own[0]
  );
}

/** An electrode with all that hangs on it, whoever has it. */
export function served(installation: Installation, start: string): readonly PlainElectrode[] {
  const all = listsOf(installation).flatMap((list) => electrodesIn(installation, list));
  const beyond = (id: string): readonly Electrode[] =>
    all.filter(({ from }) => from === id).flatMap((one) => [one, ...beyond(one.id)]);
  const itself = all.filter(({ id }) => id === start).slice(0, 1);
  return [...itself, ...beyond(start)].map(plain);
}

function plain({ kind, ringConductor }: Electrode): PlainElectrode {
  return kind === "ring" ? { kind, conductor: ringConductor ?? "2 AWG" } : { kind };
}

/** The place at which an end is, whatever it lands on there; any other end in words. */
export function placeOfEnd(end: ConductorEnd): string {
  return end.kind === "place" ? end.id : endName(end);
}
