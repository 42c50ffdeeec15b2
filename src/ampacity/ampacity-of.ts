import { standardSizes } from "../conductor/index.js";
import { type Citation, type Evidence, weakestEvidence } from "../edition/index.js";
import { readShape } from "../input/read-shape.js";
import { member, type Reader, readAll, refuse } from "../input/reader.js";
import type { AmpacityCaution, AmpacityStep, ConductorAmpacity, LimitStep } from "./ampacity-result.js";
import { adjusted, amperesUnder, type Conditions, cableColumn, conditionsIn } from "./conditions.js";
import { ampacityIn, amperesIn } from "./raceway.js";
import { canLie, refusePlace } from "./read-conditions.js";
import {
  type AmpacityQuestion,
  ampacityQuestionShape,
  type InsulatedConductor,
  type TemperatureColumn,
} from "./shape.generated.js";

export type { AmpacityQuestion };

/**
 * Ampacity of a conductor in its place: the column of its insulation, corrected for the ambient temperature, adjusted for the number of
 * current-carrying conductors, and not above the column of its terminations (310.15, 110.14(C)(1)). Nothing is rounded.
 *
 * @param question - edition, the conductor with its insulation, its place, and its terminations; the place is that of the ampacity
 *   table (30 C, not more than three current-carrying conductors) as far as nothing else is said
 * @returns the ampacity in amperes, what decides it, and each step with its cell and what it did
 * @throws {@link InputError} listing everything that is wrong: insulation that is not for the place, a place too hot for it, a material
 *   without a value at that size
 *
 * @example
 * ```ts
 * import { ampacityOf } from "bondmil";
 * const ampacity = ampacityOf({
 *   edition: "2023",
 *   conductor: { size: "8 AWG", material: "copper", insulation: "THHN" },
 *   place: { location: "dry", ambient: { celsius: 35 }, currentCarrying: 9 },
 *   terminations: { marked: 75 },
 * });
 * ampacity.amperes; // => 36.96
 * ampacity.steps.map(({ kind }) => kind); // => ["insulation", "table", "ambient", "adjustment", "terminations"]
 * ampacity.limitedBy; // => "insulation"
 * ```
 */
export function ampacityOf(question: AmpacityQuestion): ConductorAmpacity {
  return readAll(question, (at) => {
    const read = readShape<AmpacityQuestion>(
      at,
      ampacityQuestionShape,
      (_, { edition, conductor, place }) => {
        if (edition === undefined || conductor === undefined || place === undefined) return;
        const { insulation } = conductor;
        const insulationAt = member(member(at, "conductor"), "insulation");
        if (canLie(insulationAt, edition, insulation, place)) {
          refusePlace(member(at, "place"), edition, insulation, place);
        }
      },
    );
    if (read === undefined) return undefined;
    const { edition, conductor, ...rest } = read;
    const conditions = conditionsIn(edition, { insulation: conductor.insulation, ...rest });
    if (conditions === null) throw new TypeError("conditions that were checked do not hold");
    return amperesUnder(conditions, conductor.size, conductor.material) === null
      ? refuseSize(member(member(at, "conductor"), "size"), conditions, conductor)
      : stepsUnder(conditions, conductor);
  });
}

function refuseSize(at: Reader, conditions: Conditions, { material }: InsulatedConductor): undefined {
  const least = standardSizes.find((size) => amperesUnder(conditions, size, material) !== null);
  const expected = `a size for which the table has an ampacity of ${material} at these temperatures`;
  const smallest = least === undefined ? [] : [least];
  return refuse(at, "out-of-range", expected, `the smallest is ${least}`, smallest);
}

/** The ampacity with its steps, the arguments being checked. */
export function stepsUnder(
  conditions: Conditions,
  { size, material }: Pick<InsulatedConductor, "size" | "material">,
): ConductorAmpacity {
  const { year, insulation, location, column, rooftop, ambient, adjustment, cable } = conditions;
  const table = ampacityIn(year, size, material, column.temperature);
  const amperes = table.amperes ?? 0;
  const { temperature } = column;
  const corrected = adjusted(ambient, 100, amperes);
  const reached = adjusted(ambient, adjustment?.percent ?? 100, amperes);
  const steps: AmpacityStep[] = [
    { kind: "insulation", insulation, location, temperature, citation: column.citation },
    { kind: "table", column: temperature, after: amperes, citation: table.citation },
  ];
  if (rooftop !== null && ambient !== null) steps.push({ kind: "rooftop", ...rooftop, ambient: ambient.at });
  if (ambient !== null) {
    const { at, citation } = ambient;
    const common = { kind: "ambient", ambient: at, before: amperes, after: corrected, citation } as const;
    steps.push(
      ambient.method === "table"
        ? { ...common, method: "table", through: ambient.through, percent: ambient.percent }
        : { ...common, method: "equation", factor: Math.sqrt(ambient.above / ambient.base) },
    );
  }
  if (adjustment !== null) {
    steps.push({ kind: "adjustment", ...adjustment, before: corrected, after: reached });
  }
  const limit = (
    kind: LimitStep["kind"],
    of: TemperatureColumn,
    before: number,
    asked: Citation,
  ): LimitStep => {
    const own = amperesIn(year, size, material, of) ?? 0;
    const cell = ampacityIn(year, size, material, of).citation;
    const citation = together([asked, cell]);
    return { kind, column: of, limit: own, before, after: Math.min(before, own), citation };
  };
  const ofCable = cable === null ? null : limit("cable", cableColumn, reached, cable);
  if (ofCable !== null) steps.push(ofCable);
  const before = ofCable?.after ?? reached;
  const { terminations } = conditions;
  const ofTerminations = limit("terminations", terminations.temperature, before, terminations.citation);
  steps.push(ofTerminations);
  const citations = steps.map(({ citation }) => citation);
  const citation = together(citations);
  return {
    kind: "ampacity",
    edition: year,
    amperes: ofTerminations.after,
    limitedBy: limitedBy(ofTerminations, ofCable),
    steps,
    cautions: cautionsOf(conditions, ofTerminations),
    evidence: citation.evidence,
    citation,
  };
}

function limitedBy(ofTerminations: LimitStep, ofCable: LimitStep | null): ConductorAmpacity["limitedBy"] {
  if (ofTerminations.after < ofTerminations.before) return "terminations";
  return ofCable !== null && ofCable.after < ofCable.before ? "cable" : "insulation";
}

function cautionsOf({ ambient, terminations }: Conditions, step: LimitStep): readonly AmpacityCaution[] {
  const isUnmarked = !terminations.isMarked && terminations.temperature === 60 && step.after < step.before;
  return [
    ...(ambient?.method === "table" && ambient.isColder ? (["cooler-than-the-table"] as const) : []),
    ...(ambient?.method === "equation" ? (["equation-from-memory"] as const) : []),
    ...(isUnmarked ? (["terminations-unmarked"] as const) : []),
  ];
}

/** Several places as one, each named once, with the weakest evidence. */
export function together(citations: readonly Citation[]): Citation & { readonly evidence: Evidence } {
  const sections = citations.flatMap(({ section }) => section.split(", "));
  const evidence = weakestEvidence(citations.map((one) => one.evidence));
  return { section: [...new Set(sections)].join(", "), evidence };
}
