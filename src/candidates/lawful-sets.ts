import { deviceIn } from "../ampacity/index.js";
import { areaOf, type ConductorColumn, type StandardSize, standardSizes } from "../conductor/index.js";
import { isSmallForParallel } from "../supply/parallel-minimum.js";
import type { AmpacityFinder, Carrying } from "./ampacity.js";
import type { Sets } from "./caused.js";
import { type Requirement, servesOf } from "./protection.js";
import type { SupplyCandidatesQuestion } from "./shape.generated.js";

/** Ungrounded conductors that may carry the load behind the device. */
export interface LawfulSets extends Sets {
  readonly carrying: Carrying;
  readonly nextRating: boolean;
}

/** Every lawful number of sets, size and number in a raceway within the limits, by material, sets, size and number in a raceway. */
export function lawfulSets(
  question: SupplyCandidatesQuestion,
  requirement: Requirement,
  ampacities: AmpacityFinder,
): readonly LawfulSets[] {
  const { conductor, limits } = question;
  const counts = Array.from({ length: limits.mostSets }, (_, at) => at + 1);
  return conductor.materials.flatMap((material) =>
    counts.flatMap((sets) =>
      sharesOf(sets, limits.mostSetsInRaceway ?? 1)
        .flatMap((setsInRaceway) =>
          inSets(question, requirement, ampacities, { material, sets, setsInRaceway }),
        )
        .sort((one, other) => areaOf(one.size) - areaOf(other.size)),
    ),
  );
}

/** Numbers of sets in a raceway that divide all of them evenly. */
function sharesOf(sets: number, most: number): readonly number[] {
  const all = Array.from({ length: Math.min(sets, most) }, (_, at) => at + 1);
  return all.filter((share) => sets % share === 0);
}

function inSets(
  question: SupplyCandidatesQuestion,
  requirement: Requirement,
  ampacities: AmpacityFinder,
  of: { readonly material: ConductorColumn; readonly sets: number; readonly setsInRaceway: number },
): readonly LawfulSets[] {
  const { code, conductor, leastAmpacity = 0 } = question;
  const { material, sets, setsInRaceway } = of;
  const perSet = currentCarryingOf(question.system);
  const serves = servesOf(question);
  const smallest = areaOf(conductor.smallest ?? "18 AWG");
  const largest = areaOf(conductor.largest ?? "2000 kcmil");
  const found = sizesWithin(smallest, largest, sets > 1).flatMap((size) => {
    const carrying = ampacities.find(size, material, setsInRaceway * perSet);
    if (carrying === null) return [];
    const ampacity = carrying.each * sets;
    if (carrying.before * sets < requirement.before || ampacity < requirement.inPlace) return [];
    if (ampacity < leastAmpacity) return [];
    const permitted = deviceIn(code.year, {
      ampacity,
      area: areaOf(size),
      material,
      serves,
      device: "circuit-breaker",
    });
    if (requirement.device > permitted.most) return [];
    return [{ size, carrying, nextRating: requirement.device > ampacity }];
  });
  const [first] = found;
  return found.map((one) => ({ ...of, ...one, baseline: (first as { readonly size: StandardSize }).size }));
}

/** Conductors of one set that count as current-carrying. */
export function currentCarryingOf({ ungrounded, grounded }: SupplyCandidatesQuestion["system"]): number {
  return ungrounded + (grounded?.currentCarrying === true ? 1 : 0);
}

function sizesWithin(smallest: number, largest: number, isParallel: boolean): readonly StandardSize[] {
  return standardSizes.filter((size) => {
    const area = areaOf(size);
    return area >= smallest && area <= largest && !(isParallel && isSmallForParallel(area));
  });
}
