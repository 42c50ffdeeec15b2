import {
  derivedSupplySideJumper,
  parallelMinimum,
  serviceRacewayFittings,
} from "../edition/tables/sections.generated.js";
import { notRequired } from "../rules/finish.js";
import { sizeGroundedConductor } from "../rules/grounded-conductor.js";
import type { NeutralLoad } from "../rules/grounded-conductor-input.js";
import { hasSmallParallelSets } from "../rules/jumper-cautions.js";
import { sizeSupplySideBondingJumper } from "../rules/supply-side-bonding-jumper.js";
import type { SystemKind } from "../rules/system-kind.js";
import type { DrawingInCode, PlacedCaution, ScheduledConductor } from "./schedule.js";
import { scheduled } from "./scheduled.js";
import { type DrawnRun, hasGroundedConductor, racewaysOf, shareOf, supplyOf } from "./supplies.js";

/** What the runs of a system have in common. */
export interface RunsOfSystem extends DrawingInCode {
  readonly kind: SystemKind;
  readonly grounding: "solidly-grounded" | "grounded-phase" | "impedance" | "ungrounded";
}

/** Where the system bonding jumper of a derived system is, for the grounded conductor of its runs. */
export interface JumperPlace {
  readonly jumperAt: "source" | "enclosure";
  /** Where several arrangements are compared, the one that has its jumper there. */
  readonly alternative?: string;
}

/** The grounded conductor of a run: one in each raceway, by what runs in that raceway. */
export function groundedConductorsOf(
  system: RunsOfSystem,
  run: DrawnRun,
  place?: JumperPlace,
): readonly ScheduledConductor[] {
  const { drawing, code, kind, grounding } = system;
  if (!hasGroundedConductor(system)) return [];
  const { count } = racewaysOf(run);
  const { alternative } = place ?? {};
  const result = sizeGroundedConductor({
    code,
    system: kind,
    supply: shareOf(supplyOf(run.supply, code.year), count),
    scope: count > 1 ? "raceway" : "all",
    conductor: { material: drawing.materials.groundedConductors },
    ...(grounding === "grounded-phase" && { grounded: "phase" as const }),
    ...(place && { jumperAt: place.jumperAt }),
    ...(run.load && { load: shareOfLoad(run.load, count) }),
  });
  const id = `grounded-conductor ${run.id}${alternative === undefined ? "" : ` (${alternative})`}`;
  const options = { by: [run.id], times: count, run, ...(alternative !== undefined && { alternative }) };
  return [scheduled(id, run.from, run.to, result, options)];
}

/**
 * The jumpers that bond the raceways of a run ahead of the first device, or run in them from a derived source: one in each by what
 * runs there, or one in common by all. The wire of a derived system runs in each raceway, unless told otherwise.
 */
export function racewayJumpersOf(system: RunsOfSystem, run: DrawnRun): readonly ScheduledConductor[] {
  const { drawing, code, kind } = system;
  const { count, kind: raceway } = racewaysOf(run);
  const isService = kind === "service";
  if (isService && raceway === "nonmetallic") return [];
  const perRaceway = racewayJumpersDrawn(kind, run) === "per-raceway" && count > 1;
  const supply = supplyOf(run.supply, code.year);
  const instead = insteadOfJumpers(kind, run);
  const result = sizeSupplySideBondingJumper({
    code,
    supply: perRaceway ? shareOf(supply, count) : supply,
    jumper: { material: drawing.materials.bondingJumpers },
    system: kind,
    scope: perRaceway ? "raceway" : "all",
    ...(instead && { instead }),
  });
  const times = perRaceway ? count : 1;
  return [
    scheduled(`supply-side-bonding-jumper ${run.id}`, run.from, run.to, result, { by: [run.id], times, run }),
  ];
}

function insteadOfJumpers(
  system: SystemKind,
  run: DrawnRun,
): "bonding-fittings" | "nonflexible-metal-raceway" | undefined {
  if (system === "service") return run.racewayJumpers === "fittings-instead" ? "bonding-fittings" : undefined;
  return racewaysOf(run).kind === "nonflexible-metal" ? "nonflexible-metal-raceway" : undefined;
}

/** Metal raceways of a service whose jumper fittings could stand in for. */
export function racewayCautions(
  runs: readonly DrawnRun[],
  { code: { year } }: Pick<DrawingInCode, "code">,
): readonly PlacedCaution[] {
  const { section } = serviceRacewayFittings[year];
  return runs
    .filter((run) => racewaysOf(run).kind !== "nonmetallic" && run.racewayJumpers !== "fittings-instead")
    .map(({ id }) => ({ code: "bonding-fittings-may-serve", section, at: id }));
}

/** Whether each raceway of a run has a jumper of its own, all have one, or fittings stand in: as drawn, else as usual. */
export function racewayJumpersDrawn(
  kind: SystemKind,
  run: DrawnRun,
): NonNullable<DrawnRun["racewayJumpers"]> {
  const wireInEach = kind === "separately-derived" && racewaysOf(run).kind !== "nonflexible-metal";
  return run.racewayJumpers ?? (wireInEach ? "per-raceway" : "common");
}

/** Says of each run that the jumpers at both of its ends make a supply-side jumper needless. */
export function noJumperBetween({ drawing, code }: RunsOfSystem, run: DrawnRun): ScheduledConductor {
  const material = drawing.materials.bondingJumpers;
  const citation = derivedSupplySideJumper[code.year];
  const result = notRequired("supply-side-bonding-jumper", code, material, "jumpers-at-both-ends", citation);
  return scheduled(`supply-side-bonding-jumper ${run.id}`, run.from, run.to, result);
}

/** Runs whose conductors are too small to be in parallel. */
export function parallelCautions(
  runs: readonly { readonly id: string; readonly supply: DrawnRun["supply"] }[],
  { code: { year } }: Pick<DrawingInCode, "code">,
): readonly PlacedCaution[] {
  const { section } = parallelMinimum[year];
  return runs
    .filter(({ supply }) => hasSmallParallelSets(supplyOf(supply, year)))
    .map(({ id }) => ({ code: "parallel-below-1-0", section, at: id }));
}

/** The load of one of several grounded conductors in parallel. */
function shareOfLoad(
  { amperes, circuitAmperes, listedFor75 }: NonNullable<DrawnRun["load"]>,
  parts: number,
): NeutralLoad {
  return { amperes: amperes / parts, circuitAmperes, ...(listedFor75 === undefined ? {} : { listedFor75 }) };
}
