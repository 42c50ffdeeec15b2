// Generated from shape.ts by "npm run generate"; do not edit.
import type { ConductorColumn, ConductorSize } from "../conductor/index.js";
import { readSize } from "../conductor/read.js";
import type { Shape } from "../input/shapes.js";

/** Temperatures of the conductor in degrees Celsius. Neither has a default: both decide. */
export interface WithstandTemperatures {
  /** When the fault begins. */
  readonly initial: number;
  /** What the insulation, the connection or the metal may reach. */
  readonly final: number;
}

export const withstandTemperaturesShape: Shape = {
  is: "object",
  members: {
    initial: {
      is: "between",
      unit: "degrees Celsius",
      least: -50,
      most: 1082,
      advice:
        "the final temperature lies at least one degree above the initial one, and not above the melting point",
    },
    final: {
      is: "between",
      unit: "degrees Celsius",
      least: -49,
      most: 1083,
      advice:
        "the final temperature lies at least one degree above the initial one, and not above the melting point",
    },
  },
};

/** A conductor to be held against a fault. */
export interface ShortTimeWithstandInput {
  /** The conductor. */
  readonly conductor:
    | (WithstandConductorBySize & { readonly areaCircularMils?: never })
    | (WithstandConductorByArea & { readonly size?: never });
  /** Temperatures, in degrees Celsius. */
  readonly temperatures: WithstandTemperatures;
  /** The fault current and how long it flows, or what a device lets through. */
  readonly fault:
    | (WithstandFault & { readonly letThrough?: never })
    | (WithstandLetThrough & { readonly amperes?: never; readonly seconds?: never });
}

export const shortTimeWithstandInputShape: Shape = {
  is: "object",
  members: {
    conductor: {
      is: "variants",
      of: [
        {
          is: "object",
          members: {
            size: { is: "checked", read: readSize },
            material: { is: "words", of: ["copper", "aluminum"] },
          },
        },
        {
          is: "object",
          members: {
            areaCircularMils: {
              is: "between",
              unit: "circular mils",
              least: 1,
              most: 100000000,
              whole: true,
              advice: "check the unit",
            },
            material: { is: "words", of: ["copper", "aluminum"] },
          },
        },
      ],
    },
    temperatures: withstandTemperaturesShape,
    fault: {
      is: "variants",
      of: [
        {
          is: "object",
          members: {
            amperes: { is: "between", unit: "amperes", least: 1e-9, most: 1000000, advice: "check the unit" },
            seconds: {
              is: "between",
              unit: "seconds",
              least: 0.1,
              most: 5,
              advice:
                "below that the asymmetry of the current decides: give the device's stated letThrough instead; above it the conductor is not adiabatic",
            },
          },
        },
        {
          is: "object",
          members: {
            letThrough: {
              is: "between",
              unit: "ampere-squared seconds",
              least: 1e-9,
              most: 5000000000000,
              advice: "check the unit",
            },
          },
        },
      ],
    },
  },
};

/** A conductor by its area, such as a bus bar. */
export interface WithstandConductorByArea {
  /** Whole circular mils of metal. */
  readonly areaCircularMils: number;
  /** Copper or aluminum; no constants are known for copper-clad aluminum. */
  readonly material: ConductorColumn;
}

export const withstandConductorByAreaShape: Shape = {
  is: "object",
  members: {
    areaCircularMils: {
      is: "between",
      unit: "circular mils",
      least: 1,
      most: 100000000,
      whole: true,
      advice: "check the unit",
    },
    material: { is: "words", of: ["copper", "aluminum"] },
  },
};

/** A conductor by its trade size. */
export interface WithstandConductorBySize {
  /** Trade size of the conductor. */
  readonly size: ConductorSize;
  /** Copper or aluminum; no constants are known for copper-clad aluminum. */
  readonly material: ConductorColumn;
}

export const withstandConductorBySizeShape: Shape = {
  is: "object",
  members: { size: { is: "checked", read: readSize }, material: { is: "words", of: ["copper", "aluminum"] } },
};

/** A fault of 0.1 s to 5 s. */
export interface WithstandFault {
  /** Symmetrical rms amperes. */
  readonly amperes: number;
  /** Seconds until the device has cleared. */
  readonly seconds: number;
}

export const withstandFaultShape: Shape = {
  is: "object",
  members: {
    amperes: { is: "between", unit: "amperes", least: 1e-9, most: 1000000, advice: "check the unit" },
    seconds: {
      is: "between",
      unit: "seconds",
      least: 0.1,
      most: 5,
      advice:
        "below that the asymmetry of the current decides: give the device's stated letThrough instead; above it the conductor is not adiabatic",
    },
  },
};

/** What a device lets through, as its maker states it for the available current. The only way below 0.1 s. */
export interface WithstandLetThrough {
  /** Ampere-squared seconds. */
  readonly letThrough: number;
}

export const withstandLetThroughShape: Shape = {
  is: "object",
  members: {
    letThrough: {
      is: "between",
      unit: "ampere-squared seconds",
      least: 1e-9,
      most: 5000000000000,
      advice: "check the unit",
    },
  },
};
