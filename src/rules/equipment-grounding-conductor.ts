import { type Citation, type EditionYear, policyUnder } from "../edition/index.js";
import { cableGroundingConductorsCombined } from "../edition/tables/placements.generated.js";
import { equipmentGroundingConductorPolicies } from "../edition/tables/rating-policies.generated.js";
import {
  equipmentGroundingFeederTap,
  equipmentGroundingInstantaneousTrip,
  equipmentGroundingMotor,
  equipmentGroundingParallel,
  traySingleConductor,
} from "../edition/tables/sections.generated.js";
import { readAll } from "../input/reader.js";
import type { FloorStep } from "../sizing/index.js";
import { floorStep } from "../sizing/limits.js";
import { countSets } from "../supply/sums.js";
import type { Caution } from "./caution.js";
import type { Decided } from "./decided.js";
import {
  type EquipmentGroundingConductorInput,
  type GroundingRun,
  readEquipmentGroundingConductorInput,
} from "./equipment-grounding-conductor-input.js";
import { finish } from "./finish.js";
import type { CircuitDevice } from "./protected-circuit.js";
import { decideByRating, type RatedRole } from "./rated-conductor.js";
import type { SizingResult } from "./result.js";

const equipmentGroundingConductor: RatedRole = {
  role: "equipment-grounding-conductor",
  policies: equipmentGroundingConductorPolicies,
};

/**
 * Sizes an equipment grounding conductor of the wire type: the path from equipment back to the grounded conductor, by which a
 * fault opens the overcurrent device (250.122). By the rating of the device ahead; in proportion where the ungrounded conductors
 * were increased (250.122(B)); never required larger than the circuit conductors (250.122(A)); of a single conductor in a cable
 * tray not below 4 AWG (392.10(B)(1)(c)). It is a minimum: the path must also let the device open (250.4(A)(5)).
 *
 * @param input - the code, the circuits with their devices, the conductor's material, and how it runs
 * @returns the size of one conductor, one in each raceway or cable of a parallel run, with every step; areas in circular mils
 * @throws {@link InputError} listing everything that is wrong in the input
 *
 * @example
 * ```ts
 * import { sizeEquipmentGroundingConductor } from "bondmil";
 * const grounding = sizeEquipmentGroundingConductor({
 *   code: { year: "2020" },
 *   circuits: [
 *     {
 *       device: { amperes: 50 },
 *       conductors: { sets: [{ count: 1, size: "4 AWG", material: "copper" }] },
 *       increasedFrom: {
 *         conductors: { sets: [{ count: 1, size: "8 AWG", material: "copper" }] },
 *         reason: "voltage-drop",
 *       },
 *     },
 *   ],
 *   conductor: { material: "copper" },
 * });
 * grounding.requiredArea; // => 26243
 * grounding.outcome; // => { kind: "conductor", size: "4 AWG", quantity: 1 }
 * grounding.cautions.some(({ code }) => code === "short-by-rounding"); // => true
 * ```
 */
export function sizeEquipmentGroundingConductor(input: EquipmentGroundingConductorInput): SizingResult {
  const read = readAll(input, readEquipmentGroundingConductorInput);
  return finish(read.code, (code) => decide({ ...read, code }));
}

function decide(input: EquipmentGroundingConductorInput): Decided {
  const { code, circuits, conductor } = input;
  const floors = trayFloors(code.year, input.run);
  const decided = decideByRating(equipmentGroundingConductor, { code, circuits, conductor, floors });
  const device = circuits[decided.decides]?.device;
  const { basis } = policyUnder(code, equipmentGroundingConductorPolicies);
  return {
    ...decided,
    citation: (device && citationOf(device, code.year)) ?? basis.rule,
    cautions: [...(decided.cautions ?? []), ...runCautions(input)],
  };
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

function runCautions({ code, circuits, run }: EquipmentGroundingConductorInput): readonly Caution[] {
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
