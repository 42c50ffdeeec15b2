import { pathOf } from "../input/place.js";
import { bondedOtherwise, continuesElectrode, isReachedBy, type MetalPart } from "./bonded-otherwise.js";
import { electrodeCycles, type Tied } from "./cycles.js";
import { dangling } from "./dangling.js";
import type { Installation } from "./document.js";
import { type ElectrodeEntry, metalKind } from "./electrodes-of.js";
import { type Fault, fault, type Keys } from "./fault.js";
import { ownerIds } from "./metal-owners.js";

interface Entry {
  readonly entry: ElectrodeEntry;
  readonly keys: Keys;
}

/** Entries of all lists of electrodes, each with its place. */
function allEntries({ services = [], derivedSystems = [], buildings = [] }: Installation): readonly Entry[] {
  const within = (list: string, all: readonly { readonly electrodes?: readonly ElectrodeEntry[] }[]) =>
    all.flatMap(({ electrodes = [] }, i) =>
      electrodes.map((entry, n) => ({ entry, keys: [list, i, "electrodes", n] })),
    );
  return [
    ...within("services", services),
    ...within("derivedSystems", derivedSystems),
    ...within("buildings", buildings),
  ];
}

/** Conductors to electrodes that are named nowhere, or are drawn twice, and electrodes that hang on each other in a circle. */
export function sharedElectrodeFaults(installation: Installation): readonly Fault[] {
  const all = allEntries(installation);
  const tied = all.map(
    ({ entry, keys }): Tied => ({
      id: entry.electrode ?? entry.id,
      from: entry.from,
      keys: [...keys, "from"],
    }),
  );
  return [...unknownElectrodes(installation, all), ...doubled(all), ...electrodeCycles(tied)];
}

function unknownElectrodes(installation: Installation, all: readonly Entry[]): readonly Fault[] {
  const further = all.flatMap(({ entry, keys }) =>
    entry.electrode === undefined ? [] : [{ electrode: entry.electrode, keys: [...keys, "electrode"] }],
  );
  if (further.length === 0) return [];
  const { piping = [], structuralMetal = [] } = installation;
  const known = [
    ...all.flatMap(({ entry }) => entry.id ?? []),
    ...[...piping, ...structuralMetal].map(({ id }) => id).filter((id) => metalKind(installation, id)),
  ];
  const among = new Set(known);
  return further.flatMap(({ electrode, keys }) => dangling(keys, electrode, known, among));
}

/** Two conductors between one place and one electrode, whatever systems have them; an electrode that is named twice is told as such. */
function doubled(all: readonly Entry[]): readonly Fault[] {
  const first = new Map<string, Entry>();
  return all.flatMap(({ entry, keys }) => {
    const { from } = entry;
    const id = entry.electrode ?? entry.id;
    const key = JSON.stringify([id, from]);
    const before = first.get(key);
    if (before === undefined) {
      first.set(key, { entry, keys });
      return [];
    }
    if (entry.electrode === undefined && before.entry.electrode === undefined) return [];
    const advice = `${pathOf(before.keys)} is that conductor already; remove one of the two`;
    return [
      fault("duplicate-id", [...keys, "from"], `one conductor from "${from}" to "${id}"`, from, advice),
    ];
  });
}

/** A metal part that is said to be no electrode and is one, or to be bonded by what bonds no such part. */
export function metalPartFaults(installation: Installation, part: MetalPart, keys: Keys): readonly Fault[] {
  const { id, isElectrode, bondedTo } = part;
  const owners = ownerIds(part);
  const reaching =
    isElectrode === false ? owners.find((owner) => isReachedBy(installation, id, owner)) : undefined;
  const contradicted =
    reaching === undefined
      ? []
      : [
          fault(
            "unknown-value",
            [...keys, "isElectrode"],
            "true",
            false,
            `"${reaching}" has "${id}" among its electrodes; remove one of the two`,
          ),
        ];
  const isIdle =
    bondedTo !== undefined &&
    owners.every(
      (owner) =>
        bondedOtherwise(installation, part, owner) === null && !continuesElectrode(installation, part, owner),
    );
  if (!isIdle) return contradicted;
  const expected =
    "the piping or frame that is the electrode of a derived system it belongs to, its common conductor, or the metal water pipe among the electrodes that this piping continues";
  const advice =
    "only these take the place of a jumper; name it among the electrodes of that system, or remove bondedTo";
  return [...contradicted, fault("unknown-value", [...keys, "bondedTo"], expected, bondedTo, advice)];
}

/** A common electrode conductor is one conductor, so that it is of one material wherever a system names it. */
export function commonMaterialFaults({ derivedSystems = [] }: Installation): readonly Fault[] {
  const first = new Map<string, { readonly material: string; readonly i: number }>();
  return derivedSystems.flatMap(({ commonElectrodeConductor: common }, i) => {
    const material = common?.materials?.electrodeConductors;
    if (common === undefined || material === undefined) return [];
    const before = first.get(common.id);
    if (before === undefined) {
      first.set(common.id, { material, i });
      return [];
    }
    if (before.material === material) return [];
    const keys = (n: number) => [
      "derivedSystems",
      n,
      "commonElectrodeConductor",
      "materials",
      "electrodeConductors",
    ];
    const advice = `${pathOf(keys(before.i))} has "${before.material}" for "${common.id}"; it is one conductor, so name its material once`;
    return [fault("unlike-materials", keys(i), `"${before.material}"`, material, advice)];
  });
}
