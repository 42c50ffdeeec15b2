import { electrodeSupplement } from "../edition/tables/sections.generated.js";
import type { Electrode } from "../rules/electrode.js";
import { sizeElectrodeBondingJumper } from "../rules/electrode-bonding-jumper.js";
import { sizeElectrodeRacewayBondingJumper } from "../rules/electrode-raceway-bonding-jumper.js";
import { sizeGroundingElectrodeConductor } from "../rules/grounding-electrode-conductor.js";
import type { ElectrodeConductorInput } from "../rules/grounding-electrode-conductor-input.js";
import type { Drawing } from "./document.js";
import type { DrawingInCode, PlacedCaution, ScheduledConductor, ScheduledPart } from "./schedule.js";
import { scheduled } from "./scheduled.js";
import { largestServed, type ServedResult, type Serving } from "./serving.js";

/** An electrode as a drawing gives it. */
export type DrawnElectrode = NonNullable<NonNullable<Drawing["buildings"]>[number]["electrodes"]>[number];

/** What the electrode conductors of one system or building go by. */
export interface ElectrodesOf extends DrawingInCode {
  readonly of: ElectrodeConductorInput["of"];
  readonly electrodes: readonly DrawnElectrode[];
  /** The places from which conductors go to an electrode; none where it is tied to another electrode. */
  readonly startsOf: (electrode: DrawnElectrode) => readonly ElectrodeStart[];
  /** All ungrounded conductors of the system, for the jumpers between electrodes. */
  readonly servings: readonly Serving[];
  /** Whether the system has no grounded conductor, so that another section asks for its electrode conductor. */
  readonly ungrounded?: boolean;
}

/** A place where an electrode conductor starts, and which part it then is. */
export interface ElectrodeStart {
  readonly from: string;
  readonly servings: readonly Serving[];
  readonly part?: "only" | "common";
  /** For the common conductor of a service: whether the enclosures hang directly on the drop or lateral. */
  readonly fromDrop?: boolean;
  readonly alternative?: string;
}

/** Grounding electrode conductors and the jumpers between electrodes, from the tree that the drawing gives. */
export function electrodePart(system: ElectrodesOf): ScheduledPart {
  const { electrodes } = system;
  return {
    conductors: electrodes.flatMap((electrode) => conductorsTo(system, electrode)),
    cautions: supplementCautions(system),
  };
}

function conductorsTo(system: ElectrodesOf, electrode: DrawnElectrode): readonly ScheduledConductor[] {
  const { drawing, code, servings, electrodes, startsOf } = system;
  const starts = startsOf(electrode);
  if (starts.length === 0) {
    const jumper = { material: drawing.materials.electrodeConductors };
    const to = servedBy(electrode, electrodes);
    const { by, result } = largestServed(servings, (supply) =>
      sizeElectrodeBondingJumper({ code, supply, jumper, to }),
    );
    const id = `electrode-bonding-jumper ${electrode.id}`;
    const made = scheduled(id, electrode.from, electrode.id, result, { by });
    return [made, ...racewayJumpersOf(system, electrode, made)];
  }
  return starts.flatMap((start) => {
    const { by, result } = conductorFrom(system, electrode, start);
    const name = nameOf(electrode, start, starts);
    const { from, alternative } = start;
    const made = scheduled(`grounding-electrode-conductor ${name}`, from, electrode.id, result, {
      by,
      ...(alternative && { alternative }),
    });
    return [made, ...racewayJumpersOf(system, electrode, made, name)];
  });
}

/** The electrode conductor from a place to an electrode. */
export function conductorFrom(
  { drawing, code, of, electrodes, ungrounded = false }: ElectrodesOf,
  electrode: DrawnElectrode,
  { servings, part, fromDrop }: Omit<ElectrodeStart, "from" | "alternative">,
): ServedResult {
  return largestServed(servings, (supply) =>
    sizeGroundingElectrodeConductor({
      code,
      of,
      supply,
      conductor: { material: drawing.materials.electrodeConductors },
      electrodes: servedBy(electrode, electrodes),
      ...(part && { part }),
      ...(fromDrop && { fromDrop: true }),
      ...(ungrounded && { ungrounded }),
    }),
  );
}

/** What tells the conductors to an electrode apart: the arrangement that each belongs to, and where it starts if there are several in one. */
function nameOf(
  { id }: DrawnElectrode,
  { from, alternative }: ElectrodeStart,
  starts: readonly ElectrodeStart[],
): string {
  const isOne = starts.filter((one) => one.alternative === alternative).length === 1;
  return `${id}${isOne ? "" : ` from ${from}`}${alternative === undefined ? "" : ` (${alternative})`}`;
}

/** The jumpers at both ends of a ferrous raceway: by the conductor inside as installed, where the drawing tells, else as required. */
export function racewayJumpersOf(
  { drawing, code }: DrawingInCode,
  { id, ferrousRaceway = false }: DrawnElectrode,
  { id: conductor, by, alternative, result: { outcome } }: ScheduledConductor,
  name = id,
): readonly ScheduledConductor[] {
  if (!ferrousRaceway || outcome.kind !== "conductor") return [];
  const installed = (drawing.installed ?? []).filter((one) => one.conductor === conductor);
  const required = { size: outcome.size, material: drawing.materials.electrodeConductors };
  const result = sizeElectrodeRacewayBondingJumper({
    code,
    ferrous: true,
    enclosed: [required, ...installed.map(({ size, material }) => ({ size, material }))],
    jumper: { material: drawing.materials.bondingJumpers },
  });
  return [
    scheduled(
      `electrode-raceway-bonding-jumper ${name}`,
      `raceway of ${conductor}`,
      "conductor inside",
      result,
      { by, ...(alternative && { alternative }) },
    ),
  ];
}

/** An electrode with those that hang on it, over others, in the order of the drawing. */
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
 * A lone rod, pipe or plate, and water pipes alone, want another electrode beside them. A derived system that names the water pipe
 * means the building's, whose other electrodes are drawn elsewhere.
 */
function supplementCautions({ of, electrodes, code }: ElectrodesOf): readonly PlacedCaution[] {
  const [first, ...others] = electrodes;
  if (first === undefined) return [];
  const isLone = others.length === 0 && ["rod", "pipe", "plate"].includes(first.kind);
  const isWater = of !== "separately-derived" && electrodes.every(({ kind }) => kind === "metal-water-pipe");
  const { section } = electrodeSupplement[code.year];
  return isLone || isWater ? [{ code: "electrode-to-be-supplemented", section, at: first.id }] : [];
}
