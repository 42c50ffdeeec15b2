import type { Citation, EditionYear, Evidence } from "../edition/index.js";
import type { InsulationType, PlaceOfUse, Temperature, TemperatureColumn } from "./shape.generated.js";

/** What the ampacity of a conductor in its place went through, in order. Amperes are exact: nothing is rounded between two steps. */
export type AmpacityStep =
  | InsulationStep
  | TableStep
  | RooftopStep
  | AmbientStep
  | AdjustmentStep
  | LimitStep;

/** The temperature that the insulation is rated for in this place. */
export interface InsulationStep {
  /** Tells the members of the union apart. */
  readonly kind: "insulation";
  /** Letters of the insulation. */
  readonly insulation: InsulationType;
  /** Location of the conductor. */
  readonly location: PlaceOfUse["location"];
  /** Degrees Celsius: the column that the ampacity starts in. */
  readonly temperature: TemperatureColumn;
  /** Where the edition says so, and how surely it is known. */
  readonly citation: Citation;
}

/** The cell of the ampacity table. */
export interface TableStep {
  /** Tells the members of the union apart. */
  readonly kind: "table";
  /** Column, in degrees Celsius. */
  readonly column: TemperatureColumn;
  /** Amperes of the cell. */
  readonly after: number;
  /** Where the edition says so, and how surely it is known. */
  readonly citation: Citation;
}

/** What direct sunlight above a roof adds to the ambient temperature. */
export interface RooftopStep {
  /** Tells the members of the union apart. */
  readonly kind: "rooftop";
  /** Inches from the roof to the underside. */
  readonly inchesAboveRoof: number;
  /** What is added, in the unit of the ambient temperature; `null` where nothing is. */
  readonly added: Temperature | null;
  /** Why nothing is added. */
  readonly because?: "height" | "insulation";
  /** The ambient temperature to correct for. */
  readonly ambient: Temperature;
  /** Where the edition says so, and how surely it is known. */
  readonly citation: Citation;
}

/** The correction for the ambient temperature: a percentage of the table, or the square root of a ratio. */
export type AmbientStep = {
  /** Tells the members of the union apart. */
  readonly kind: "ambient";
  /** Ambient temperature, with what a roof adds. */
  readonly ambient: Temperature;
  /** Amperes before. */
  readonly before: number;
  /** Amperes after. */
  readonly after: number;
  /** Where the edition says so, and how surely it is known. */
  readonly citation: Citation;
} & (
  | {
      /** By the table of ambient temperatures. */
      readonly method: "table";
      /** Degrees Celsius through which the band goes. */
      readonly through: number;
      /** Percent of the amperes before. */
      readonly percent: number;
    }
  | {
      /** By the equation in place of the table. */
      readonly method: "equation";
      /** Multiplier, the root of the ratio of the temperatures above ambient. */
      readonly factor: number;
    }
);

/** The adjustment for more than three current-carrying conductors. */
export interface AdjustmentStep {
  /** Tells the members of the union apart. */
  readonly kind: "adjustment";
  /** Current-carrying conductors in the raceway or cable. */
  readonly conductors: number;
  /** Percent of the amperes before. */
  readonly percent: number;
  /** Why they are not adjusted for. */
  readonly because?: "short-raceway";
  /** Amperes before. */
  readonly before: number;
  /** Amperes after. */
  readonly after: number;
  /** Where the edition says so, and how surely it is known. */
  readonly citation: Citation;
}

/** What the ampacity may not exceed: the column of the terminations, or the one of the kind of cable. */
export interface LimitStep {
  /** Tells the members of the union apart. */
  readonly kind: "cable" | "terminations";
  /** Column, in degrees Celsius. */
  readonly column: TemperatureColumn;
  /** Amperes in that column, of the ampacity table as it stands. */
  readonly limit: number;
  /** Amperes before. */
  readonly before: number;
  /** Amperes after. */
  readonly after: number;
  /** Where the edition says so, and how surely it is known. */
  readonly citation: Citation;
}

/** Stable code of what to mind about an ampacity. */
export type AmpacityCaution = "cooler-than-the-table" | "equation-from-memory" | "terminations-unmarked";

/** The ampacity of a conductor in its place. */
export interface ConductorAmpacity {
  /** Tells results apart. */
  readonly kind: "ampacity";
  /** Edition. */
  readonly edition: EditionYear;
  /** Amperes, not rounded. */
  readonly amperes: number;
  /** What decides it: the insulation in its place, the terminations, or the kind of cable. */
  readonly limitedBy: "insulation" | "terminations" | "cable";
  /** Each factor with its cell and what it did, in order. */
  readonly steps: readonly AmpacityStep[];
  /** Stable codes of what to mind. */
  readonly cautions: readonly AmpacityCaution[];
  /** The weakest that a step rests on. */
  readonly evidence: Evidence;
  /** Every place that a step rests on, in order. */
  readonly citation: Citation;
}
