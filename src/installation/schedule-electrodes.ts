import { electrodeSupplement } from "../edition/tables/sections.generated.js";
import type { Electrode } from "../rules/electrode.js";
import { sizeElectrodeBondingJumper } from "../rules/electrode-bonding-jumper.js";
import { sizeElectrodeRacewayBondingJumper } from "../rules/electrode-raceway-bonding-jumper.js";
import { sizeGroundingElectrodeConductor } from "../rules/grounding-electrode-conductor.js";
import type { ElectrodeConductorInput } from "../rules/grounding-electrode-conductor-input.js";
import type { Supply } from "../supply/index.js";
import type { Drawing } from "./document.js";
import type { DrawingInCode, PlacedCaution, ScheduledConductor, ScheduledPart } from "./schedule.js";
import { scheduled } from "./scheduled.js";

/** An electrode as a drawing gives it. */
export type DrawnElectrode = NonNullable<NonNullable<Drawing["buildings"]>[number]["electrodes"]>[number];

/** What the electrode conductors of one system or building go by. */
export interface ElectrodesOf extends DrawingInCode {
  readonly of: ElectrodeConductorInput["of"];
  readonly electrodes: readonly DrawnElectrode[];
  /** The ungrounded conductors at a place from which an electrode conductor may start; `undefined` for another electrode. */
  readonly supplyAt: (place: string) => PlaceSupply | undefined;
  /** All ungrounded conductors of the system, for the jumpers between electrodes. */
  readonly supply: Supply;
  /** Whether the system has no grounded conductor, so that another section asks for its electrode conductor. */
  readonly ungrounded?: boolean;
}

/** A place where an electrode conductor starts, and which part it then is. */
export interface PlaceSupply {
  readonly supply: Supply;
  readonly part?: "only" | "common" | "tap";
  /** For the common conductor of a service: whether the enclosures hang directly on the drop or lateral. */
  readonly fromDrop?: boolean;
}

/** Grounding electrode conductors and the jumpers between electrodes, from the tree that the drawing gives. */
export function electrodePart(system: ElectrodesOf): ScheduledPart {
  const { drawing, code, electrodes } = system;
  return {
    conductors: electrodes.flatMap((electrode) => {
      const conductor = conductorTo(system, electrode);
      return [conductor, ...racewayJumpersOf({ drawing, code }, electrode, conductor)];
    }),
    cautions: supplementCautions(system),
  };
}

function conductorTo(system: ElectrodesOf, electrode: DrawnElectrode): ScheduledConductor {
  const { drawing, code, of, supply, electrodes, supplyAt, ungrounded = false } = system;
  const conductor = { material: drawing.materials.electrodeConductors };
  const served = servedBy(electrode, electrodes);
  const start = supplyAt(electrode.from);
  if (start === undefined) {
    const result = sizeElectrodeBondingJumper({ code, supply, jumper: conductor, to: served });
    return scheduled(`electrode-bonding-jumper ${electrode.id}`, electrode.from, electrode.id, result);
  }
  const result = sizeGroundingElectrodeConductor({
    code,
    of,
    supply: start.supply,
    conductor,
    electrodes: served,
    ...(start.part && { part: start.part }),
    ...(start.fromDrop && { fromDrop: true }),
    ...(ungrounded && { ungrounded }),
  });
  return scheduled(`grounding-electrode-conductor ${electrode.id}`, electrode.from, electrode.id, result);
}

/** The jumpers at both ends of a ferrous raceway: by the conductor inside as installed, where the drawing tells, else as required. */
export function racewayJumpersOf(
  { drawing, code }: DrawingInCode,
  { id, ferrousRaceway = false }: DrawnElectrode,
  { id: conductor, result: { outcome } }: ScheduledConductor,
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
      `electrode-raceway-bonding-jumper ${id}`,
      `raceway of ${conductor}`,
      "conductor inside",
      result,
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
