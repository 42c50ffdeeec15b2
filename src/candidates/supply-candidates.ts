import { neighborsOf } from "../ampacity/index.js";
import { weakestEvidence } from "../edition/index.js";
import { mostCandidates } from "../input/limits.js";
import { readShape } from "../input/read-shape.js";
import { type Reader, readAll } from "../input/reader.js";
import { ampacityFinder } from "./ampacity.js";
import type { SupplyCandidate, SupplyCandidates } from "./candidate.js";
import { candidatesIn } from "./candidates-in.js";
import { askRoles } from "./caused.js";
import { cautionsOf } from "./cautions.js";
import { lawfulSets } from "./lawful-sets.js";
import { ratingsOf, requirementOf } from "./protection.js";
import { racewayFinder } from "./raceways.js";
import { refine, refuseAll, refuseLoad } from "./refusals.js";
import { type SupplyCandidatesQuestion, supplyCandidatesQuestionShape } from "./shape.generated.js";
import { unbeatenOf } from "./unbeaten.js";

export type { SupplyCandidatesQuestion };

/**
 * Every lawful way to supply a load within stated limits: sets in parallel by size, material and raceways, each with its ampacity and what
 * limits it, the conductors that it causes downstream, the raceways that take them, and the weight of its metal. None is preferred; marked
 * are those that no other one beats in metal, terminations and raceways at once. A size larger than the smallest lawful one is a candidate
 * too: its equipment grounding conductors are increased with it (250.122(B)).
 *
 * @param question - code, system, load in amperes, conductors, raceways and limits
 * @returns the candidates in a stable order, at most 10,000, with how many there are; amperes not rounded, pounds per 1000 ft
 * @throws {@link InputError} listing everything that is wrong in the question; `out-of-range` where nothing within the limits is lawful
 *
 * @example
 * ```ts
 * import { supplyCandidates } from "bondmil";
 * const { candidates, device } = supplyCandidates({
 *   code: { year: "2023" },
 *   system: { kind: "service", ungrounded: 3, grounded: { currentCarrying: false } },
 *   load: { continuous: 0, other: 250 },
 *   conductor: { insulation: "THWN-2", materials: ["copper"] },
 *   place: { location: "dry" },
 *   limits: { mostSets: 2 },
 *   bonding: { material: "copper" },
 * });
 * device; // => 250
 * candidates.filter((one) => one.smallestSize).map((one) => `${one.sets} x ${one.size}`);
 * // => ["1 x 250 kcmil", "2 x 1/0 AWG"]
 * ```
 */
export function supplyCandidates(question: SupplyCandidatesQuestion): SupplyCandidates {
  return readAll(question, (at) => {
    const read = readShape<SupplyCandidatesQuestion>(at, supplyCandidatesQuestionShape, refine);
    return read && candidatesFor(at, read);
  });
}

/** The same, the question being checked; what no candidate meets is noted at the place. */
export function candidatesFor(at: Reader, question: SupplyCandidatesQuestion): SupplyCandidates | undefined {
  const requirement = requirementOf(question);
  if (requirement === null) return refuseLoad(at, question);
  const ampacities = ampacityFinder(question, requirement.device);
  const asked = askRoles(question, requirement.device);
  const finder = racewayFinder(question.code.year);
  const sets = lawfulSets(question, requirement, ampacities);
  const { insulation } = question.conductor;
  const lacksArea =
    question.raceways !== undefined &&
    sets.some(({ size }) => !finder.hasArea({ count: 1, size, insulation }));
  const found = sets.flatMap((one) => candidatesIn(question, one, asked, finder));
  if (found.length === 0)
    return refuseAll(at, question, requirement, { carries: sets.length > 0, ampacities });
  const unbeaten = unbeatenOf(
    found.map(({ mass, terminations, raceways, sets: count, setsInRaceway }) => ({
      ...mass,
      terminations,
      raceways: raceways?.count ?? count / setsInRaceway,
    })),
  );
  const candidates = found
    .slice(0, mostCandidates)
    .map((one, place): SupplyCandidate => ({ ...one, unbeaten: unbeaten.has(place) }));
  return {
    kind: "supply-candidates",
    edition: question.code.year,
    requiredBefore: requirement.before,
    requiredInPlace: requirement.inPlace,
    device: requirement.device,
    deviceGiven: requirement.deviceGiven,
    neighbors: neighborsOf(requirement.device, ratingsOf(question)),
    candidates,
    total: found.length,
    more: found.length - candidates.length,
    readings: [...asked.readings].sort(),
    evidence: weakestEvidence([...ampacities.evidence, ...asked.evidence, ...finder.evidence]),
    cautions: cautionsOf(question, requirement, found, lacksArea),
  };
}
