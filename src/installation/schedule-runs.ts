import { derivedGroundedConductor, serviceGroundedConductor } from "../edition/tables/sections.generated.js";
import { groundedConductor } from "../roles/grounded-conductor/index.js";
import type { NeutralLoad } from "../rules/shape.generated.js";
import type { Alternative, ConductorEnd } from "./conductor-identity.js";
import { groundedBar, groundedTerminal, landing } from "./landing.js";
import { inMaterialsOf } from "./materials-of.js";
import type { RunsOfSystem } from "./runs-of-system.js";
import type { ScheduledConductor } from "./schedule.js";
import { scheduled } from "./scheduled.js";
import { type DrawnRun, hasGroundedConductor, racewaysOf, shareOf, supplyOf } from "./supplies.js";

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
  const { installation, code, kind, grounding } = inMaterialsOf(system, run);
  if (!hasGroundedConductor(system)) return [];
  const { count } = racewaysOf(run, system);
  const { alternative } = place ?? {};
  const result = groundedConductor.decide({
    code,
    system: kind,
    supply: shareOf(supplyOf(run.supply, code.year), count),
    scope: count > 1 ? "raceway" : "all",
    conductor: {
      material: installation.materials.groundedConductors,
      ...(run.groundedConductorForm && { form: run.groundedConductorForm }),
    },
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

/** The load of one of several grounded conductors in parallel. */
export function shareOfLoad(
  { amperes, circuitAmperes, listedFor75 }: NonNullable<DrawnRun["load"]>,
  parts: number,
): NeutralLoad {
  return { amperes: amperes / parts, circuitAmperes, ...(listedFor75 === undefined ? {} : { listedFor75 }) };
}
