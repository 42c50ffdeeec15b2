import type { Code } from "../edition/index.js";
import { equipmentGroundingConductorFacts } from "../edition/tables/roles.generated.js";
import {
  equipmentGroundingKinds,
  feederGroundedConductor,
  rebondedBuilding,
} from "../edition/tables/sections.generated.js";
import { equipmentGroundingConductor } from "../roles/equipment-grounding-conductor/index.js";
import type { GroundingRun } from "../roles/equipment-grounding-conductor/shape.generated.js";
import { groundedConductor } from "../roles/grounded-conductor/index.js";
import { isAlwaysWire } from "../rules/amendment-effects.js";
import { notRequired } from "../rules/finish.js";
import { ratingOf } from "../rules/protected-circuit.js";
import type { SizingResult } from "../rules/result.js";
import { type DrawnBuilding, type DrawnCircuit, mayStayRebonded } from "./building-supply.js";
import { groundedBar, landing } from "./landing.js";
import { inMaterialsOf } from "./materials-of.js";
import { originsOf } from "./origins.js";
import type { InstallationInCode, PlacedCaution, ScheduledConductor, ScheduledPart } from "./schedule.js";
import { shareOfLoad } from "./schedule-runs.js";
import { scheduled } from "./scheduled.js";
import { shareOf } from "./supplies.js";
import { parallelViolations } from "./violations/parallel.js";

const runs: Readonly<Record<DrawnCircuit["wiring"], GroundingRun>> = {
  raceway: { kind: "single" },
  "parallel-raceways": { kind: "parallel-raceways" },
  "parallel-cables": { kind: "parallel-cables" },
  "tray-single-conductor": { kind: "tray", conductor: "single" },
  "tray-cable": { kind: "tray", conductor: "in-cable" },
};

/** The equipment grounding conductor and the grounded conductor of each circuit: one in each raceway or cable of a parallel run. */
export function circuitPart(at: InstallationInCode): ScheduledPart {
  const { installation } = at;
  const { circuits = [], buildings = [] } = installation;
  const originOf = originsOf(installation);
  const rebonded = new Map(
    buildings.flatMap((one) =>
      one.circuit !== undefined && one.existingGroundedConductor !== undefined
        ? [[one.circuit, one] as const]
        : [],
    ),
  );
  const parts = circuits.map((circuit): ScheduledPart => {
    const building = rebonded.get(circuit.id);
    const own = inMaterialsOf(at, circuit);
    return {
      conductors: [
        equipmentGroundingOf(own, circuit, building),
        ...groundedConductorOf(
          own,
          circuit,
          building,
          originOf(circuit.from)?.grounding === "grounded-phase",
        ),
      ],
      cautions: increaseCautions(at, circuit),
    };
  });
  const inParallel = (installation.circuits ?? []).flatMap(({ id, conductors: supply, parallelException }) =>
    supply === undefined ? [] : [{ id, supply, ...(parallelException && { parallelException }) }],
  );
  return {
    conductors: parts.flatMap(({ conductors }) => conductors),
    violations: parallelViolations(inParallel, at.code.year),
    cautions: parts.flatMap(({ cautions }) => cautions ?? []),
  };
}

function equipmentGroundingOf(
  { installation, code }: InstallationInCode,
  circuit: DrawnCircuit,
  building: DrawnBuilding | undefined,
): ScheduledConductor {
  const { id, from, to, device, conductors: installed, increasedFrom, wiring, raceways = 1 } = circuit;
  const material = installation.materials.equipmentGrounding;
  if (building !== undefined && mayStayRebonded(building)) {
    const result = notRequired(
      equipmentGroundingConductorFacts,
      code,
      material,
      "grounded-conductor-is-fault-path",
      rebondedBuilding[code.year],
    );
    return scheduled({ subject: id }, from, to, result, { run: circuit });
  }
  const inForce = codeOfCircuit(code, circuit);
  if (circuit.racewayServes === true && !isAlwaysWire(inForce, "equipment-grounding-conductor")) {
    const citation = equipmentGroundingKinds[code.year];
    const none = notRequired(
      equipmentGroundingConductorFacts,
      inForce,
      material,
      "metal-raceway-serves",
      citation,
    );
    return scheduled({ subject: id }, landing(from, "grounding-bar"), to, none, { run: circuit });
  }
  const result = equipmentGroundingConductor.decide({
    code: inForce,
    circuits: [
      { device, ...(installed && { conductors: installed }), ...(increasedFrom && { increasedFrom }) },
    ],
    conductor: { material },
    run: runs[wiring],
  });
  return scheduled({ subject: id }, landing(from, "grounding-bar"), to, result, {
    times: raceways,
    run: circuit,
  });
}

/** The grounded conductor of a feeder (215.2(A)), or of one to an existing building that it is the fault path of (250.32(B)). */
function groundedConductorOf(
  { installation, code }: InstallationInCode,
  circuit: DrawnCircuit,
  building: DrawnBuilding | undefined,
  isPhase: boolean,
): readonly ScheduledConductor[] {
  const { id, from, to, device, conductors, groundedConductor: drawn, raceways = 1 } = circuit;
  if (drawn === undefined || conductors === undefined) return [];
  const { load } = drawn;
  const amperes = ratingOf(device);
  const result: SizingResult = groundedConductor.decide({
    code: codeOfCircuit(code, circuit),
    system: "service",
    supply: raceways > 1 ? shareOf(conductors, raceways) : conductors,
    scope: raceways > 1 ? "raceway" : "all",
    conductor: { material: installation.materials.groundedConductors },
    ...(isPhase && { grounded: "phase" as const }),
    ...(building === undefined
      ? { feederDeviceAmperes: amperes }
      : { rebondedAtBuildingWithDevice: amperes }),
    ...(load && { load: shareOfLoad(load, raceways) }),
  });
  const start = groundedBar({ grounding: isPhase ? "grounded-phase" : "solidly-grounded" }, from);
  return [scheduled({ subject: id }, start, to, result, { by: [id], times: raceways, run: circuit })];
}

function increaseCautions(
  { code }: InstallationInCode,
  { id, groundedConductor: drawn, increasedFrom }: DrawnCircuit,
): readonly PlacedCaution[] {
  if (drawn === undefined || increasedFrom === undefined) return [];
  const { section } = feederGroundedConductor[code.year];
  return [{ code: "feeder-increase-not-counted", section, at: id }];
}

/** The code with what a circuit adds to the circumstances. */
function codeOfCircuit(code: Code, { lengthFeet, location }: DrawnCircuit): Code {
  if (code.amendments === undefined) return code;
  const circumstances = {
    ...code.circumstances,
    ...(lengthFeet === undefined ? {} : { lengthFeet }),
    ...(location === undefined ? {} : { location }),
  };
  return { ...code, circumstances };
}
