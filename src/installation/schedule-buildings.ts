import { groundingElectrodeConductorBuildingPolicies } from "../edition/tables/policies.generated.js";
import {
  equipmentGroundingConductorFacts,
  groundingElectrodeConductorFacts,
  mainBondingJumperFacts,
} from "../edition/tables/roles.generated.js";
import {
  branchCircuitRating,
  buildingFromDerivedSystem,
  buildingGroundedConductor,
  buildingOnBranchCircuit,
  buildingUngrounded,
  rebondedBuilding,
} from "../edition/tables/sections.generated.js";
import { notRequired } from "../rules/finish.js";
import { ratingOf } from "../rules/protected-circuit.js";
import { mostSharedBranchCircuitAmperes } from "../rules/small-supplies.js";
import {
  circuitOf,
  type DrawnBuilding,
  derivedSystemOf,
  mayStayRebonded,
  placeOfBuilding,
  servingOfBuilding,
} from "./building-supply.js";
import { electrodesOf } from "./electrodes-of.js";
import { landing } from "./landing.js";
import { inMaterialsOf } from "./materials-of.js";
import { originsOf } from "./origins.js";
import type { InstallationInCode, PlacedCaution, ScheduledConductor, ScheduledPart } from "./schedule.js";
import { electrodePart } from "./schedule-electrodes.js";
import { scheduled } from "./scheduled.js";
import type { Violation } from "./violation.js";

/** Buildings that are supplied from elsewhere: their electrode conductors, and what is not connected there (250.32). */
export function buildingPart(at: InstallationInCode): ScheduledPart {
  const buildings = at.installation.buildings ?? [];
  const originOf = originsOf(at.installation);
  const parts = buildings.map((building) => electrodesOfBuilding(inMaterialsOf(at, building), building));
  return {
    conductors: [
      ...buildings.flatMap((building) => notAtBuilding(at, building)),
      ...parts.flatMap(({ conductors }) => conductors),
    ],
    violations: buildings.flatMap((building) => rebonded(at, building)),
    cautions: [
      ...buildings.flatMap((building) => supplyCautions(at, building, originOf)),
      ...parts.flatMap(({ cautions }) => cautions ?? []),
    ],
    notSized: parts.flatMap(({ notSized }) => notSized ?? []),
  };
}

function electrodesOfBuilding(at: InstallationInCode, building: DrawnBuilding): ScheduledPart {
  const { installation, code } = at;
  const { id, onSingleBranchCircuit } = building;
  const electrodes = electrodesOf(installation, building);
  if (onSingleBranchCircuit) {
    const result = notRequired(
      groundingElectrodeConductorFacts,
      code,
      installation.materials.electrodeConductors,
      "building-on-one-branch-circuit",
      buildingOnBranchCircuit[code.year],
    );
    const device = circuitOf(installation, building)?.device;
    const isLarge = device !== undefined && ratingOf(device) > mostSharedBranchCircuitAmperes;
    const { section } = branchCircuitRating[code.year];
    return {
      conductors: [scheduled({ subject: id }, id, { kind: "electrodes" }, result)],
      cautions: isLarge ? [{ code: "larger-than-shared-branch-circuit", section, at: id }] : [],
    };
  }
  const serving = servingOfBuilding(at, building);
  if (electrodes.length === 0 || serving === undefined) {
    const see = groundingElectrodeConductorBuildingPolicies.byEdition[code.year].basis.rule.section;
    return { conductors: [], notSized: [{ what: `grounding electrode conductor of ${id}`, see }] };
  }
  const servings = [serving];
  return electrodePart({
    installation,
    code,
    system: "building",
    electrodes,
    servings,
    startsOf: ({ from }) => (from === id ? [{ from, servings }] : []),
    landingOf: () => landing(placeOfBuilding(installation, building) ?? id, "grounding-bar"),
  });
}

/** Conductors that one would look for at the building, and that are not there. */
function notAtBuilding(
  { installation, code }: InstallationInCode,
  building: DrawnBuilding,
): readonly ScheduledConductor[] {
  const { id, existingGroundedConductor: existing } = building;
  const { bondingJumpers, equipmentGrounding } = installation.materials;
  const circuit = circuitOf(installation, building);
  const system = derivedSystemOf(installation, building);
  const keptApart = notRequired(
    mainBondingJumperFacts,
    code,
    bondingJumpers,
    "grounded-conductor-kept-apart",
    buildingGroundedConductor[code.year],
  );
  const instead = notRequired(
    equipmentGroundingConductorFacts,
    code,
    equipmentGrounding,
    "supply-side-jumper-instead",
    buildingFromDerivedSystem[code.year],
  );
  return [
    ...(circuit?.groundedConductor !== undefined && existing === undefined
      ? [scheduled({ subject: id }, { kind: "grounded-conductor" }, id, keptApart)]
      : []),
    ...(system !== undefined && system.source.deviceAmperes === undefined
      ? [scheduled({ subject: id }, system.source.id, placeOfBuilding(installation, building) ?? id, instead)]
      : []),
  ];
}

function rebonded({ code }: InstallationInCode, building: DrawnBuilding): readonly Violation[] {
  if (building.existingGroundedConductor === undefined || mayStayRebonded(building)) return [];
  return [
    {
      code: "grounded-conductor-rebonded",
      ...rebondedBuilding[code.year],
      at: [building.id],
      remedies: [{ code: "run-equipment-grounding-conductor" }],
    },
  ];
}

function supplyCautions(
  { code: { year } }: InstallationInCode,
  building: DrawnBuilding,
  originOf: ReturnType<typeof originsOf>,
): readonly PlacedCaution[] {
  const { id: at, existingGroundedConductor: existing, circuit, disconnect } = building;
  const origin = originOf(circuit ?? disconnect ?? at);
  return [
    ...(origin?.grounding === "ungrounded"
      ? [{ code: "building-on-ungrounded-system", section: buildingUngrounded[year].section, at } as const]
      : []),
    ...(existing === undefined
      ? []
      : [
          {
            code: "connect-grounded-conductor-at-building",
            section: rebondedBuilding[year].section,
            at,
          } as const,
        ]),
  ];
}
