// Generated from shape.ts by "npm run generate"; do not edit.
import type { ConductorSize } from "../../conductor/index.js";
import { readSize } from "../../conductor/read.js";
import type { Shape } from "../../input/shapes.js";

/** Conductors of one size and material. */
export interface WeighedConductors {
  /** How many of them run side by side. */
  readonly count: number;
  /** Trade size, for example 4/0 AWG or 500 kcmil. */
  readonly size: ConductorSize;
  /** Copper or aluminum; no density of copper-clad aluminum is held. */
  readonly material: "copper" | "aluminum";
  /** Whether they are solid; stranded by default, which weighs 2 percent more. */
  readonly solid?: boolean;
}

export const weighedConductorsShape: Shape = {
  is: "object",
  members: {
    count: { is: "number", unit: "conductors", whole: true },
    size: { is: "checked", read: readSize },
    material: { is: "words", of: ["copper", "aluminum"] },
    solid: { is: "flag", says: "whether they are solid" },
  },
  optional: ["solid"],
};

/** Conductors whose metal is to be weighed. */
export interface MetalMassQuestion {
  /** The conductors. */
  readonly conductors: readonly WeighedConductors[];
  /** Length in feet; 1000 by default. */
  readonly feet?: number;
}

export const metalMassQuestionShape: Shape = {
  is: "object",
  members: {
    conductors: { is: "list", of: weighedConductorsShape, least: 1, most: 2000 },
    feet: { is: "between", unit: "feet", least: 0.1, most: 10000000, advice: "check the unit" },
  },
  optional: ["feet"],
};
