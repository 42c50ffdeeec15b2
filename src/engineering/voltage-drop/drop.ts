import { areaOf, type ConductorSize, conductorSizes } from "../../conductor/index.js";
import { isSmallForParallel } from "../../supply/parallel-minimum.js";
import { type Impedance, impedanceIn } from "./impedance.js";
import type { VoltageDropQuestion } from "./shape.generated.js";

/** Conductors of a run with the drop along it. */
export interface Drop {
  /** Sets in parallel. */
  readonly sets: number;
  /** Size of each conductor. */
  readonly size: ConductorSize;
  /** Volts lost. */
  readonly volts: number;
  /** The same in percent of the voltage of the circuit. */
  readonly percent: number;
  /** Impedance of one conductor. */
  readonly impedance: Impedance;
}

/** How often the drop of one conductor counts: there and back, or between two phases of three. */
const conductorsCounted = {
  "three-phase": /* @__PURE__ */ Math.sqrt(3),
  "single-phase": 2,
  direct: 2,
} as const;

/** Drop along a run of some conductors; `null` where the table has none of their size. */
export function dropOf(question: VoltageDropQuestion, sets: number, size: ConductorSize): Drop | null {
  const { edition, current, volts: of, amperes, feet, conductors, impedance: asked } = question;
  const impedance = impedanceIn(edition, size, conductors.material, asked);
  if (impedance === null) return null;
  const volts = (conductorsCounted[current] * amperes * impedance.effective * feet) / 1000 / sets;
  return { sets, size, volts, percent: (100 * volts) / of, impedance };
}

/**
 * The smallest size with a drop of at most so many percent for a number of sets, with no less metal than the conductors of the question;
 * `null` if there is none. Several sets are of 1/0 AWG and larger, unless they already are smaller.
 */
export function smallestFor(question: VoltageDropQuestion, sets: number, percent: number): Drop | null {
  for (const drop of dropsFor(question, sets)) if (drop.percent <= percent) return drop;
  return null;
}

/** The drops of the sizes that a number of sets may have, smallest size first. */
export function dropsFor(question: VoltageDropQuestion, sets: number): readonly Drop[] {
  const { size: own, sets: ownSets = 1 } = question.conductors;
  const isSame = (size: ConductorSize): boolean => sets === ownSets && size === own;
  return conductorSizes
    .filter((size) => areaOf(size) * sets >= areaOf(own) * ownSets)
    .filter((size) => sets === 1 || isSame(size) || !isSmallForParallel(areaOf(size)))
    .flatMap((size) => dropOf(question, sets, size) ?? []);
}
