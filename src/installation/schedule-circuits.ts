import type { Code } from "../edition/index.js";
import { groundingElectrodeConductorBuildingPolicies } from "../edition/tables/policies.generated.js";
import { groundingElectrodeConductorFacts } from "../edition/tables/roles.generated.js";
import {
  branchCircuitRating,
  buildingOnBranchCircuit,
  generatorJumpers,
} from "../edition/tables/sections.generated.js";
import { equipmentGroundingConductor } from "../roles/equipment-grounding-conductor/index.js";
import type { GroundingRun } from "../roles/equipment-grounding-conductor/shape.generated.js";
import { supplySideBondingJumper } from "../roles/supply-side-bonding-jumper/index.js";
import { notRequired } from "../rules/finish.js";
import { ratingOf } from "../rules/protected-circuit.js";
import { mostSharedBranchCircuitAmperes } from "../rules/small-supplies.js";
import type { Installation } from "./document.js";
import { landing } from "./landing.js";
import type { InstallationInCode, ScheduledConductor, ScheduledPart } from "./schedule.js";
import { electrodePart } from "./schedule-electrodes.js";
import { parallelCautions } from "./schedule-runs.js";
import { scheduled } from "./scheduled.js";
import { supplyOf } from "./supplies.js";

type DrawnCircuit = NonNullable<Installation["circuits"]>[number];
type DrawnBuilding = NonNullable<Installation["buildings"]>[number];

const runs: Readonly<Record<DrawnCircuit["wiring"], GroundingRun>> = {
  raceway: { kind: "single" },
  "parallel-raceways": { kind: "parallel-raceways" },
  "parallel-cables": { kind: "parallel-cables" },
  "tray-single-conductor": { kind: "tray", conductor: "single" },
  "tray-cable": { kind: "tray", conductor: "in-cable" },
};

/** The equipment grounding conductor of each circuit: one in each raceway or cable of a parallel run. */
export function circuitPart({ installation, code }: InstallationInCode): ScheduledPart {
  const conductors = (installation.circuits ?? []).map((circuit) => {
    const { id, from, to, device, conductors: installed, increasedFrom, wiring, raceways = 1 } = circuit;
    const result = equipmentGroundingConductor.decide({
      code: codeOfCircuit(code, circuit),
      circuits: [
        { device, ...(installed && { conductors: installed }), ...(increasedFrom && { increasedFrom }) },
      ],
      conductor: { material: installation.materials.equipmentGrounding },
      run: runs[wiring],
    });
    return scheduled({ subject: id }, landing(from, "grounding-bar"), to, result, {
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
export function generatorPart({ installation, code }: InstallationInCode): ScheduledPart {
  const conductors = (installation.generators ?? []).map((generator): ScheduledConductor => {
    const { id, to, supply: drawn, deviceAmperes } = generator;
    const supply = supplyOf(drawn, code.year);
    if (deviceAmperes === undefined) {
      const conductor = { material: installation.materials.bondingJumpers };
      const result = supplySideBondingJumper.decide({ code, supply, conductor });
      const placement = generatorJumpers[code.year];
      const from = landing(id, "enclosure");
      return scheduled({ subject: id }, from, to, result, { by: [id], run: generator, placement });
    }
    const result = equipmentGroundingConductor.decide({
      code,
      circuits: [{ device: { amperes: deviceAmperes }, conductors: supply }],
      conductor: { material: installation.materials.equipmentGrounding },
    });
    return scheduled({ subject: id }, id, to, result, { run: generator });
  });
  const ahead = (installation.generators ?? []).filter(({ deviceAmperes }) => deviceAmperes === undefined);
  return { conductors, cautions: parallelCautions(ahead, { code }) };
}

/** Buildings on a feeder: their electrode conductors; none on a single branch circuit with an equipment grounding conductor. */
export function buildingPart(at: InstallationInCode): ScheduledPart {
  const parts = (at.installation.buildings ?? []).map((building) => electrodesOfBuilding(at, building));
  return {
    conductors: parts.flatMap(({ conductors }) => conductors),
    cautions: parts.flatMap(({ cautions }) => cautions ?? []),
    notSized: parts.flatMap(({ notSized }) => notSized ?? []),
  };
}

function electrodesOfBuilding(
  { installation, code }: InstallationInCode,
  building: DrawnBuilding,
): ScheduledPart {
  const { id, circuit: feeder, onSingleBranchCircuit, electrodes = [] } = building;
  if (onSingleBranchCircuit) {
    const result = notRequired(
      groundingElectrodeConductorFacts,
      code,
      installation.materials.electrodeConductors,
      "building-on-one-branch-circuit",
      buildingOnBranchCircuit[code.year],
    );
    const device = installation.circuits?.find((circuit) => circuit.id === feeder)?.device;
    const isLarge = device !== undefined && ratingOf(device) > mostSharedBranchCircuitAmperes;
    const { section } = branchCircuitRating[code.year];
    return {
      conductors: [scheduled({ subject: id }, id, { kind: "electrodes" }, result)],
      cautions: isLarge ? [{ code: "larger-than-shared-branch-circuit", section, at: id }] : [],
    };
  }
  const supply = installation.circuits?.find((circuit) => circuit.id === feeder)?.conductors;
  if (electrodes.length === 0 || supply === undefined) {
    const see = groundingElectrodeConductorBuildingPolicies.byEdition[code.year].basis.rule.section;
    return { conductors: [], notSized: [{ what: `grounding electrode conductor of ${id}`, see }] };
  }
  const servings = [{ by: [feeder], supply }];
  return electrodePart({
    installation,
    code,
    system: "building",
    electrodes,
    servings,
    startsOf: ({ from }) => (from === id ? [{ from, servings }] : []),
  });
}
