import type { Citation, Code, EditionYear } from "../../edition/index.js";
import { cableGroundingConductorsCombined } from "../../edition/tables/placements.generated.js";
import { equipmentGroundingConductorPolicies } from "../../edition/tables/rating-policies.generated.js";
import { equipmentGroundingConductorFacts } from "../../edition/tables/roles.generated.js";
import {
  equipmentGroundingFeederTap,
  equipmentGroundingInstantaneousTrip,
  equipmentGroundingMotor,
  equipmentGroundingParallel,
  traySingleConductor,
} from "../../edition/tables/sections.generated.js";
import { decideByRating } from "../../rules/by-rating.js";
import type { Caution } from "../../rules/caution.js";
import type { Decided } from "../../rules/decided.js";
import { finish } from "../../rules/finish.js";
import type { CircuitDevice } from "../../rules/protected-circuit.js";
import type { SizedResult } from "../../rules/result.js";
import type { FloorStep } from "../../sizing/index.js";
import { floorStep } from "../../sizing/limits.js";
import { countSets } from "../../supply/sums.js";
import type { EquipmentGroundingConductorInput, GroundingRun } from "./shape.generated.js";

type Id = "equipment-grounding-conductor";

/** Sizes an equipment grounding conductor. */
export function decide(input: EquipmentGroundingConductorInput): SizedResult<Id> {
  return finish(input.code, (code) => decideUnder(code, input));
}

type Drawn = Omit<EquipmentGroundingConductorInput, "code">;

function decideUnder(code: Code, drawn: Drawn): Decided<Id> {
  const { circuits, conductor, run } = drawn;
  const rule = {
    facts: equipmentGroundingConductorFacts,
    policies: equipmentGroundingConductorPolicies,
    citation: (device: CircuitDevice) => citationOf(device, code.year),
    cautions: () => runCautions(code, drawn),
  };
  return decideByRating(rule, { code, circuits, conductor, floors: trayFloors(code.year, run) });
}

function trayFloors(year: EditionYear, run: GroundingRun | undefined): readonly FloorStep[] {
  return run?.kind === "tray" && run.conductor === "single"
    ? [floorStep("4 AWG", traySingleConductor[year], "least-size")]
    : [];
}

function citationOf(device: CircuitDevice, year: EditionYear): Citation | null {
  if ("aheadOfFeeder" in device) return equipmentGroundingFeederTap[year];
  if (!("motor" in device)) return null;
  return device.motor.kind === "instantaneous-trip"
    ? equipmentGroundingInstantaneousTrip[year]
    : equipmentGroundingMotor[year];
}

function runCautions(code: Code, { circuits, run }: Drawn): readonly Caution[] {
  const { section } = equipmentGroundingParallel[code.year];
  const isParallel = circuits.some((one) => one.conductors !== undefined && countSets(one.conductors) > 1);
  const inEach =
    run === undefined || (run.kind === "tray" && run.conductor === "in-cable")
      ? isParallel
      : run.kind === "parallel-raceways" || run.kind === "parallel-cables";
  const combined = run?.kind === "parallel-cables" && cableGroundingConductorsCombined[code.year];
  return [
    ...(inEach ? [{ code: "full-size-in-each", section } as const] : []),
    ...(combined ? [{ code: "cable-conductors-may-be-combined", section } as const] : []),
  ];
}
