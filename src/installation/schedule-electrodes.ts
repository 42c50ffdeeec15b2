import { electrodeSupplement } from "../edition/tables/sections.generated.js";
import { electrodeBondingJumper } from "../roles/electrode-bonding-jumper/index.js";
import { electrodeRacewayBondingJumper } from "../roles/electrode-raceway-bonding-jumper/index.js";
import { groundingElectrodeConductor } from "../roles/grounding-electrode-conductor/index.js";
import type { ElectrodeConductorOfSupply } from "../roles/grounding-electrode-conductor/input.js";
import type { Electrode } from "../rules/electrode.js";
import {
  type Alternative,
  type ConductorEnd,
  type ConductorIdentity,
  identityOf,
} from "./conductor-identity.js";
import { type DrawnElectrode, hangingOn } from "./electrodes-of.js";
import { foundOf } from "./found-conductors.js";
import { inMaterialsOf, type WithMaterials } from "./materials-of.js";
import type { InstallationInCode, PlacedCaution, ScheduledConductor, ScheduledPart } from "./schedule.js";
import { scheduled } from "./scheduled.js";
import { largestServed, type ServedResult, type Serving } from "./serving.js";
import { mostOhms } from "./violations/electrodes.js";

/** What the electrode conductors of one system or building go by. */
export interface ElectrodesOf extends InstallationInCode {
  readonly system: ElectrodeConductorOfSupply["system"];
  readonly electrodes: readonly DrawnElectrode[];
  /** The places from which conductors go to an electrode; none where it is tied to another electrode. */
  readonly startsOf: (electrode: DrawnElectrode) => readonly ElectrodeStart[];
  /** What a conductor that starts at a place is connected to there; the place alone by default. */
  readonly landingOf?: (from: string) => ConductorEnd;
  /** All ungrounded conductors of the system, for the jumpers between electrodes. */
  readonly servings: readonly Serving[];
  /** Whether the system has no grounded conductor, so that another section requires its electrode conductor. */
  readonly ungrounded?: boolean;
  /** Whether the system is grounded through an impedance, from which its electrode conductor starts by another section. */
  readonly impedance?: boolean;
}

/** A place where an electrode conductor starts, and which part it then is. */
export interface ElectrodeStart {
  readonly from: string;
  readonly servings: readonly Serving[];
  readonly part?: "only" | "common";
  /** For the common conductor of a service: whether the enclosures hang directly on the drop or lateral. */
  readonly fromDrop?: boolean;
  readonly alternative?: Alternative;
  /** What it starts in, which may name the material of the conductors there. */
  readonly own?: WithMaterials | undefined;
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
  const { code, servings, electrodes, startsOf, landingOf } = system;
  const { installation } = inMaterialsOf(system, electrode);
  if (electrodes.some(({ id }) => id === electrode.from)) {
    const conductor = { material: installation.materials.electrodeConductors };
    const served = servedBy(installation, electrode);
    const { by, result } = largestServed(servings, (supply) =>
      electrodeBondingJumper.decide({ code, supply, conductor, electrodes: served }),
    );
    const made = scheduled(whoHangs(electrode), electrode.from, electrode.id, result, { by });
    return [made, ...racewayJumpersOf(system, electrode, made)];
  }
  const starts = startsOf(electrode);
  return starts.flatMap((start) => {
    const { by, result } = conductorFrom(system, electrode, start);
    const from = landingOf?.(start.from) ?? start.from;
    const made = scheduled(whoIs(electrode, start, starts), from, electrode.id, result, { by });
    return [made, ...racewayJumpersOf(system, electrode, made)];
  });
}

/** The electrode conductor from a place to an electrode. */
export function conductorFrom(
  of: ElectrodesOf,
  electrode: DrawnElectrode,
  start: Omit<ElectrodeStart, "from" | "alternative">,
): ServedResult {
  const at = inMaterialsOf(of, start.own, electrode);
  return conductorServing(at, servedBy(of.installation, electrode), start);
}

/** The electrode conductor or tap that serves some electrodes; where none is known, one of which nothing is limited. */
export function conductorServing(
  {
    installation,
    code,
    system,
    ungrounded = false,
    impedance = false,
  }: Omit<ElectrodesOf, "electrodes" | "startsOf" | "landingOf" | "servings">,
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
      ...(impedance && { impedance }),
      ...(controlTransformer && { controlTransformer }),
    }),
  );
}

interface ServingStart extends Pick<ElectrodeStart, "servings" | "fromDrop"> {
  readonly part?: "only" | "common" | "tap";
  readonly controlTransformer?: boolean;
}

/** The identity of a jumper from another electrode: of a further conductor, with the place where it starts. */
export function whoHangs({ id, from, isFurther }: DrawnElectrode): Omit<ConductorIdentity, "role"> {
  return { subject: id, ...(isFurther === true && { place: from }) };
}

/**
 * What tells the conductors to an electrode apart: the arrangement that each belongs to, and where it starts if there are several in one, or
 * if it is a further one to an electrode that is named elsewhere.
 */
function whoIs(
  { id, isFurther }: DrawnElectrode,
  { from, alternative }: ElectrodeStart,
  starts: readonly ElectrodeStart[],
): Omit<ConductorIdentity, "role"> {
  const isOne = isFurther !== true && starts.filter((one) => one.alternative === alternative).length === 1;
  return { subject: id, ...(isOne ? {} : { place: from }), ...(alternative && { alternative }) };
}

/** The jumpers at both ends of a ferrous raceway: by the conductor inside as installed, where the installation tells, else as required. */
export function racewayJumpersOf(
  at: InstallationInCode,
  electrode: DrawnElectrode,
  inside: ScheduledConductor,
): readonly ScheduledConductor[] {
  const { ferrousRaceway = false } = electrode;
  const { installation, code } = inMaterialsOf(at, electrode);
  const {
    by,
    result: { outcome, material },
  } = inside;
  if (!ferrousRaceway || outcome.kind !== "conductor") return [];
  const installed = foundOf(installation, inside);
  const required = { size: outcome.size, material };
  const result = electrodeRacewayBondingJumper.decide({
    code,
    ferrous: true,
    enclosed: [required, ...installed],
    conductor: { material: installation.materials.bondingJumpers },
  });
  const { role: _, part: __, ...who } = identityOf(inside);
  const raceway = { kind: "raceway", around: identityOf(inside) } as const;
  return [scheduled(who, raceway, { kind: "conductor-inside" }, result, { by })];
}

/** An electrode with those that hang on it, over others, in the order of the installation. */
export function servedBy(
  installation: InstallationInCode["installation"],
  electrode: DrawnElectrode,
): readonly Electrode[] {
  const next = hangingOn(installation, electrode.id);
  return [asElectrode(electrode), ...next.flatMap((one) => servedBy(installation, one))];
}

/** Whether an electrode hangs on a common conductor, itself or over others. */
export function isOnCommon(
  { from }: DrawnElectrode,
  electrodes: readonly DrawnElectrode[],
  common: string | undefined,
): boolean {
  if (from === common) return true;
  return electrodes.some((before) => before.id === from && isOnCommon(before, electrodes, common));
}

/** An electrode as the rules take it. */
export function asElectrode({ kind, ringConductor }: DrawnElectrode): Electrode {
  return kind === "ring" ? { kind, conductor: ringConductor ?? "2 AWG" } : { kind };
}

/**
 * A lone rod, pipe or plate requires another electrode beside it. Of an indoor derived system the other electrodes of the building are drawn
 * elsewhere, so that nothing more can be said; elsewhere its lack is a violation.
 */
function supplementCautions({
  installation,
  system,
  electrodes,
  code,
}: ElectrodesOf): readonly PlacedCaution[] {
  const [first, ...others] = electrodes;
  if (first === undefined || others.length > 0 || system !== "separately-derived") return [];
  const isOutdoors = installation.derivedSystems?.some(
    ({ source, electrodes: own }) => source.outdoors && own?.some(({ id }) => id === first.id),
  );
  const isLone =
    first.isFurther !== true &&
    ["rod", "pipe", "plate"].includes(first.kind) &&
    (first.ohms ?? Infinity) > mostOhms;
  const { section } = electrodeSupplement[code.year];
  return isLone && !isOutdoors ? [{ code: "electrode-to-be-supplemented", section, at: first.id }] : [];
}
