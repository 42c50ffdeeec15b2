import {
  derivedSupplySideJumper,
  parallelMinimum,
  serviceRacewayFittings,
} from "../edition/tables/sections.generated.js";
import { groundedConductor } from "../roles/grounded-conductor/index.js";
import { supplySideBondingJumper } from "../roles/supply-side-bonding-jumper/index.js";
import { isAlwaysWire } from "../rules/amendment-effects.js";
import { hasSmallParallelSets } from "../rules/by-supply-cautions.js";
import { notRequired } from "../rules/finish.js";
import type { SizingResult } from "../rules/result.js";
import type { NeutralLoad, SystemKind } from "../rules/shape.generated.js";
import type { Supply } from "../supply/index.js";
import type { Grounding } from "../systems/shape.generated.js";
import type { Alternative } from "./conductor-identity.js";
import type { InstallationInCode, PlacedCaution, ScheduledConductor } from "./schedule.js";
import { scheduled } from "./scheduled.js";
import { type DrawnRun, hasGroundedConductor, racewaysOf, shareOf, supplyOf } from "./supplies.js";
import { wantedJumper } from "./wanted-jumper.js";

/** What the runs of a system have in common. */
export interface RunsOfSystem extends InstallationInCode {
  readonly kind: SystemKind;
  readonly grounding: Grounding;
}

/** Where the system bonding jumper of a derived system is, for the grounded conductor of its runs. */
export interface JumperPlace {
  readonly jumperAt: "source" | "enclosure";
  /** Where several arrangements are compared, the one that has its jumper there. */
  readonly alternative?: Alternative;
}

/** The grounded conductor of a run: one in each raceway, by what runs in that raceway. */
export function groundedConductorsOf(
  system: RunsOfSystem,
  run: DrawnRun,
  place?: JumperPlace,
): readonly ScheduledConductor[] {
  const { installation, code, kind, grounding } = system;
  if (!hasGroundedConductor(system)) return [];
  const { count } = racewaysOf(run);
  const { alternative } = place ?? {};
  const result = groundedConductor.decide({
    code,
    system: kind,
    supply: shareOf(supplyOf(run.supply, code.year), count),
    scope: count > 1 ? "raceway" : "all",
    conductor: { material: installation.materials.groundedConductors },
    ...(grounding === "grounded-phase" && { grounded: "phase" as const }),
    ...(place && { jumperAt: place.jumperAt }),
    ...(run.load && { load: shareOfLoad(run.load, count) }),
  });
  const who = { subject: run.id, ...(alternative && { alternative }) };
  return [scheduled(who, run.from, run.to, result, { by: [run.id], times: count, run })];
}

/**
 * The jumpers that bond the raceways of a run ahead of the first device, or run in them from a derived source: one in each by what
 * runs there, or one in common by all. The wire of a derived system runs in each raceway by default.
 */
export function racewayJumpersOf(system: RunsOfSystem, run: DrawnRun): readonly ScheduledConductor[] {
  const { code, kind } = system;
  const { count, kind: raceway } = racewaysOf(run);
  const isService = kind === "service";
  if (isService && raceway === "nonmetallic") return [];
  const perRaceway = racewayJumpersDrawn(kind, run) === "per-raceway" && count > 1;
  const supply = supplyOf(run.supply, code.year);
  const result = perRaceway
    ? racewayJumper(system, shareOf(supply, count), "raceway", insteadOfJumpers(kind, run))
    : racewayJumper(system, supply, "all", insteadOfJumpers(kind, run));
  const times = perRaceway ? count : 1;
  return [scheduled({ subject: run.id }, run.from, run.to, result, { by: [run.id], times, run })];
}

/** The jumper of one of several raceways by what runs in it, or the one of all by all that runs in them. */
export function racewayJumper(
  system: Omit<RunsOfSystem, "grounding">,
  supply: Supply,
  scope: "raceway" | "all",
  instead?: InsteadOfJumper,
): SizingResult {
  const { code, kind } = system;
  return supplySideBondingJumper.decide({
    code,
    supply,
    ...wantedJumper(system),
    system: kind,
    scope,
    ...(instead && { instead }),
  });
}

type InsteadOfJumper = "bonding-fittings" | "nonflexible-metal-raceway";

function insteadOfJumpers(system: SystemKind, run: DrawnRun): InsteadOfJumper | undefined {
  if (system === "service") return run.racewayJumpers === "fittings-instead" ? "bonding-fittings" : undefined;
  return racewaysOf(run).kind === "nonflexible-metal" ? "nonflexible-metal-raceway" : undefined;
}

/** Metal raceways of a service whose jumper fittings could stand in for. */
export function racewayCautions(
  runs: readonly DrawnRun[],
  { code }: Pick<InstallationInCode, "code">,
): readonly PlacedCaution[] {
  const { section } = serviceRacewayFittings[code.year];
  if (isAlwaysWire(code, "supply-side-bonding-jumper")) return [];
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
export function noJumperBetween({ installation, code }: RunsOfSystem, run: DrawnRun): ScheduledConductor {
  const material = installation.materials.bondingJumpers;
  const citation = derivedSupplySideJumper[code.year];
  const result = notRequired(supplySideBondingJumper.facts, code, material, "jumpers-at-both-ends", citation);
  return scheduled({ subject: run.id }, run.from, run.to, result);
}

/** Runs whose conductors are too small to be in parallel. */
export function parallelCautions(
  runs: readonly {
    /** Stable id. */
    readonly id: string;
    readonly supply: DrawnRun["supply"];
  }[],
  { code: { year } }: Pick<InstallationInCode, "code">,
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
