import type { ConductorSize, Material } from "../conductor/index.js";

/** One ungrounded conductor. */
export interface Conductor {
  readonly size: ConductorSize;
  readonly material: Material;
}

/** Sets of ungrounded conductors in which every phase is alike. */
export interface UniformSet {
  /** How many such sets there are; sets in parallel are counted, not the conductors in them. */
  readonly count: number;
  readonly size: ConductorSize;
  readonly material: Material;
}

/** Sets of ungrounded conductors whose phases differ. */
export interface PhasedSet {
  /** How many such sets there are. */
  readonly count: number;
  /** One conductor per phase, always in the same order; `null` where a set leaves a phase out. */
  readonly phases: readonly (Conductor | null)[];
}

/** Ungrounded conductors that run together, one per phase, once or several times. */
export type SupplySet = UniformSet | PhasedSet;

/**
 * The ungrounded conductors that one thing is supplied by: a disconnect, an enclosure, a wireway, a raceway.
 * For an enclosure they are the conductors to it; for a wireway ahead of several enclosures, all of them.
 */
export interface Supply {
  readonly sets: readonly SupplySet[];
  /**
   * Present when no conductors are chosen yet and these are the ones that a load of so many amperes requires
   * (made by {@link suppliesForLoad}).
   */
  readonly requiredForAmperes?: number;
}
