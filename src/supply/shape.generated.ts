// Generated from shape.ts by "npm run generate"; do not edit.
import type { ConductorSize, Material } from "../conductor/index.js";
import { readMaterial, readSize } from "../conductor/read.js";
import type { Shape } from "../input/shapes.js";

/** One conductor. */
export interface Conductor {
  /** Trade size, for example 4/0 AWG or 500 kcmil. */
  readonly size: ConductorSize;
  /** Material of a conductor. */
  readonly material: Material;
}

export const conductorShape: Shape = {
  is: "object",
  members: { size: { is: "checked", read: readSize }, material: { is: "checked", read: readMaterial } },
};

/** Ungrounded conductors that run together, one per phase, once or several times. */
export type SupplySet =
  | (UniformSet & { readonly phases?: never })
  | (PhasedSet & { readonly size?: never; readonly material?: never });

export const supplySetShape: Shape = {
  is: "variants",
  of: [
    {
      is: "object",
      members: {
        count: { is: "number", unit: "sets", whole: true },
        size: { is: "checked", read: readSize },
        material: { is: "checked", read: readMaterial },
      },
    },
    {
      is: "object",
      members: {
        count: { is: "number", unit: "sets", whole: true },
        phases: { is: "list", of: { is: "or-null", of: conductorShape }, least: 1, most: 3 },
      },
    },
  ],
};

/** Ungrounded conductors that are chosen. */
export interface ChosenConductors {
  /** The sets. */
  readonly sets: readonly SupplySet[];
}

export const chosenConductorsShape: Shape = {
  is: "object",
  members: { sets: { is: "list", of: supplySetShape, least: 1, most: 2000 } },
};

/** Sets of ungrounded conductors whose phases differ. */
export interface PhasedSet {
  /** How many such sets there are; sets in parallel are counted, not the conductors in them. */
  readonly count: number;
  /** One conductor per phase, always in the same order; null where a set leaves a phase out. */
  readonly phases: readonly (Conductor | null)[];
}

export const phasedSetShape: Shape = {
  is: "object",
  members: {
    count: { is: "number", unit: "sets", whole: true },
    phases: { is: "list", of: { is: "or-null", of: conductorShape }, least: 1, most: 3 },
  },
};

/** The ungrounded conductors that one thing is supplied by: a disconnect, an enclosure, a wireway, a raceway. For an enclosure they are the conductors to it; for a wireway ahead of several enclosures, all of them. */
export interface Supply {
  /** The sets. */
  readonly sets: readonly SupplySet[];
  /** Present when no conductors are chosen yet and these are the ones that a load of so many amperes requires. */
  readonly requiredForAmperes?: number;
}

export const supplyShape: Shape = {
  is: "object",
  members: {
    sets: { is: "list", of: supplySetShape, least: 1, most: 2000 },
    requiredForAmperes: { is: "number", unit: "amperes" },
  },
  optional: ["requiredForAmperes"],
};

/** Sets of ungrounded conductors in which every phase is alike. */
export interface UniformSet {
  /** How many such sets there are; sets in parallel are counted, not the conductors in them. */
  readonly count: number;
  /** Trade size, for example 4/0 AWG or 500 kcmil. */
  readonly size: ConductorSize;
  /** Material of a conductor. */
  readonly material: Material;
}

export const uniformSetShape: Shape = {
  is: "object",
  members: {
    count: { is: "number", unit: "sets", whole: true },
    size: { is: "checked", read: readSize },
    material: { is: "checked", read: readMaterial },
  },
};
