import type { Citation } from "../edition/index.js";
import {
  derivedSupplySideJumper,
  serviceBoxes,
  serviceRacewayFittings,
  supplySideJumperSeveralRaceways,
  ungroundedDerivedSupplySide,
} from "../edition/tables/sections.generated.js";
import { supplySideBondingJumper } from "../roles/supply-side-bonding-jumper/index.js";
import { isAlwaysWire } from "../rules/amendment-effects.js";
import { notRequired } from "../rules/finish.js";
import type { SizingResult } from "../rules/result.js";
import type { Supply } from "../supply/index.js";
import type { ConductorEnd } from "./conductor-identity.js";
import { landing } from "./landing.js";
import { inMaterialsOf, type WithMaterials } from "./materials-of.js";
import type { RunsOfSystem } from "./runs-of-system.js";
import type { InstallationInCode, ScheduledConductor } from "./schedule.js";
import { type Case, type ScheduledOptions, scheduled, scheduledOpen } from "./scheduled.js";
import { servingOf } from "./serving.js";
import { commonEnd, runsIn, type SharedRaceway } from "./shared-raceways.js";
import { type DrawnRun, racewaysOf, shareOf, supplyOf } from "./supplies.js";
import { inForm, wantedJumper } from "./wanted-jumper.js";

/**
 * The jumpers that bond the raceways of the runs of a system ahead of the first device, or run in them from a derived source; a raceway that
 * several runs share has its one jumper, named once. Jumpers at both ends may make them needless.
 */
export function racewayJumpersOfRuns(
  system: RunsOfSystem,
  runs: readonly DrawnRun[],
  isNeedless = false,
): readonly ScheduledConductor[] {
  const { sharedRaceways = [] } = system;
  const own = runs.filter(({ in: shared }) => shared === undefined);
  const bonded = [
    ...own.flatMap((run) => bondedRun(system, run)),
    ...sharedRaceways.flatMap((shared) => bondedShared(system, shared, runsIn(runs, shared))),
  ];
  return bonded.flatMap((one) =>
    isNeedless
      ? [noJumperBetween(inMaterialsOf(system, one.own), one)]
      : racewayJumpersOf(inMaterialsOf(system, one.own), one),
  );
}

/** A raceway, or several alike, with what runs in it and how it is bonded. */
interface BondedRaceways {
  readonly subject: string;
  readonly from: string;
  readonly to: string;
  readonly kind: RacewayKind;
  readonly by: readonly string[];
  readonly supply: Supply;
  readonly scope: RacewayScope;
  /** How many raceways there are, and how many jumpers they get. */
  readonly count: number;
  readonly times: number;
  readonly isBondedByFittings: boolean;
  readonly run?: DrawnRun;
  /** What may name the material of the jumpers. */
  readonly own: WithMaterials;
}

/** The raceways of a run: one jumper in each by what runs there, or one in common by all. The wire of a derived system runs in each by default. */
function bondedRun(system: RunsOfSystem, run: DrawnRun): readonly BondedRaceways[] {
  const { code, kind: of } = system;
  const { count, kind } = racewaysOf(run, system);
  const perRaceway = racewayJumpersDrawn(system, run) === "per-raceway" && count > 1;
  const supply = supplyOf(run.supply, code.year);
  return [
    {
      subject: run.id,
      from: run.from,
      to: run.to,
      kind,
      by: [run.id],
      supply: perRaceway ? shareOf(supply, count) : supply,
      scope: perRaceway ? "raceway" : count > 1 ? "all" : "single-raceway",
      count,
      times: perRaceway ? count : 1,
      isBondedByFittings: of === "service" && run.racewayJumpers === "fittings-instead",
      run,
      own: run,
    },
  ];
}

/** A raceway that several runs share: one jumper by all conductors in it, which at a service is a short one at its fitting. */
function bondedShared(
  { code, kind: of }: RunsOfSystem,
  shared: SharedRaceway,
  runs: readonly DrawnRun[],
): readonly BondedRaceways[] {
  const { id, kind, bondedBy } = shared;
  const [start, end] = [commonEnd(runs, "from"), commonEnd(runs, "to")];
  const { by, supply } = servingOf(runs, code.year);
  const isService = of === "service";
  return [
    {
      subject: id,
      from: start ?? id,
      to: isService ? (end ?? start ?? id) : (end ?? id),
      kind,
      by,
      supply,
      scope: "single-raceway",
      count: 1,
      times: 1,
      isBondedByFittings: isService && bondedBy === "fittings",
      own: shared,
    },
  ];
}

function racewayJumpersOf(system: RunsOfSystem, raceways: BondedRaceways): readonly ScheduledConductor[] {
  const { subject, kind, times } = raceways;
  if (system.kind === "service" && kind === "nonmetallic") return [noMetalToBond(system, raceways)];
  const { from, to, ...options } = landedOf(system, raceways);
  if (kind === "unknown") {
    const cases = casesOf(system, raceways);
    return [scheduledOpen({ subject }, from, to, "raceway-material", cases, options)];
  }
  const result = jumperIn(system, raceways, kind);
  return [scheduled({ subject }, from, to, result, { ...options, times })];
}

/**
 * Where the jumper of raceways lands and what places it. In a service it is a short jumper at their fitting, which counts no feet (250.92), save
 * in flexible metal, along which a wire runs as it does from a derived source.
 */
function landedOf(
  system: RunsOfSystem,
  { subject, from, to, kind, by, run, times, count }: BondedRaceways,
): ScheduledOptions & { readonly from: ConductorEnd; readonly to: ConductorEnd } {
  const { code, boxes } = system;
  const sizing = count > 1 && times === 1 ? supplySideJumperSeveralRaceways[code.year] : undefined;
  const placement = placementOfJumper(system);
  if (system.kind === "service" && kind !== "flexible-metal") {
    const mayServe = kind !== "unknown" && !isAlwaysWire(code, "supply-side-bonding-jumper");
    return {
      from: { kind: "raceway-fitting", of: subject },
      to: landing(to, "enclosure"),
      by,
      placement,
      sizing,
      ...(mayServe && {
        insteadPermitted: { by: "bonding-fittings", citation: serviceRacewayFittings[code.year] },
      }),
    };
  }
  return {
    from: landing(from, "enclosure"),
    to: landing(to, system.kind === "service" || boxes.includes(to) ? "enclosure" : "grounding-bar"),
    by,
    placement,
    sizing,
    ...(run && { run }),
  };
}

function placementOfJumper({ kind, grounding, code: { year } }: RunsOfSystem): Citation {
  if (kind === "service") return serviceBoxes[year];
  return (grounding === "ungrounded" ? ungroundedDerivedSupplySide : derivedSupplySideJumper)[year];
}

/** A nonmetallic raceway of a service has nothing that a jumper could bond. */
function noMetalToBond(system: RunsOfSystem, { subject, to }: BondedRaceways): ScheduledConductor {
  const from = { kind: "raceway-fitting", of: subject } as const;
  return scheduled({ subject }, from, landing(to, "enclosure"), noneInNonmetallic(system));
}

function noneInNonmetallic({ installation, code }: RunsOfSystem): SizingResult {
  const { facts } = supplySideBondingJumper;
  const { bondingJumpers } = installation.materials;
  return notRequired(facts, code, bondingJumpers, "nonmetallic-raceway", serviceBoxes[code.year]);
}

/** What is required for each material that a raceway may have. */
function casesOf(system: RunsOfSystem, raceways: BondedRaceways): readonly [Case, Case] {
  const { times } = raceways;
  if (system.kind === "service") {
    return [
      { if: "metal", result: jumperIn(system, raceways, "flexible-metal"), times },
      { if: "nonmetallic", result: noneInNonmetallic(system), times: 1 },
    ];
  }
  return [
    { if: "flexible-metal-or-nonmetallic", result: jumperIn(system, raceways, "nonmetallic"), times },
    { if: "nonflexible-metal", result: jumperIn(system, raceways, "nonflexible-metal"), times },
  ];
}

function jumperIn(
  system: RunsOfSystem,
  { supply, scope, isBondedByFittings, run }: BondedRaceways,
  kind: Exclude<RacewayKind, "unknown">,
): SizingResult {
  const serves = system.kind === "separately-derived" && kind === "nonflexible-metal";
  const instead = serves ? "nonflexible-metal-raceway" : isBondedByFittings ? "bonding-fittings" : undefined;
  const drawn = { ...system, wanted: inForm(wantedJumper(system), run?.jumperForm) };
  return racewayJumper(drawn, supply, scope, instead);
}

/** The jumper of one of several raceways by what runs in it, that of a single one, or the one of all by all that runs in them. */
export function racewayJumper(
  system: InstallationInCode & Pick<RunsOfSystem, "kind"> & Partial<Pick<RunsOfSystem, "grounding">>,
  supply: Supply,
  scope: RacewayScope,
  instead?: InsteadOfJumper,
): SizingResult {
  const { code, kind } = system;
  return supplySideBondingJumper.decide({
    code,
    supply,
    ...wantedJumper(system),
    system: kind,
    scope,
    ...(system.grounding === "ungrounded" && kind === "separately-derived" && { ungrounded: true }),
    ...(instead && { instead }),
  });
}

type RacewayScope = "raceway" | "single-raceway" | "all";
type RacewayKind = NonNullable<DrawnRun["raceways"]>["kind"];
type InsteadOfJumper = "bonding-fittings" | "nonflexible-metal-raceway";

/** Whether each raceway of a run has a jumper of its own, all have one, or fittings stand in: as drawn, else as usual. */
export function racewayJumpersDrawn(
  { kind, sharedRaceways }: Pick<RunsOfSystem, "kind" | "sharedRaceways">,
  run: DrawnRun,
): NonNullable<DrawnRun["racewayJumpers"]> {
  const isMetal = racewaysOf(run, { sharedRaceways }).kind === "nonflexible-metal";
  const wireInEach = kind === "separately-derived" && !isMetal;
  return run.racewayJumpers ?? (wireInEach ? "per-raceway" : "common");
}

/** Says of raceways that the jumpers at both of their ends make a supply-side jumper needless. */
function noJumperBetween(
  { installation, code }: RunsOfSystem,
  { subject, from, to }: BondedRaceways,
): ScheduledConductor {
  const material = installation.materials.bondingJumpers;
  const citation = derivedSupplySideJumper[code.year];
  const result = notRequired(supplySideBondingJumper.facts, code, material, "jumpers-at-both-ends", citation);
  const [start, end] = [landing(from, "enclosure"), landing(to, "enclosure")];
  return scheduled({ subject }, start, end, result);
}
