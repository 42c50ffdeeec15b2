import { areaOf, columnOf, type Material } from "../conductor/index.js";
import { type Citation, type Policy, type PolicySet, readingsFor } from "../edition/index.js";
import {
  noServiceConductors,
  noServiceConductorsElectrode,
  parallelMinimum,
} from "../edition/tables/sections.generated.js";
import type { SizedArea } from "../sizing/size-by-supply.js";
import type { Conductor, Supply } from "../supply/index.js";
import { isSmallForParallel } from "../supply/parallel-minimum.js";
import { columnOfSupply, conductorsOf, countSets } from "../supply/sums.js";
import type { BySupplyInput } from "./by-supply-input.js";
import type { Caution, CautionCode } from "./caution.js";

interface CautionedRule {
  readonly policies: PolicySet;
  readonly comesWithEquipment?: boolean;
}

/** What a careful engineer would add to a conductor that was sized from its supply. */
export function bySupplyCautions(
  input: BySupplyInput,
  { policies, comesWithEquipment = false }: CautionedRule,
  policy: Policy,
  sized: SizedArea,
): readonly Caution[] {
  const { code, supply, conductor } = input;
  const { basis } = policy;
  const read = columnOf(conductor.material);
  const column = columnOfSupply(supply);
  const assumed = sized.steps.find((step) => step.kind === "assumed");
  const installed = sized.steps.find((step) => step.kind === "sum")?.area ?? 0;
  const notesNameParallelOnly = readingsFor(code, policies).includes("single-conductor-of-another-material");

  const found: readonly (readonly [boolean, CautionCode, string | null])[] = [
    [assumed !== undefined, "assumed-conductors", basis.otherMaterial.section],
    [
      assumed?.conductors.some((one) => one.assumed === null) ?? false,
      "no-single-conductor-of-equal-ampacity",
      basis.otherMaterial.section,
    ],
    [column === "mixed", "mixed-supply-materials", basis.otherMaterial.section],
    [isCappedAtSupply(sized), "cap-applied", basis.cap.section],
    [
      policy.cap !== "none" && column !== read && installed < sized.requiredArea,
      "no-cap-across-materials",
      basis.cap.section,
    ],
    [
      notesNameParallelOnly && sized.governs === "one-eighth" && countSets(supply) === 1,
      "single-conductor-above-threshold",
      basis.oneEighth.section,
    ],
    [
      supply.requiredForAmperes !== undefined,
      "conductors-required-for-load",
      (policy.table === "electrode-conductor" ? noServiceConductorsElectrode : noServiceConductors)[code.year]
        .section,
    ],
    [hasSmallParallelSets(supply), "parallel-below-1-0", parallelMinimum[code.year].section],
    [conductor.material !== "copper" && !policy.namesAluminum, "material-not-named", basis.material.section],
    [comesWithEquipment, "listed-equipment", null],
  ];
  return found.filter(([holds]) => holds).map(([, code, section]) => ({ code, section }));
}

/** Whether the ungrounded conductors limit the result, and not a size that a section names or that of an electrode. */
function isCappedAtSupply({ governs, requiredArea, steps }: SizedArea): boolean {
  return (
    governs === "cap" &&
    steps.some(
      (step) =>
        step.kind === "cap" && step.why === "ungrounded-conductors" && step.requiredArea === requiredArea,
    )
  );
}

/** Whether parallel sets have conductors that are in parallel in few cases only. */
export function hasSmallParallelSets(supply: Supply): boolean {
  return countSets(supply) > 1 && conductorsOf(supply).some(({ size }) => isSmallForParallel(areaOf(size)));
}

/** A section that compares sizes alone says nothing of a jumper of aluminum beside copper. */
export function sameSizeInAluminum(
  own: Material,
  equalled: readonly Conductor[],
  { section }: Citation,
): readonly Caution[] {
  const isOfCopper = equalled.some(({ material }) => material === "copper");
  return own !== "copper" && isOfCopper ? [{ code: "same-size-in-aluminum", section }] : [];
}
