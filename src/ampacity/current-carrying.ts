import type { Citation, EditionYear, Evidence } from "../edition/index.js";
import { conductorCounting, neutralCounting } from "../edition/tables/sections.generated.js";
import { readShape } from "../input/read-shape.js";
import { readAll } from "../input/reader.js";
import { together } from "./ampacity-of.js";
import { type CircuitInRaceway, type CountQuestion, countQuestionShape } from "./shape.generated.js";

export type { CountQuestion };

/** What one kind of circuit adds to the count. */
export interface CountedCircuit {
  /** Conductors of the circuit. */
  readonly kind: CircuitInRaceway["kind"];
  /** How many alike. */
  readonly count: number;
  /** Current-carrying conductors of one. */
  readonly each: number;
  /** Whether its neutral counts; `null` where it has none. */
  readonly neutralCounts: boolean | null;
  /** Why the neutral counts or not; absent where there is none. */
  readonly because?: "its-own-current" | "unbalance-only" | "current-of-third-phase" | "harmonics";
}

/** How many conductors of a raceway or cable count as current-carrying. */
export interface CurrentCarrying {
  /** Tells results apart. */
  readonly kind: "current-carrying";
  /** Edition. */
  readonly edition: EditionYear;
  /** Current-carrying conductors together. */
  readonly count: number;
  /** What each kind of circuit adds. */
  readonly circuits: readonly CountedCircuit[];
  /** Spare conductors among them. */
  readonly spares: number;
  /** Where the edition says what counts. */
  readonly citation: Citation;
  /** The weakest that it rests on. */
  readonly evidence: Evidence;
}

const ungroundedConductors: Readonly<Record<CircuitInRaceway["kind"], number>> = {
  "two-wire": 1,
  "three-wire-single-phase": 2,
  "two-phases-and-neutral-of-wye": 2,
  "three-wire-three-phase": 3,
  "four-wire-wye": 3,
};

/**
 * The current-carrying conductors in a raceway or cable, by which ampacities are adjusted: every ungrounded conductor of every set, spares,
 * and a neutral where it carries more than the unbalance of its own circuit (310.15(E)). Conductors for grounding and bonding are not counted.
 *
 * @param question - edition, the circuits in the raceway, each set of a parallel circuit as one, and spares
 * @returns the count, with what each circuit adds to it and why
 * @throws {@link InputError} listing everything that is wrong in the question
 *
 * @example
 * Two sets of a four-wire feeder in one raceway, with harmonics and without:
 *
 * ```ts
 * import { currentCarryingConductors } from "bondmil";
 * const edition = "2023";
 * const sets = { kind: "four-wire-wye", count: 2 } as const;
 * currentCarryingConductors({ edition, circuits: [sets] }).count; // => 6
 * currentCarryingConductors({ edition, circuits: [{ ...sets, mostlyNonlinear: true }] }).count; // => 8
 * ```
 */
export function currentCarryingConductors(question: CountQuestion): CurrentCarrying {
  const {
    edition,
    circuits,
    spares = 0,
  } = readAll(question, (at) => readShape<CountQuestion>(at, countQuestionShape));
  const counted = circuits.map(countOf);
  const citation = together([conductorCounting[edition], neutralCounting[edition]]);
  return {
    kind: "current-carrying",
    edition,
    count: counted.reduce((sum, { count, each }) => sum + count * each, spares),
    circuits: counted,
    spares,
    citation,
    evidence: citation.evidence,
  };
}

function countOf({ kind, count = 1, mostlyNonlinear = false }: CircuitInRaceway): CountedCircuit {
  const neutral = neutralOf(kind, mostlyNonlinear);
  const each = ungroundedConductors[kind] + (neutral?.counts === true ? 1 : 0);
  return {
    kind,
    count,
    each,
    neutralCounts: neutral?.counts ?? null,
    ...(neutral !== null && { because: neutral.because }),
  };
}

function neutralOf(
  kind: CircuitInRaceway["kind"],
  mostlyNonlinear: boolean,
): { readonly counts: boolean; readonly because: NonNullable<CountedCircuit["because"]> } | null {
  switch (kind) {
    case "two-wire":
      return { counts: true, because: "its-own-current" };
    case "three-wire-single-phase":
      return { counts: false, because: "unbalance-only" };
    case "two-phases-and-neutral-of-wye":
      return { counts: true, because: "current-of-third-phase" };
    case "three-wire-three-phase":
      return null;
    case "four-wire-wye":
      return mostlyNonlinear
        ? { counts: true, because: "harmonics" }
        : { counts: false, because: "unbalance-only" };
  }
}
