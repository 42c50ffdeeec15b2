import { correctedAmperes } from "../ampacity/conditions.js";
import {
  ampacityIn,
  amperesUnder,
  type Conditions,
  type ConditionsOfUse,
  conditionsIn,
  type TemperatureColumn,
} from "../ampacity/index.js";
import type { ConductorColumn, StandardSize } from "../conductor/index.js";
import type { Evidence } from "../edition/index.js";
import type { SupplyCandidatesQuestion } from "./shape.generated.js";

/** What one conductor carries. */
export interface Carrying {
  /** Amperes in its place, not above its terminations. */
  readonly each: number;
  /** Amperes before correction and adjustment, not above its terminations. */
  readonly before: number;
  readonly limitedBy: "insulation" | "terminations";
  readonly terminations: TemperatureColumn;
}

/** Finds the ampacity of conductors in the place of one question; equal conductors are looked up once. */
export interface AmpacityFinder {
  find(size: StandardSize, material: ConductorColumn, currentCarrying: number): Carrying | null;
  /** Levels of evidence that it rests on. */
  readonly evidence: Set<Evidence>;
}

/** Conditions of use of the conductors of a question, so many of them in a raceway carrying current. */
export function conditionsOf(
  { conductor, place, terminations }: Pick<SupplyCandidatesQuestion, "conductor" | "place" | "terminations">,
  device: number,
  currentCarrying: number,
): ConditionsOfUse {
  return {
    insulation: conductor.insulation,
    place: { ...place, currentCarrying },
    terminations: terminations === undefined ? { circuitAmperes: device } : { marked: terminations },
  };
}

/** Prepares the ampacities of a question. */
export function ampacityFinder(question: SupplyCandidatesQuestion, device: number): AmpacityFinder {
  const { year } = question.code;
  const conditions = new Map<number, Conditions | null>();
  const known = new Map<string, Carrying | null>();
  const evidence = new Set<Evidence>();
  const note = (
    ...cited: readonly ({ readonly evidence: Evidence | "vouched" } | null | undefined)[]
  ): void => {
    for (const one of cited) if (one != null && one.evidence !== "vouched") evidence.add(one.evidence);
  };
  const under = (currentCarrying: number): Conditions | null => {
    const found = conditions.get(currentCarrying);
    if (found !== undefined) return found;
    const made = conditionsIn(year, conditionsOf(question, device, currentCarrying));
    note(made?.column.citation, made?.ambient?.citation, made?.adjustment?.citation);
    note(made?.rooftop?.citation, made?.terminations.citation);
    conditions.set(currentCarrying, made);
    return made;
  };
  const work = (size: StandardSize, material: ConductorColumn, currentCarrying: number): Carrying | null => {
    const found = under(currentCarrying);
    const each = found === null ? null : amperesUnder(found, size, material);
    if (found === null || each === null) return null;
    const own = ampacityIn(year, size, material, found.column.temperature);
    const limit = ampacityIn(year, size, material, found.terminations.temperature);
    note(own.citation, limit.citation);
    const before = Math.min(own.amperes ?? 0, limit.amperes ?? 0);
    const limitedBy = each < correctedAmperes(found, own.amperes ?? 0) ? "terminations" : "insulation";
    return { each, before, limitedBy, terminations: found.terminations.temperature };
  };
  return {
    evidence,
    find: (size, material, currentCarrying) => {
      const key = `${size} ${material} ${currentCarrying}`;
      const found = known.get(key);
      if (found !== undefined) return found;
      const carrying = work(size, material, currentCarrying);
      known.set(key, carrying);
      return carrying;
    },
  };
}
