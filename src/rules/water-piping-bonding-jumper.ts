import { areaOf, columnOf } from "../conductor/index.js";
import type { Citation, PolicySet } from "../edition/index.js";
import { buildingPipingGoesBy } from "../edition/tables/placements.generated.js";
import {
  waterPipingBuildingPolicies,
  waterPipingDerivedPolicies,
  waterPipingServicePolicies,
} from "../edition/tables/policies.generated.js";
import {
  buildingPipingByDevice,
  noServiceConductors,
  parallelMinimum,
  pipingByDevice,
} from "../edition/tables/sections.generated.js";
import { readAll } from "../input/reader.js";
import type { CapStep } from "../sizing/index.js";
import { acting, limited } from "../sizing/limits.js";
import type { Supply } from "../supply/index.js";
import { columnOfSupply, conductorsOf } from "../supply/sums.js";
import type { Caution, CautionCode } from "./caution.js";
import type { Decided } from "./decided.js";
import { finish, notRequired } from "./finish.js";
import { decideBySupply, sizeCheckedJumper } from "./jumper.js";
import { hasSmallParallelSets } from "./jumper-cautions.js";
import { decideByDevice } from "./piping-by-device.js";
import type { SizingResult } from "./result.js";
import {
  type PipingOfBuilding,
  type PipingOfSystem,
  readWaterPipingInput,
  type WaterPipingInput,
} from "./water-piping-bonding-jumper-input.js";

/**
 * Sizes the bonding jumper of metal water piping (250.104(A), (D)(1)). At a service or a separately derived system by the ungrounded
 * conductors: through 2014 by Table 250.66, whose last row ends it; in 2017 by Table 250.102(C)(1) without such an end; from 2020 not
 * above 3/0 AWG copper or 250 kcmil aluminum. In one occupancy of several by the device. In a building on a feeder by the feeder
 * conductors through 2017 and by the device from 2020, never above the feeder's largest conductor.
 *
 * @param input - the code, where the piping is, and what that place asks for
 * @returns the size with every step, or why none is required; areas in circular mils
 * @throws {@link InputError} listing everything that is wrong in the input
 *
 * @example
 * ```ts
 * import { sizeWaterPipingBondingJumper } from "bondmil";
 * const size = (year: "2014" | "2017" | "2020") =>
 *   sizeWaterPipingBondingJumper({
 *     code: { year },
 *     of: "service",
 *     supply: { sets: [{ count: 6, size: "500 kcmil", material: "copper" }] },
 *     jumper: { material: "copper" },
 *   }).requiredArea;
 * [size("2014"), size("2017"), size("2020")]; // => [167800, 375000, 167800]
 * ```
 */
export function sizeWaterPipingBondingJumper(input: WaterPipingInput): SizingResult {
  const read = readAll(input, readWaterPipingInput);
  const { code, jumper } = read;
  if (read.of === "occupancy")
    return finish(code, (under) =>
      decideByDevice(role, under, jumper.material, read.deviceAmperes, pipingByDevice[code.year]),
    );
  if (read.of === "building") return finish(code, (under) => ofBuilding({ ...read, code: under }));
  const policies = policySets[read.of];
  if (read.isElectrode === true) {
    const citation = policies.byEdition[code.year].basis.rule;
    return notRequired(role, code, jumper.material, "part-is-the-electrode", citation);
  }
  return sizeCheckedJumper({ role, policies }, { code, supply: read.supply, jumper });
}

const role = "water-piping-bonding-jumper";

const policySets: Readonly<Record<PipingOfSystem["of"], PolicySet>> = {
  service: waterPipingServicePolicies,
  "separately-derived": waterPipingDerivedPolicies,
};

function ofBuilding({ code, supply, deviceAmperes, jumper }: PipingOfBuilding): Decided {
  const { year } = code;
  const deviceDecides = buildingPipingGoesBy[year] === "device";
  if (!deviceDecides || deviceAmperes === undefined) {
    const decided = decideBySupply({ role, policies: waterPipingBuildingPolicies }, { code, supply, jumper });
    const { section } = buildingPipingByDevice[year];
    const caution = { code: "no-device-sized-by-conductors", section } as const;
    return deviceDecides ? { ...decided, cautions: [...(decided.cautions ?? []), caution] } : decided;
  }
  const citation = buildingPipingByDevice[year];
  const decided = decideByDevice(role, code, jumper.material, deviceAmperes, citation);
  const cap = feederCap(supply, citation);
  const ofOneMaterial = columnOfSupply(supply) === columnOf(jumper.material);
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
  const said = found.flatMap(([holds, code, section]): Caution[] => (holds ? [{ code, section }] : []));
  return {
    ...decided,
    steps: [...decided.steps, ...acted],
    ...limited(decided, caps, []),
    cautions: [...decided.cautions, ...said],
  };
}

function feederCap(supply: Supply, citation: Citation): CapStep {
  const requiredArea = Math.max(...conductorsOf(supply).map(({ size }) => areaOf(size)));
  return { kind: "cap", why: "ungrounded-conductors", requiredArea, citation };
}
