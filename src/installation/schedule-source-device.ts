import { supplySideBondingJumperFacts } from "../edition/tables/roles.generated.js";
import { equipmentGroundingConductor } from "../roles/equipment-grounding-conductor/index.js";
import { groundedConductor } from "../roles/grounded-conductor/index.js";
import { notRequired } from "../rules/finish.js";
import { rolesThatFollow } from "../systems/system-roles.js";
import type { DerivedInCode } from "./derived-system.js";
import { inMaterialsOf } from "./materials-of.js";
import type { ScheduledConductor } from "./schedule.js";
import { shareOfLoad } from "./schedule-runs.js";
import { scheduled } from "./scheduled.js";
import { type DrawnRun, hasGroundedConductor, racewaysOf, shareOf, supplyOf } from "./supplies.js";

/**
 * What runs with the conductors from a source whose own enclosure has the first overcurrent device: they are feeders, with an equipment
 * grounding conductor by that device and a grounded conductor as feeders have.
 */
export function behindSourceDevice(
  drawn: DerivedInCode,
  run: DrawnRun,
  amperes: number,
): readonly ScheduledConductor[] {
  const at = inMaterialsOf(drawn, run);
  const { installation, code, system } = at;
  const { id, from, to } = run;
  const { count } = racewaysOf(run, system);
  const supply = supplyOf(run.supply, code.year);
  const { materials } = installation;
  const follows = rolesThatFollow({
    code,
    kind: "separately-derived",
    source: { kind: system.source.kind, overcurrentDevice: "integral" },
    grounding: system.grounding,
  });
  const noJumper = notRequired(
    supplySideBondingJumperFacts,
    code,
    materials.bondingJumpers,
    "source-and-disconnect-in-one-enclosure",
    follows["supply-side-bonding-jumper"].citation,
  );
  const grounding = equipmentGroundingConductor.decide({
    code,
    circuits: [{ device: { amperes }, conductors: supply }],
    conductor: { material: materials.equipmentGrounding },
    ...(count > 1 && { run: { kind: "parallel-raceways" as const } }),
  });
  return [
    scheduled({ subject: id }, from, to, noJumper),
    scheduled({ subject: id }, from, to, grounding, { times: count, run }),
    ...(hasGroundedConductor(system) ? [groundedOf(at, run, amperes)] : []),
  ];
}

function groundedOf(
  { installation, code, system }: DerivedInCode,
  run: DrawnRun,
  amperes: number,
): ScheduledConductor {
  const { id, from, to, load } = run;
  const { count } = racewaysOf(run, system);
  const result = groundedConductor.decide({
    code,
    system: "separately-derived",
    supply: shareOf(supplyOf(run.supply, code.year), count),
    scope: count > 1 ? "raceway" : "all",
    conductor: { material: installation.materials.groundedConductors },
    feederDeviceAmperes: amperes,
    ...(system.grounding === "grounded-phase" && { grounded: "phase" as const }),
    ...(load && { load: shareOfLoad(load, count) }),
  });
  return scheduled({ subject: id }, from, to, result, { by: [id], times: count, run });
}
