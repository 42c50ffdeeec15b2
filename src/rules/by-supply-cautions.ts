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

  const cautions: Caution[] = [];
  const say = (holds: boolean, code: CautionCode, section: string | null): void => {
    if (holds) cautions.push({ code, section });
  };
  const { section: otherMaterial } = basis.otherMaterial;
  if (assumed !== undefined) {
    say(true, "assumed-conductors", otherMaterial);
    say(
      assumed.conductors.some((one) => one.assumed === null),
      "no-single-conductor-of-equal-ampacity",
      otherMaterial,
    );
  }
  say(column === "mixed", "mixed-supply-materials", otherMaterial);
  say(isCappedAtSupply(sized), "cap-applied", basis.cap.section);
  say(
    policy.cap !== "none" && column !== read && installed < sized.requiredArea,
    "no-cap-across-materials",
    basis.cap.section,
  );
  if (sized.governs === "one-eighth" && countSets(supply) === 1) {
    const notesNameParallelOnly = readingsFor(code, policies).includes(
      "single-conductor-of-another-material",
    );
    say(notesNameParallelOnly, "single-conductor-above-threshold", basis.oneEighth.section);
  }
  if (supply.requiredForAmperes !== undefined) {
    const sections =
      policy.table === "electrode-conductor" ? noServiceConductorsElectrode : noServiceConductors;
    say(true, "conductors-required-for-load", sections[code.year].section);
  }
  say(hasSmallParallelSets(supply), "parallel-below-1-0", parallelMinimum[code.year].section);
  say(conductor.material !== "copper" && !policy.namesAluminum, "material-not-named", basis.material.section);
  say(comesWithEquipment, "listed-equipment", null);
  return cautions;
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
