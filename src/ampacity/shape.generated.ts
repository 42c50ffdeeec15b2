// Generated from shape.ts by "npm run generate"; do not edit.
import type { ConductorSize, Material } from "../conductor/index.js";
import { readMaterial, readSize } from "../conductor/read.js";
import type { EditionYear } from "../edition/edition-year.js";
import type { Shape } from "../input/shapes.js";

/** Temperature column of the ampacity table, in degrees Celsius. */
export type TemperatureColumn = 60 | 75 | 90;

export const temperatureColumnShape: Shape = {
  is: "numbers",
  unit: "temperature column in degrees Celsius",
  of: [60, 75, 90],
};

/** A conductor whose ampacity is to be found. */
export interface AmpacityQuestion {
  /** Edition whose ampacity table is used. */
  readonly edition: EditionYear;
  /** Material; copper-clad aluminum shares the aluminum columns. */
  readonly material: Material;
  /** Temperature column of the ampacity table, in degrees Celsius. */
  readonly temperature: TemperatureColumn;
  /** Trade size, for example 4/0 AWG or 500 kcmil. */
  readonly size: ConductorSize;
}

export const ampacityQuestionShape: Shape = {
  is: "object",
  members: {
    edition: { is: "words", of: ["2008", "2011", "2014", "2017", "2020", "2023", "2026"] },
    material: { is: "checked", read: readMaterial },
    temperature: temperatureColumnShape,
    size: { is: "checked", read: readSize },
  },
};

/** A current for which a conductor is to be found. */
export interface ConductorQuestion {
  /** Edition whose ampacity table is used. */
  readonly edition: EditionYear;
  /** Material; copper-clad aluminum shares the aluminum columns. */
  readonly material: Material;
  /** Temperature column of the ampacity table, in degrees Celsius. */
  readonly temperature: TemperatureColumn;
  /** Amperes to carry. */
  readonly amperes: number;
}

export const conductorQuestionShape: Shape = {
  is: "object",
  members: {
    edition: { is: "words", of: ["2008", "2011", "2014", "2017", "2020", "2023", "2026"] },
    material: { is: "checked", read: readMaterial },
    temperature: temperatureColumnShape,
    amperes: { is: "number", unit: "amperes" },
  },
};
