// Generated from shape.ts by "npm run generate"; do not edit.
import type { TemperatureColumn } from "../../ampacity/shape.generated.js";
import { temperatureColumnShape } from "../../ampacity/shape.generated.js";
import type { Material } from "../../conductor/index.js";
import { readMaterial } from "../../conductor/read.js";
import type { EditionYear } from "../../edition/edition-year.js";
import type { Shape } from "../../input/shapes.js";
import { readSupply } from "../read.js";
import type { Supply } from "../shape.generated.js";

/** Installed conductors, and the material of those that are to be assumed in their place. */
export interface AssumptionQuestion {
  /** Edition whose ampacity table is used. */
  readonly edition: EditionYear;
  /** The installed conductors. */
  readonly supply: Supply;
  /** Material of the conductor to be sized. */
  readonly material: Material;
  /** Temperature column in which ampacities are compared, in degrees Celsius. */
  readonly temperature: TemperatureColumn;
}

export const assumptionQuestionShape: Shape = {
  is: "object",
  members: {
    edition: { is: "words", of: ["2008", "2011", "2014", "2017", "2020", "2023", "2026"] },
    supply: { is: "checked", read: readSupply },
    material: { is: "checked", read: readMaterial },
    temperature: temperatureColumnShape,
  },
};

/** What stands on the nameplate of a transformer. */
export interface TransformerRating {
  /** Apparent power in kilovolt-amperes, from 0.001 to 10,000,000. */
  readonly kva: number;
  /** Volts of the side whose current is to be found, from line to line; from 1 to 1,000,000. */
  readonly volts: number;
  /** Phases of the transformer. */
  readonly phases: 1 | 3;
}

export const transformerRatingShape: Shape = {
  is: "object",
  members: {
    kva: { is: "between", unit: "kilovolt-amperes", least: 0.001, most: 10000000 },
    volts: { is: "between", unit: "volts", least: 1, most: 1000000 },
    phases: { is: "numbers", unit: "phases of the transformer", of: [1, 3] },
  },
};
