import type { Code } from "../edition/index.js";
import { groundingElectrodeConductorBuildingPolicies } from "../edition/tables/policies.generated.js";
import { buildingOnBranchCircuit } from "../edition/tables/sections.generated.js";
import { sizeEquipmentGroundingConductor } from "../rules/equipment-grounding-conductor.js";
import type { GroundingRun } from "../rules/equipment-grounding-conductor-input.js";
import { notRequired } from "../rules/finish.js";
import { sizeSupplySideBondingJumper } from "../rules/supply-side-bonding-jumper.js";
import type { Drawing } from "./document.js";
import type { DrawingInCode, ScheduledConductor, ScheduledPart } from "./schedule.js";
import { electrodePart } from "./schedule-electrodes.js";
import { parallelCautions } from "./schedule-runs.js";
import { scheduled } from "./scheduled.js";
import { supplyOf } from "./supplies.js";

type DrawnCircuit = NonNullable<Drawing["circuits"]>[number];
type DrawnBuilding = NonNullable<Drawing["buildings"]>[number];

const runs: Readonly<Record<DrawnCircuit["wiring"], GroundingRun>> = {
  raceway: { kind: "single" },
  "parallel-raceways": { kind: "parallel-raceways" },
  "parallel-cables": { kind: "parallel-cables" },
  "tray-single-conductor": { kind: "tray", conductor: "single" },
  "tray-cable": { kind: "tray", conductor: "in-cable" },
};

/** The equipment grounding conductor of each circuit: one in each raceway or cable of a parallel run. */
export function circuitPart({ drawing, code }: DrawingInCode): ScheduledPart {
  const conductors = (drawing.circuits ?? []).map((circuit) => {
    const { id, from, to, device, conductors: installed, increasedFrom, wiring, raceways = 1 } = circuit;
    const result = sizeEquipmentGroundingConductor({
      code: codeOfCircuit(code, circuit),
      circuits: [
        { device, ...(installed && { conductors: installed }), ...(increasedFrom && { increasedFrom }) },
      ],
      conductor: { material: drawing.materials.equipmentGrounding },
      run: runs[wiring],
    });
    return scheduled(`equipment-grounding-conductor ${id}`, from, to, result, {
      times: raceways,
      run: circuit,
    });
  });
  return { conductors };
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

/** A generator that is not separately derived: a supply-side jumper if its device is not integral, else an ordinary feeder. */
export function generatorPart({ drawing, code }: DrawingInCode): ScheduledPart {
  const conductors = (drawing.generators ?? []).map((generator): ScheduledConductor => {
    const { id, to, supply: drawn, deviceAmperes } = generator;
    const supply = supplyOf(drawn, code.year);
    if (deviceAmperes === undefined) {
      const jumper = { material: drawing.materials.bondingJumpers };
      const result = sizeSupplySideBondingJumper({ code, supply, jumper });
      return scheduled(`supply-side-bonding-jumper ${id}`, id, to, result, { by: [id], run: generator });
    }
    const result = sizeEquipmentGroundingConductor({
      code,
      circuits: [{ device: { amperes: deviceAmperes }, conductors: supply }],
      conductor: { material: drawing.materials.equipmentGrounding },
    });
    return scheduled(`equipment-grounding-conductor ${id}`, id, to, result, { run: generator });
  });
  const ahead = (drawing.generators ?? []).filter(({ deviceAmperes }) => deviceAmperes === undefined);
  return { conductors, cautions: parallelCautions(ahead, { code }) };
}

/** Buildings on a feeder: their electrode conductors; none on a single branch circuit with an equipment grounding conductor. */
export function buildingPart(at: DrawingInCode): ScheduledPart {
  const parts = (at.drawing.buildings ?? []).map((building) => electrodesOfBuilding(at, building));
  return {
    conductors: parts.flatMap(({ conductors }) => conductors),
    cautions: parts.flatMap(({ cautions }) => cautions ?? []),
    notSized: parts.flatMap(({ notSized }) => notSized ?? []),
  };
}

function electrodesOfBuilding({ drawing, code }: DrawingInCode, building: DrawnBuilding): ScheduledPart {
  const { id, circuit: feeder, onSingleBranchCircuit, electrodes = [] } = building;
  if (onSingleBranchCircuit) {
    const result = notRequired(
      "grounding-electrode-conductor",
      code,
      drawing.materials.electrodeConductors,
      "building-on-one-branch-circuit",
      buildingOnBranchCircuit[code.year],
    );
    return { conductors: [scheduled(`grounding-electrode-conductor ${id}`, id, "electrodes", result)] };
  }
  const supply = drawing.circuits?.find((circuit) => circuit.id === feeder)?.conductors;
  if (electrodes.length === 0 || supply === undefined) {
    const see = groundingElectrodeConductorBuildingPolicies.byEdition[code.year].basis.rule.section;
    return { conductors: [], notSized: [{ what: `grounding electrode conductor of ${id}`, see }] };
  }
  const servings = [{ by: [feeder], supply }];
  return electrodePart({
    drawing,
    code,
    of: "building",
    electrodes,
    servings,
    startsOf: ({ from }) => (from === id ? [{ from, servings }] : []),
  });
}
