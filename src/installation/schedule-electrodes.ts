import { electrodeSupplement } from "../edition/tables/sections.generated.js";
import { electrodeBondingJumper } from "../roles/electrode-bonding-jumper/index.js";
import { electrodeRacewayBondingJumper } from "../roles/electrode-raceway-bonding-jumper/index.js";
import { groundingElectrodeConductor } from "../roles/grounding-electrode-conductor/index.js";
import type { ElectrodeConductorOfSupply } from "../roles/grounding-electrode-conductor/input.js";
import type { Electrode } from "../rules/electrode.js";
import { type Alternative, type ConductorIdentity, identityOf } from "./conductor-identity.js";
import type { Installation } from "./document.js";
import type { InstallationInCode, PlacedCaution, ScheduledConductor, ScheduledPart } from "./schedule.js";
import { scheduled } from "./scheduled.js";
import { largestServed, type ServedResult, type Serving } from "./serving.js";

/** An electrode as an installation gives it. */
export type DrawnElectrode = NonNullable<
  NonNullable<Installation["buildings"]>[number]["electrodes"]
>[number];

/** What the electrode conductors of one system or building go by. */
export interface ElectrodesOf extends InstallationInCode {
  readonly system: ElectrodeConductorOfSupply["system"];
  readonly electrodes: readonly DrawnElectrode[];
  /** The places from which conductors go to an electrode; none where it is tied to another electrode. */
  readonly startsOf: (electrode: DrawnElectrode) => readonly ElectrodeStart[];
  /** All ungrounded conductors of the system, for the jumpers between electrodes. */
  readonly servings: readonly Serving[];
  /** Whether the system has no grounded conductor, so that another section requires its electrode conductor. */
  readonly ungrounded?: boolean;
}

/** A place where an electrode conductor starts, and which part it then is. */
export interface ElectrodeStart {
  readonly from: string;
  readonly servings: readonly Serving[];
  readonly part?: "only" | "common";
  /** For the common conductor of a service: whether the enclosures hang directly on the drop or lateral. */
  readonly fromDrop?: boolean;
  readonly alternative?: Alternative;
}

/** Grounding electrode conductors and the jumpers between electrodes, from the tree that the installation gives. */
export function electrodePart(system: ElectrodesOf): ScheduledPart {
  const { electrodes } = system;
  return {
    conductors: electrodes.flatMap((electrode) => conductorsTo(system, electrode)),
    cautions: supplementCautions(system),
  };
}

function conductorsTo(system: ElectrodesOf, electrode: DrawnElectrode): readonly ScheduledConductor[] {
  const { installation, code, servings, electrodes, startsOf } = system;
  const starts = startsOf(electrode);
  if (starts.length === 0) {
    const conductor = { material: installation.materials.electrodeConductors };
    const served = servedBy(electrode, electrodes);
    const { by, result } = largestServed(servings, (supply) =>
      electrodeBondingJumper.decide({ code, supply, conductor, electrodes: served }),
    );
    const made = scheduled({ subject: electrode.id }, electrode.from, electrode.id, result, { by });
    return [made, ...racewayJumpersOf(system, electrode, made)];
  }
  return starts.flatMap((start) => {
    const { by, result } = conductorFrom(system, electrode, start);
    const made = scheduled(whoIs(electrode, start, starts), start.from, electrode.id, result, { by });
    return [made, ...racewayJumpersOf(system, electrode, made)];
  });
}

/** The electrode conductor from a place to an electrode. */
export function conductorFrom(
  of: ElectrodesOf,
  electrode: DrawnElectrode,
  start: Omit<ElectrodeStart, "from" | "alternative">,
): ServedResult {
  return conductorServing(of, servedBy(electrode, of.electrodes), start);
}

/** The electrode conductor or tap that serves some electrodes; where none is known, one of which nothing is limited. */
export function conductorServing(
  {
    installation,
    code,
    system,
    ungrounded = false,
  }: Omit<ElectrodesOf, "electrodes" | "startsOf" | "servings">,
  served: readonly Electrode[],
  { servings, part, fromDrop, controlTransformer }: ServingStart,
): ServedResult {
  return largestServed(servings, (supply) =>
    groundingElectrodeConductor.decide({
      code,
      system,
      supply,
      conductor: { material: installation.materials.electrodeConductors },
      electrodes: served.length > 0 ? served : [{ kind: "other" }],
      ...(part && { part }),
      ...(fromDrop && { fromDrop: true }),
      ...(ungrounded && { ungrounded }),
      ...(controlTransformer && { controlTransformer }),
    }),
  );
}

interface ServingStart extends Pick<ElectrodeStart, "servings" | "fromDrop"> {
  readonly part?: "only" | "common" | "tap";
  readonly controlTransformer?: boolean;
}

/** What tells the conductors to an electrode apart: the arrangement that each belongs to, and where it starts if there are several in one. */
function whoIs(
  { id }: DrawnElectrode,
  { from, alternative }: ElectrodeStart,
  starts: readonly ElectrodeStart[],
): Omit<ConductorIdentity, "role"> {
  const isOne = starts.filter((one) => one.alternative === alternative).length === 1;
  return { subject: id, ...(isOne ? {} : { place: from }), ...(alternative && { alternative }) };
}

/** The jumpers at both ends of a ferrous raceway: by the conductor inside as installed, where the installation tells, else as required. */
export function racewayJumpersOf(
  { installation, code }: InstallationInCode,
  { ferrousRaceway = false }: DrawnElectrode,
  inside: ScheduledConductor,
): readonly ScheduledConductor[] {
  const {
    id,
    by,
    result: { outcome },
  } = inside;
  if (!ferrousRaceway || outcome.kind !== "conductor") return [];
  const installed = (installation.installed ?? []).filter((one) => one.conductor === id);
  const required = { size: outcome.size, material: installation.materials.electrodeConductors };
  const result = electrodeRacewayBondingJumper.decide({
    code,
    ferrous: true,
    enclosed: [required, ...installed.map(({ size, material }) => ({ size, material }))],
    conductor: { material: installation.materials.bondingJumpers },
  });
  const { role: _, part: __, ...who } = identityOf(inside);
  const raceway = { kind: "raceway", around: identityOf(inside) } as const;
  return [scheduled(who, raceway, { kind: "conductor-inside" }, result, { by })];
}

/** An electrode with those that hang on it, over others, in the order of the installation. */
export function servedBy(
  electrode: DrawnElectrode,
  electrodes: readonly DrawnElectrode[],
): readonly Electrode[] {
  const next = electrodes.filter(({ from }) => from === electrode.id);
  return [asElectrode(electrode), ...next.flatMap((one) => servedBy(one, electrodes))];
}

/** Whether an electrode hangs on a common conductor, itself or over others. */
export function isOnCommon(
  { from }: DrawnElectrode,
  electrodes: readonly DrawnElectrode[],
  common: string | undefined,
): boolean {
  if (from === common) return true;
  const before = electrodes.find(({ id }) => id === from);
  return before !== undefined && isOnCommon(before, electrodes, common);
}

/** An electrode as the rules take it. */
export function asElectrode({ kind, ringConductor }: DrawnElectrode): Electrode {
  return kind === "ring" ? { kind, conductor: ringConductor ?? "2 AWG" } : { kind };
}

/**
 * A lone rod, pipe or plate, and water pipes alone, require another electrode beside them. A derived system that names the water pipe
 * means the building's, whose other electrodes are drawn elsewhere.
 */
function supplementCautions({ system, electrodes, code }: ElectrodesOf): readonly PlacedCaution[] {
  const [first, ...others] = electrodes;
  if (first === undefined) return [];
  const isLone = others.length === 0 && ["rod", "pipe", "plate"].includes(first.kind);
  const isWater =
    system !== "separately-derived" && electrodes.every(({ kind }) => kind === "metal-water-pipe");
  const { section } = electrodeSupplement[code.year];
  return isLone || isWater ? [{ code: "electrode-to-be-supplemented", section, at: first.id }] : [];
}
