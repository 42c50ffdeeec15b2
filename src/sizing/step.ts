import type { TemperatureColumn } from "../ampacity/index.js";
import type { ConductorColumn, ConductorSize, StandardSize } from "../conductor/index.js";
import type { Citation, SumRule } from "../edition/index.js";
import type { AssumedConductor, Supply } from "../supply/index.js";

/** The area of the installed ungrounded conductors that enters the rule. */
export interface SumStep {
  readonly kind: "sum";
  readonly rule: SumRule;
  readonly supply: Supply;
  /** Column of the conductors that are added: `mixed` for copper beside aluminum, or one metal of such a supply. */
  readonly column: ConductorColumn | "mixed";
  /** Circular mils. */
  readonly area: number;
  readonly citation: Citation;
}

/** Installed conductors of another material replaced by assumed ones, and the sum that they make. */
export interface AssumedStep {
  readonly kind: "assumed";
  readonly temperature: TemperatureColumn;
  readonly conductors: readonly AssumedConductor[];
  /** Circular mils of the sum with the assumed conductors. */
  readonly area: number;
  readonly citation: Citation;
}

/** A row of a table. */
export interface RowStep {
  readonly kind: "row";
  /** Column that the supply enters. */
  readonly entered: ConductorColumn;
  /** Circular mils that enter. */
  readonly area: number;
  /** Circular mils through which the row holds; `null` for the open last row. */
  readonly through: number | null;
  /** Column that is read. */
  readonly read: ConductorColumn;
  readonly size: ConductorSize;
  readonly requiredArea: number;
  readonly citation: Citation;
}

/** The 12.5 percent rule: one eighth of the sum, above the last bounded row. */
export interface OneEighthStep {
  readonly kind: "one-eighth";
  readonly entered: ConductorColumn;
  readonly area: number;
  /** Circular mils above which the rule starts. */
  readonly threshold: number;
  readonly requiredArea: number;
  readonly citation: Citation;
}

/** Why a result may not fall below a size. */
export type FloorReason = "last-row" | "least-size" | "amendment";

/** A size below which the result may not fall. */
export interface FloorStep {
  readonly kind: "floor";
  readonly why: FloorReason;
  readonly size: ConductorSize;
  readonly requiredArea: number;
  readonly citation: Citation;
}

/** Why a result is not required to rise above an area. */
export type CapReason = "ungrounded-conductors" | "circuit-conductors" | "largest-size" | "electrode";

/** An area above which the result is not required to rise. */
export interface CapStep {
  readonly kind: "cap";
  readonly why: CapReason;
  readonly requiredArea: number;
  readonly citation: Citation;
}

/** A row of a table that is entered by the rating of an overcurrent device. */
export interface RatingRowStep {
  readonly kind: "rating-row";
  /** Amperes of the device. */
  readonly amperes: number;
  /** Amperes through which the row holds. */
  readonly through: number;
  readonly read: ConductorColumn;
  readonly size: ConductorSize;
  readonly requiredArea: number;
  readonly citation: Citation;
}

/** The increase in proportion to ungrounded conductors that are larger than their baseline. */
export interface IncreaseStep {
  readonly kind: "increase";
  /** Circular mils before the increase. */
  readonly area: number;
  /** Circular mils of the ungrounded conductors as installed. */
  readonly installedArea: number;
  /** Circular mils of the ungrounded conductors that the increase is counted from. */
  readonly baselineArea: number;
  readonly requiredArea: number;
  readonly citation: Citation;
}

/** Several circuits that share one conductor, what each of them asks for, and which decides. The steps before it are of that one. */
export interface SharedStep {
  readonly kind: "shared";
  readonly circuits: readonly SharedCircuit[];
  /** Place of the deciding circuit in the list. */
  readonly decides: number;
  readonly citation: Citation;
}

/** One circuit of several that share a conductor. */
export interface SharedCircuit {
  /** Amperes of its device. */
  readonly amperes: number;
  /** Circular mils that it asks for. */
  readonly requiredArea: number;
}

/** A conductor large enough for a current. */
export interface LoadStep {
  readonly kind: "load";
  readonly amperes: number;
  readonly temperature: TemperatureColumn;
  readonly size: StandardSize;
  readonly requiredArea: number;
  readonly citation: Citation;
}

/** A size or an area that the code names outright, or takes from another conductor. */
export interface NamedSizeStep {
  readonly kind: "named-size";
  /** Whether the code fixes the size or it equals that of another conductor. */
  readonly from: "code" | "other-conductor";
  readonly size: ConductorSize | null;
  readonly requiredArea: number;
  readonly citation: Citation;
}

/** The smallest standard size with the required area. */
export interface StandardSizeStep {
  readonly kind: "standard-size";
  readonly requiredArea: number;
  readonly size: StandardSize;
  readonly area: number;
  readonly citation: Citation;
}

/** One step of a result, with its numbers and the place that asks for it. */
export type Step =
  | SumStep
  | AssumedStep
  | RowStep
  | OneEighthStep
  | FloorStep
  | CapStep
  | RatingRowStep
  | IncreaseStep
  | SharedStep
  | LoadStep
  | NamedSizeStep
  | StandardSizeStep;

/** The kinds of step that can decide a required area. */
export type Governing = Exclude<Step["kind"], "sum" | "assumed" | "shared" | "standard-size">;
