import type { Installation } from "./document.js";
import type { WithMaterials } from "./materials-of.js";

/** An entry in a list of electrodes: an electrode, or a further conductor to one that is named elsewhere. */
export type ElectrodeEntry = NonNullable<
  NonNullable<Installation["buildings"]>[number]["electrodes"]
>[number];

type InstalledElectrode = Extract<ElectrodeEntry, { readonly kind: unknown }>;

/** An electrode as one conductor reaches it. */
export interface DrawnElectrode extends WithMaterials {
  readonly id: string;
  readonly kind: InstalledElectrode["kind"];
  readonly ringConductor?: InstalledElectrode["ringConductor"];
  readonly ohms?: InstalledElectrode["ohms"];
  readonly from: string;
  readonly ferrousRaceway?: boolean;
  readonly route?: ElectrodeEntry["route"];
  readonly removable?: InstalledElectrode["removable"];
  /** Set where the electrode is named elsewhere, so that this is a further conductor to it. */
  readonly isFurther?: true;
}

/** Something with electrodes. */
export interface WithElectrodes {
  readonly electrodes?: readonly ElectrodeEntry[];
}

/** Whatever has a list of electrodes. */
export function listsOf({
  services = [],
  derivedSystems = [],
  buildings = [],
}: Installation): readonly (WithElectrodes & { readonly id: string })[] {
  return [...services, ...derivedSystems, ...buildings];
}

/** The electrodes of a list as its conductors reach them; of what names nothing, nothing. */
export function electrodesOf(
  installation: Installation,
  { electrodes = [] }: WithElectrodes,
): readonly DrawnElectrode[] {
  return electrodes.flatMap((entry): readonly DrawnElectrode[] => {
    if (entry.electrode === undefined) return [entry];
    const { electrode, ...conductor } = entry;
    const named = namedElectrode(installation, electrode);
    return named === undefined ? [] : [{ ...named, ...conductor, isFurther: true }];
  });
}

/** What an electrode is, whoever names it: an entry of a list, or a metal part. */
function namedElectrode(
  installation: Installation,
  id: string,
): Pick<DrawnElectrode, "id" | "kind" | "ringConductor" | "ohms"> | undefined {
  for (const { electrodes = [] } of listsOf(installation)) {
    for (const entry of electrodes) {
      if (entry.electrode !== undefined || entry.id !== id) continue;
      const { kind, ringConductor, ohms } = entry;
      return { id, kind, ...(ringConductor && { ringConductor }), ...(ohms && { ohms }) };
    }
  }
  const kind = metalKind(installation, id);
  return kind && { id, kind };
}

/** The kind of electrode that a metal part of the installation is; `undefined` for anything else. */
export function metalKind(
  { piping = [], structuralMetal = [] }: Installation,
  id: string,
): "metal-water-pipe" | "structural-metal" | undefined {
  if (piping.some((one) => one.id === id && one.kind === "water")) return "metal-water-pipe";
  return structuralMetal.some((one) => one.id === id) ? "structural-metal" : undefined;
}

/** What hangs on an electrode, itself connected from it, in whatever list it stands. */
export function hangingOn(installation: Installation, id: string): readonly DrawnElectrode[] {
  return hanging(installation).get(id) ?? [];
}

const known = new WeakMap<Installation, ReadonlyMap<string, readonly DrawnElectrode[]>>();

/** Everything by what it is connected from, looked up once for an installation. */
function hanging(installation: Installation): ReadonlyMap<string, readonly DrawnElectrode[]> {
  const before = known.get(installation);
  if (before !== undefined) return before;
  const found = new Map<string, DrawnElectrode[]>();
  for (const one of listsOf(installation).flatMap((list) => electrodesOf(installation, list))) {
    const alike = found.get(one.from);
    if (alike === undefined) found.set(one.from, [one]);
    else alike.push(one);
  }
  known.set(installation, found);
  return found;
}

/** Ids that a conductor of a list may come from because an electrode of the list has them. */
export function electrodeIds({ electrodes = [] }: WithElectrodes): readonly string[] {
  return electrodes.map((entry) => entry.electrode ?? entry.id);
}

/** The electrodes that a list itself names, with their places in it. */
export function namedIn({
  electrodes = [],
}: WithElectrodes): readonly { readonly id: string; readonly i: number }[] {
  return electrodes.flatMap((entry, i) => (entry.electrode === undefined ? [{ id: entry.id, i }] : []));
}
