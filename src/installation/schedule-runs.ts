import type { Citation, EditionYear } from "../edition/index.js";
import {
  derivedGroundedConductor,
  derivedSupplySideJumper,
  parallelMinimum,
  serviceBoxes,
  serviceGroundedConductor,
  serviceRacewayFittings,
  supplySideJumperSeveralRaceways,
  ungroundedDerivedSupplySide,
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
import type { Alternative, ConductorEnd } from "./conductor-identity.js";
import { groundedBar, groundedTerminal, landing } from "./landing.js";
import type { InstallationInCode, PlacedCaution, ScheduledConductor } from "./schedule.js";
import { scheduled } from "./scheduled.js";
import { type DrawnRun, hasGroundedConductor, racewaysOf, shareOf, supplyOf } from "./supplies.js";
import { wantedJumper } from "./wanted-jumper.js";

/** What the runs of a system have in common. */
export interface RunsOfSystem extends InstallationInCode {
  readonly kind: SystemKind;
  readonly grounding: Grounding;
  /** Id of the place where its conductors start. */
  readonly source: string;
  /** Ids of the places through which they only pass. */
  readonly boxes: readonly string[];
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
  const placement = (kind === "service" ? serviceGroundedConductor : derivedGroundedConductor)[code.year];
  const [from, to] = endsOfGroundedConductor(system, run);
  return [scheduled(who, from, to, result, { by: [run.id], times: count, run, placement })];
}

/** Where the grounded conductor of a run starts and ends: at the source, on the bar of a disconnect, or passing through a box. */
function endsOfGroundedConductor(
  system: RunsOfSystem,
  { from, to }: DrawnRun,
): readonly [ConductorEnd, ConductorEnd] {
  const { source, boxes } = system;
  const start = from === source ? groundedTerminal(system, from) : landing(from, "grounded-conductor");
  return [start, boxes.includes(to) ? landing(to, "grounded-conductor") : groundedBar(system, to)];
}

/**
 * The jumpers that bond the raceways of a run ahead of the first device, or run in them from a derived source: one in each by what
 * runs there, or one in common by all. The wire of a derived system runs in each raceway by default.
 */
export function racewayJumpersOf(system: RunsOfSystem, run: DrawnRun): readonly ScheduledConductor[] {
  const { code, kind } = system;
  const { count, kind: raceway } = racewaysOf(run);
  if (kind === "service" && raceway === "nonmetallic") return [noMetalToBond(system, run)];
  const perRaceway = racewayJumpersDrawn(kind, run) === "per-raceway" && count > 1;
  const supply = supplyOf(run.supply, code.year);
  const result = perRaceway
    ? racewayJumper(system, shareOf(supply, count), "raceway", insteadOfJumpers(kind, run))
    : racewayJumper(system, supply, "all", insteadOfJumpers(kind, run));
  const times = perRaceway ? count : 1;
  const by = [run.id];
  const sizing = count > 1 && !perRaceway ? supplySideJumperSeveralRaceways[code.year] : undefined;
  if (kind === "service" && raceway === "nonflexible-metal") {
    const from = { kind: "raceway-fitting", of: run.id } as const;
    return [
      scheduled({ subject: run.id }, from, landing(run.to, "enclosure"), result, {
        by,
        times,
        placement: serviceBoxes[code.year],
        sizing,
        ...(isAlwaysWire(code, "supply-side-bonding-jumper")
          ? {}
          : { insteadPermitted: fittings(code.year) }),
      }),
    ];
  }
  const from = landing(run.from, "enclosure");
  const to = landing(run.to, system.boxes.includes(run.to) ? "enclosure" : "grounding-bar");
  const placement = placementOfWire(system);
  return [scheduled({ subject: run.id }, from, to, result, { by, times, run, placement, sizing })];
}

/** Where the edition requires the wire along a run: in flexible metal at a service, and from a derived source to its first disconnect. */
function placementOfWire({ kind, grounding, code: { year } }: RunsOfSystem): Citation {
  if (kind === "service") return serviceBoxes[year];
  return (grounding === "ungrounded" ? ungroundedDerivedSupplySide : derivedSupplySideJumper)[year];
}

function fittings(year: EditionYear): NonNullable<ScheduledConductor["insteadPermitted"]> {
  return { by: "bonding-fittings", citation: serviceRacewayFittings[year] };
}

/** A nonmetallic raceway of a service has nothing that a jumper could bond. */
function noMetalToBond({ installation, code }: RunsOfSystem, run: DrawnRun): ScheduledConductor {
  const material = installation.materials.bondingJumpers;
  const { facts } = supplySideBondingJumper;
  const result = notRequired(facts, code, material, "nonmetallic-raceway", serviceBoxes[code.year]);
  return scheduled({ subject: run.id }, { kind: "raceway-fitting", of: run.id }, run.to, result);
}

/** The jumper of one of several raceways by what runs in it, or the one of all by all that runs in them. */
export function racewayJumper(
  system: InstallationInCode & Pick<RunsOfSystem, "kind">,
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
  const [from, to] = [landing(run.from, "enclosure"), landing(run.to, "enclosure")];
  return scheduled({ subject: run.id }, from, to, result);
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
