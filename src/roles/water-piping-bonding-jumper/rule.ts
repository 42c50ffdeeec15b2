import { areaOf, columnOf } from "../../conductor/index.js";
import type { Citation, PolicySet } from "../../edition/index.js";
import { buildingPipingGoesBy } from "../../edition/tables/placements.generated.js";
import {
  waterPipingBuildingPolicies,
  waterPipingDerivedPolicies,
  waterPipingServicePolicies,
} from "../../edition/tables/policies.generated.js";
import { waterPipingBondingJumperFacts } from "../../edition/tables/roles.generated.js";
import {
  buildingPipingByDevice,
  noServiceConductors,
  parallelMinimum,
  pipingByDevice,
} from "../../edition/tables/sections.generated.js";
import { isAlwaysWire } from "../../rules/amendment-effects.js";
import { decideBySupply } from "../../rules/by-supply.js";
import { hasSmallParallelSets } from "../../rules/by-supply-cautions.js";
import type { Caution, CautionCode } from "../../rules/caution.js";
import { type Decided, saying } from "../../rules/decided.js";
import { finish, notRequired } from "../../rules/finish.js";
import { decideByDevice } from "../../rules/piping-by-device.js";
import type { NotRequiredResult, SizedResult } from "../../rules/result.js";
import type { CapStep } from "../../sizing/index.js";
import { acting, limited } from "../../sizing/limits.js";
import type { Supply } from "../../supply/index.js";
import { columnOfSupply, conductorsOf } from "../../supply/sums.js";
import type { PipingOfBuilding, WaterPipingBondingJumperInput } from "./shape.generated.js";

type Id = "water-piping-bonding-jumper";

const facts = waterPipingBondingJumperFacts;

/** Sizes the bonding jumper of metal water piping, or says why none is required. */
export function decide(input: WaterPipingBondingJumperInput): SizedResult<Id> | NotRequiredResult<Id> {
  const { code, conductor } = input;
  if (input.system === "occupancy")
    return finish(code, (under) =>
      decideByDevice(facts, under, conductor.material, input.deviceAmperes, pipingByDevice[code.year]),
    );
  if (input.system === "building") return finish(code, (under) => ofBuilding({ ...input, code: under }));
  const policies = policySets[input.system];
  if (
    input.system === "separately-derived" &&
    input.isElectrode === true &&
    !isAlwaysWire(code, facts.role)
  ) {
    const citation = policies.byEdition[code.year].basis.rule;
    return notRequired(facts, code, conductor.material, "part-is-the-electrode", citation);
  }
  const { supply } = input;
  return finish(code, (under) => decideBySupply({ facts, policies }, { code: under, supply, conductor }));
}

const policySets: Readonly<Record<"service" | "separately-derived", PolicySet>> = {
  service: waterPipingServicePolicies,
  "separately-derived": waterPipingDerivedPolicies,
};

function ofBuilding({ code, supply, deviceAmperes, conductor }: PipingOfBuilding): Decided<Id> {
  const { year } = code;
  const deviceDecides = buildingPipingGoesBy[year] === "device";
  if (!deviceDecides || deviceAmperes === undefined) {
    const decided = decideBySupply(
      { facts, policies: waterPipingBuildingPolicies },
      { code, supply, conductor },
    );
    const { section } = buildingPipingByDevice[year];
    const caution = { code: "no-device-sized-by-conductors", section } as const;
    return deviceDecides ? saying(decided, () => [caution]) : decided;
  }
  const citation = buildingPipingByDevice[year];
  const decided = decideByDevice(facts, code, conductor.material, deviceAmperes, citation);
  const cap = feederCap(supply, citation);
  const ofOneMaterial = columnOfSupply(supply) === columnOf(conductor.material);
  const caps = ofOneMaterial ? [cap] : [];
  const acted = acting(caps, decided.requiredArea);
  const limit = cap.requiredArea < decided.requiredArea;
  const found: readonly (readonly [boolean, CautionCode, string])[] = [
    [limit && ofOneMaterial, "limited-to-circuit-conductors", citation.section],
    [limit && !ofOneMaterial, "no-cap-across-materials", citation.section],
    [
      supply.requiredForAmperes !== undefined,
      "conductors-required-for-load",
      noServiceConductors[year].section,
    ],
    [hasSmallParallelSets(supply), "parallel-below-1-0", parallelMinimum[year].section],
  ];
  const limitedByCircuit = { ...decided, steps: [...decided.steps, ...acted], ...limited(decided, caps, []) };
  return saying(limitedByCircuit, () =>
    found.flatMap(([holds, code, section]): Caution[] => (holds ? [{ code, section }] : [])),
  );
}

function feederCap(supply: Supply, citation: Citation): CapStep {
  const requiredArea = Math.max(...conductorsOf(supply).map(({ size }) => areaOf(size)));
  return { kind: "cap", why: "ungrounded-conductors", requiredArea, citation };
}
