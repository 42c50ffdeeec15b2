import type { Installation } from "bondmil";
import type { Dice } from "../dice.js";
import { endOf, listsOf } from "../electrodes.js";
import type { Circuit, ElectrodeEntry, System } from "../parts.js";
import { systemsOf } from "./within.js";

/** Everything renamed, and the names as they were by the new ones. */
export interface Renamed {
  readonly installation: Installation;
  readonly before: (text: string) => string;
}

const idKeys: readonly string[] = [
  ...["id", "from", "to", "of", "at", "circuit", "circuits", "disconnect", "transferSwitch"],
  ...["in", "beside", "bus", "electrode", "bondedTo", "asScheduled"],
];

/** Every id, and every name of their own that things have, under another name. */
export function renamed(installation: Installation): Renamed {
  const names: string[] = [];
  const rename = (name: string): string => {
    if (!names.includes(name)) names.push(name);
    return `\u00ab${names.indexOf(name)}\u00bb`;
  };
  const renamedIn = (value: unknown): unknown => {
    if (Array.isArray(value)) return value.map(renamedIn);
    return typeof value === "string" ? rename(value) : walk(value);
  };
  const walk = (value: unknown): unknown => {
    if (Array.isArray(value)) return value.map(walk);
    if (typeof value !== "object" || value === null) return value;
    return Object.fromEntries(
      Object.entries(value).map(([key, one]) => [key, idKeys.includes(key) ? renamedIn(one) : walk(one)]),
    );
  };
  const { code, title, ...rest } = installation;
  const changed = walk(rest) as Omit<Installation, "code" | "title">;
  return {
    installation: { ...changed, code, title },
    before: (text) => text.replace(/\u00ab(\d+)\u00bb/g, (_, n) => names[Number(n)] ?? ""),
  };
}

/**
 * Every list of a drawing in another order, but for those whose order says something: phases, amendments, and the electrodes of a system whose
 * arrangements are compared, of which the first is connected to the enclosures that want a connection more than is drawn.
 */
export function reordered(installation: Installation, dice: Dice): Installation {
  const walk = (value: unknown, keeps: boolean): unknown => {
    if (Array.isArray(value)) {
      const walked = value.map((one) => walk(one, false));
      return keeps ? walked : dice.shuffled(walked);
    }
    if (typeof value !== "object" || value === null) return value;
    const isCompared = "jumperAt" in value && value.jumperAt === "compare";
    return Object.fromEntries(
      Object.entries(value).map(([name, one]) => {
        const isOrdered = name === "phases" || name === "amendments";
        return [name, walk(one, isOrdered || (isCompared && name === "electrodes"))];
      }),
    );
  };
  return walk(installation, false) as Installation;
}

/** Every optional member that has a usual value written out with it. */
export function writtenOut(installation: Installation): Installation {
  const electrodes = (list: readonly ElectrodeEntry[] | undefined): readonly ElectrodeEntry[] =>
    (list ?? []).map((one) => ({ ferrousRaceway: false, ...one }));
  const all = systemsOf(installation).reduce((so, _, i) => {
    const { system, put } = systemsOf(so)[i] ?? { system: undefined, put: undefined };
    if (system === undefined || put === undefined) return so;
    const parts = {
      electrodes: electrodes(system.electrodes),
      ...("utility" in system ? { boxes: system.boxes ?? [] } : { source: sourceOf(system) }),
    };
    return put(parts as Partial<System>);
  }, installation);
  const reached = new Set(listsOf(all).flatMap((list) => (list.electrodes ?? []).map(endOf)));
  const noElectrode = <T extends { readonly id: string }>(one: T): T =>
    reached.has(one.id) ? one : { isElectrode: false, ...one };
  const { services, derivedSystems, generators, circuits, buildings, piping, structuralMetal, intersystem } =
    all;
  return {
    ...all,
    code: { readings: {}, ...all.code },
    existing: all.existing ?? [],
    services: services ?? [],
    derivedSystems: derivedSystems ?? [],
    generators: generators ?? [],
    circuits: (circuits ?? []).map((one) =>
      one.wiring === "raceway" ? { raceways: 1, ...one } : one,
    ) as Circuit[],
    buildings: (buildings ?? []).map((one) => ({ ...one, electrodes: electrodes(one.electrodes) })),
    piping: (piping ?? []).map((one) => ("of" in one ? noElectrode(one) : one)),
    structuralMetal: (structuralMetal ?? []).map(noElectrode),
    intersystem: (intersystem ?? []).map((one) => ({ communicationsUnlikely: false, ...one })),
    installed: {},
  };
}

function sourceOf(system: System): object {
  if (!("source" in system)) return {};
  return system.source.kind === "transformer"
    ? { controlTransformer: false, ...system.source }
    : system.source;
}

/** Every optional member that has its usual value left out, and every empty list. */
export function withoutUsual(installation: Installation): Installation {
  const walk = (value: unknown): unknown => {
    if (Array.isArray(value)) return value.map(walk);
    if (typeof value !== "object" || value === null) return value;
    const kept = Object.entries(value).filter(([key, one]) => !isUsual(key, one));
    return Object.fromEntries(kept.map(([key, one]) => [key, walk(one)]));
  };
  return walk(installation) as Installation;
}

const usualFlags: readonly string[] = [
  "ferrousRaceway",
  "controlTransformer",
  "isElectrode",
  "communicationsUnlikely",
  "listedFor75",
];

function isUsual(key: string, value: unknown): boolean {
  if (usualFlags.includes(key)) return value === false;
  return Array.isArray(value) && value.length === 0;
}
