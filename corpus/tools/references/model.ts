import type { ConductorColumn, EditionYear, StandardSize } from "../../../src/index.js";

interface OfSize {
  readonly size: StandardSize;
}
interface OfMetal {
  readonly material: ConductorColumn;
}
/** A fault that heats a conductor from one temperature to another, in degrees Celsius. */
interface Heated extends OfMetal {
  readonly initial: number;
  readonly final: number;
}
interface ForCycles extends Heated {
  /** Cycles of 60 Hz. */
  readonly cycles: number;
}

/** The question of a printed value, and what the source takes as given for all values of its group. */
export interface Questions {
  readonly area: { ask: OfSize; constants: object };
  readonly "square-millimeters": { ask: OfSize; constants: object };
  readonly "si-factor": {
    ask: { readonly unit: "circular mil" | "mil" | "inch" };
    constants: object;
  };
  readonly "circular-mils-of-bar": {
    /** Inches. */
    ask: { readonly width: number; readonly thickness: number };
    constants: object;
  };
  readonly "resistivity-per-circular-mil-foot": {
    /** Ohm square millimeters per meter. */
    ask: { readonly resistivity: number };
    constants: { readonly metersPerFoot: number };
  };
  readonly resistance: {
    ask: OfSize;
    constants: {
      readonly resistivityAt20: number;
      readonly percentConductivity: number;
      readonly coefficientAt75: number;
      readonly stranding: number;
    };
  };
  /** The ampacity at another ambient temperature, as a part of that at the ambient of `constants`; degrees Celsius. */
  readonly "ambient-factor": {
    ask: { readonly column: number; readonly ambient: number };
    constants: { readonly ambient: number };
  };
  /** Kilovolt-amperes and volts from line to line. */
  readonly "transformer-current": {
    ask: { readonly kva: number; readonly volts: number; readonly phases: 1 | 3 };
    constants: object;
  };
  readonly "temperature-coefficient": { ask: OfMetal; constants: { readonly reference: number } };
  readonly "withstand-factor": { ask: OfMetal; constants: object };
  readonly "withstand-offset": { ask: OfMetal; constants: object };
  readonly "metric-factor": { ask: OfMetal; constants: object };
  readonly "metric-root-factor": { ask: OfMetal; constants: object };
  readonly "amperes-per-circular-mil": { ask: Heated; constants: object };
  readonly "amperes-per-square-millimeter": { ask: Heated; constants: object };
  readonly "squared-amperes-per-square-millimeter": { ask: Heated; constants: object };
  readonly "circular-mils-per-ampere": { ask: ForCycles; constants: object };
  readonly "withstand-amperes": { ask: ForCycles & OfSize; constants: object };
  readonly "withstand-capacity": { ask: Heated & OfSize; constants: object };
  readonly "withstand-area": {
    ask: Heated & { readonly amperes: number; readonly seconds: number };
    constants: object;
  };
}

/** A quantity that the library has. */
export type Quantity = keyof Questions;

/** What a formula takes as given; the values follow from it, without an outside figure. */
export interface Formulas {
  readonly "gauge-rounded-diameter": Gauge & { readonly diameterStep: number };
  readonly "gauge-exact-diameter": Gauge;
  readonly "kcmil-designation": object;
  readonly "library-of-units": object;
  readonly "ampacity-by-temperature": {
    readonly ambient: number;
    readonly from: number;
    readonly copper: number;
    readonly aluminum: number;
    readonly step: number;
  };
  readonly "heat-capacity": {
    readonly copperDensity: number;
    readonly copperHeat: number;
    readonly copperCoefficientAt20: number;
    readonly copperConductivity: number;
    readonly aluminumDensity: number;
    readonly aluminumHeat: number;
    readonly aluminumCoefficientAt20: number;
    readonly aluminumConductivity: number;
    readonly resistivityAt20: number;
  };
}

/** Definition of the gauge in mils, and how its areas are rounded in circular mils. */
export interface Gauge {
  readonly diameterOf36: number;
  readonly ratio: number;
  readonly steps: number;
  readonly smallAreaStep: number;
  readonly largeAreaStep: number;
  readonly largeFrom: number;
}

/** A way to compute values of reference. */
export type Formula = keyof Formulas;

/** One value that a source prints. */
export interface PrintedValue {
  /** The question; its shape follows from the quantity, and the schema knows it. */
  readonly ask: Readonly<Record<string, string | number>>;
  /** As printed, so that its places count. */
  readonly printed: string;
  /** The printed value is a whole multiple of this; the unit of its last place by default, 0 if it is exact. */
  readonly step?: number;
  /** Why the library is right to differ; absent where it agrees. */
  readonly disputed?: string;
}

interface GroupBase {
  readonly id: string;
  readonly says: string;
  readonly sources: readonly string[];
  readonly locator: string;
  readonly standing: "cited" | "arithmetic" | "memory";
  readonly unit: string;
  /** Largest difference beyond the rounding, as a part of the value, with its reason in `why`. */
  readonly within?: number;
  readonly why?: string;
}

/** Values that a source prints. */
export interface PrintedGroup extends GroupBase {
  readonly quantity: Quantity;
  readonly constants?: Readonly<Record<string, number>>;
  /** Set where the source cuts digits off, in some or all of its values, instead of rounding them. */
  readonly cutsOff?: true;
  readonly values: readonly PrintedValue[];
}

/** Values that follow from a formula, over all sizes or metals. */
export interface FormulaGroup extends GroupBase {
  readonly formula: Formula;
  readonly constants: Readonly<Record<string, number>>;
  readonly editions?: readonly EditionYear[];
  /** What is compared, to the reason why the library is right to differ. */
  readonly disputed?: Readonly<Record<string, string>>;
}

/** General references to one subject. */
export interface ReferenceFile {
  readonly id: string;
  readonly title: string;
  /** Which functions of the library are held against them, and what would show. */
  readonly judges: string;
  readonly groups: readonly (PrintedGroup | FormulaGroup)[];
}
