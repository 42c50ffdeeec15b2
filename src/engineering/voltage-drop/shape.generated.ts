// Generated from shape.ts by "npm run generate"; do not edit.
import type { ConductorSize } from "../../conductor/index.js";
import { readSize } from "../../conductor/read.js";
import type { EditionYear } from "../../edition/edition-year.js";
import type { Shape } from "../../input/shapes.js";

/** The ungrounded conductors that ampacity requires, the baseline of any increase. */
export interface DropConductors {
  /** Sets in parallel; one by default. */
  readonly sets?: number;
  /** Trade size, for example 4/0 AWG or 500 kcmil. */
  readonly size: ConductorSize;
  /** Copper or aluminum; neither table has copper-clad aluminum. */
  readonly material: "copper" | "aluminum";
}

export const dropConductorsShape: Shape = {
  is: "object",
  members: {
    sets: { is: "number", unit: "sets", whole: true },
    size: { is: "checked", read: readSize },
    material: { is: "words", of: ["copper", "aluminum"] },
  },
  optional: ["sets"],
};

/** Which table gives the impedance. There is no default: both are in use and they differ. */
export type DropImpedance =
  | {
      /** Alternating-current resistance and reactance in conduit. */
      readonly from: "table-9";
      /** What the conduit is made of; the metal around the conductors adds to both. */
      readonly conduit: "pvc" | "aluminum" | "steel";
      /** Power factor of the load, lagging, as a part of one. */
      readonly powerFactor: number;
    }
  | {
      /** Direct-current resistance. */
      readonly from: "table-8";
      /** Whether the conductors are solid, which the table has through 8 AWG. */
      readonly solid?: boolean;
      /** Whether the copper is coated, for example tinned. */
      readonly coated?: boolean;
      /** Temperature of the conductor; 75 C, that of the table, by default. */
      readonly celsius?: number;
    };

export const dropImpedanceShape: Shape = {
  is: "variants",
  by: "from",
  of: [
    {
      is: "object",
      members: {
        from: { is: "exactly", value: "table-9" },
        conduit: { is: "words", of: ["pvc", "aluminum", "steel"] },
        powerFactor: {
          is: "between",
          unit: "power factor",
          least: 0.01,
          most: 1,
          advice: "give it as a part of one, lagging",
        },
      },
    },
    {
      is: "object",
      members: {
        from: { is: "exactly", value: "table-8" },
        solid: { is: "flag", says: "whether they are solid" },
        coated: { is: "flag", says: "whether the copper is coated" },
        celsius: {
          is: "between",
          unit: "degrees Celsius",
          least: -50,
          most: 250,
          advice: "give the temperature of the conductor",
        },
      },
      optional: ["solid", "coated", "celsius"],
    },
  ],
};

/** A run whose voltage drop is to be found. */
export interface VoltageDropQuestion {
  /** Edition whose tables are used. */
  readonly edition: EditionYear;
  /** How the load is connected: balanced over three phases, or by two conductors. */
  readonly current: "three-phase" | "single-phase" | "direct";
  /** Voltage of the circuit: between phases of three, else between the two conductors. */
  readonly volts: number;
  /** Amperes of the load. */
  readonly amperes: number;
  /** Length of the run in feet, one way. */
  readonly feet: number;
  /** The ungrounded conductors that ampacity requires, the baseline of any increase. */
  readonly conductors: DropConductors;
  /** Which table gives the impedance. There is no default: both are in use and they differ. */
  readonly impedance: DropImpedance;
  /** Drop that the design permits, in percent of the voltage. The code has informational notes on it, no rule. */
  readonly permittedPercent?: number;
  /** Up to how many sets the conductors may be divided for the permitted drop; those of the conductors by default. */
  readonly mostSets?: number;
}

export const voltageDropQuestionShape: Shape = {
  is: "object",
  members: {
    edition: { is: "words", of: ["2008", "2011", "2014", "2017", "2020", "2023", "2026"] },
    current: { is: "words", of: ["three-phase", "single-phase", "direct"] },
    volts: { is: "between", unit: "volts", least: 1, most: 2000, advice: "give the voltage of the circuit" },
    amperes: { is: "between", unit: "amperes", least: 0.001, most: 100000, advice: "check the unit" },
    feet: { is: "between", unit: "feet", least: 0.1, most: 100000, advice: "check the unit" },
    conductors: dropConductorsShape,
    impedance: dropImpedanceShape,
    permittedPercent: {
      is: "between",
      unit: "percent",
      least: 0.01,
      most: 50,
      advice: "give it in percent of the voltage",
    },
    mostSets: { is: "number", unit: "sets", whole: true },
  },
  optional: ["permittedPercent", "mostSets"],
};
