import { areaOf, columnOf, isStandardSize, nextSizeDown, standardSizeFor } from "../conductor/index.js";
import type { IncreaseRule, RatingPolicy } from "../edition/index.js";
import {
  aluminumEquipmentGrounding,
  equipmentGroundingInstantaneousTrip,
  parallelMinimum,
} from "../edition/tables/sections.generated.js";
import { circuitArea } from "../sizing/size-by-rating.js";
import { columnOfSupply } from "../supply/sums.js";
import { countsIncrease, type RatedArea, type RatedInput } from "./by-rating-input.js";
import { hasSmallParallelSets } from "./by-supply-cautions.js";
import type { Caution, CautionCode } from "./caution.js";
import { ratingOf } from "./protected-circuit.js";
import { ratingTable } from "./rating-table.js";

/** What the increase is counted from, by edition. */
const baselines: Readonly<Record<IncreaseRule, CautionCode>> = {
  any: "baseline-before-increase",
  "from-minimum-ampacity": "baseline-minimum-for-installation",
  "not-for-temperature-or-number": "baseline-by-temperature-and-number",
};

/** What a careful engineer would add to a conductor that was sized by its overcurrent devices. */
export function byRatingCautions(
  { code, circuits, conductor }: RatedInput,
  policy: RatingPolicy,
  sized: RatedArea,
): readonly Caution[] {
  const { basis } = policy;
  const read = columnOf(conductor.material);
  const deciding = circuits[sized.decides];
  const installed = deciding?.conductors;
  const cap = sized.steps.find((step) => step.kind === "cap");
  const row = sized.steps.find((step) => step.kind === "rating-row");
  const increased = circuits.filter((one) => one.increasedFrom !== undefined);
  const largest = Math.max(...circuits.map(({ device }) => ratingOf(device)));

  const found: readonly (readonly [boolean, CautionCode, string | null])[] = [
    [sized.governs === "cap", "limited-to-circuit-conductors", cap?.citation.section ?? null],
    [
      policy.cap !== "none" &&
        installed !== undefined &&
        columnOfSupply(installed) !== read &&
        circuitArea(installed) < sized.requiredArea,
      "no-cap-across-materials",
      basis.cap.section,
    ],
    [
      circuits.some((one) => one.conductors !== undefined && one.increasedFrom === undefined),
      "no-baseline-given",
      basis.increase.section,
    ],
    [increased.length > 0, baselines[policy.increase], basis.increase.section],
    [
      increased.some((one) => !countsIncrease(policy, one)),
      "no-increase-for-temperature-or-number",
      basis.increase.section,
    ],
    [increased.some(isDecreased), "smaller-than-baseline", basis.increase.section],
    [
      sized.governs === "increase" && isShortByRounding(sized.requiredArea),
      "short-by-rounding",
      basis.increase.section,
    ],
    [
      policy.qualifiedPerson && sized.steps.some((step) => step.kind === "increase"),
      "qualified-person-may-size",
      basis.increase.section,
    ],
    [row !== undefined && !isStandardSize(row.size), "table-size-not-standard", ratingTable(code).number],
    [
      deciding !== undefined && ratingOf(deciding.device) < largest,
      "increased-circuit-decides",
      basis.shared.section,
    ],
    [
      circuits.some(({ device }) => "motor" in device && device.motor.kind === "instantaneous-trip"),
      "motor-fuse-rating-given",
      equipmentGroundingInstantaneousTrip[code.year].section,
    ],
    [
      circuits.some((one) => one.conductors !== undefined && hasSmallParallelSets(one.conductors)),
      "parallel-below-1-0",
      parallelMinimum[code.year].section,
    ],
    [
      conductor.material !== "copper",
      "aluminum-grounding-restrictions",
      aluminumEquipmentGrounding[code.year].section,
    ],
  ];
  return found.filter(([holds]) => holds).map(([, code, section]) => ({ code, section }));
}

function isDecreased({ conductors, increasedFrom }: RatedInput["circuits"][number]): boolean {
  return (
    conductors !== undefined &&
    increasedFrom !== undefined &&
    circuitArea(conductors) < circuitArea(increasedFrom.conductors)
  );
}

/**
 * Whether the next smaller size misses a requirement by no more than two parts in a thousand. The table's areas of 14 AWG and
 * more stand up to 0.8 in a thousand beside those of the gauge, and four of them meet here, so a size that the gauge would
 * meet exactly can be missed by so much; the next gap that is not of rounding is more than five in a thousand.
 */
function isShortByRounding(requiredArea: number): boolean {
  const size = standardSizeFor(requiredArea);
  const smaller = size === null ? null : nextSizeDown(size);
  return smaller !== null && (requiredArea - areaOf(smaller)) * 500 <= requiredArea;
}
