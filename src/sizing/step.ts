import type { TemperatureColumn } from "../ampacity/index.js";
import type { ConductorColumn, ConductorSize, StandardSize } from "../conductor/index.js";
import type { Citation, SumRule } from "../edition/index.js";
import type { AssumedConductor, Supply } from "../supply/index.js";

/** The area of the installed ungrounded conductors that enters the rule. */
export interface SumStep {
  /** Tells the members of the union apart. */
  readonly kind: "sum";
  /** Which sum it is. */
  readonly rule: SumRule;
  /** The ungrounded conductors. */
  readonly supply: Supply;
  /** Column of the conductors that are added: `mixed` for copper beside aluminum, or one metal of such a supply. */
  readonly column: ConductorColumn | "mixed";
  /** Circular mils. */
  readonly area: number;
  /** Where the edition says so. */
  readonly citation: Citation;
}

/** Installed conductors of another material replaced by assumed ones, and the sum that they make. */
export interface AssumedStep {
  /** Tells the members of the union apart. */
  readonly kind: "assumed";
  /** Temperature column, in degrees Celsius. */
  readonly temperature: TemperatureColumn;
  /** Each installed conductor with the one assumed in its place. */
  readonly conductors: readonly AssumedConductor[];
  /** Circular mils of the sum with the assumed conductors. */
  readonly area: number;
  /** Where the edition says so. */
  readonly citation: Citation;
}

/** A row of a table. */
export interface RowStep {
  /** Tells the members of the union apart. */
  readonly kind: "row";
  /** Column that the supply enters. */
  readonly entered: ConductorColumn;
  /** Circular mils that enter. */
  readonly area: number;
  /** Circular mils above which the row holds; `null` for the first row. */
  readonly over: number | null;
  /** Circular mils through which the row holds; `null` for the open last row. */
  readonly through: number | null;
  /** Column that is read. */
  readonly read: ConductorColumn;
  /** Size that the row requires. */
  readonly size: ConductorSize;
  /** Circular mils required. */
  readonly requiredArea: number;
  /** Where the edition says so. */
  readonly citation: Citation;
}

/** The 12.5 percent rule: 12.5 percent of the sum, above the last bounded row. */
export interface OneEighthStep {
  /** Tells the members of the union apart. */
  readonly kind: "one-eighth";
  /** Column of the table that the supply enters. */
  readonly entered: ConductorColumn;
  /** Circular mils. */
  readonly area: number;
  /** Circular mils above which the rule starts. */
  readonly threshold: number;
  /** Circular mils required. */
  readonly requiredArea: number;
  /** Where the edition says so. */
  readonly citation: Citation;
}

/** Why a result may not fall below a size. */
export type FloorReason = "last-row" | "least-size" | "amendment";

/** A size below which the result may not fall. */
export interface FloorStep {
  /** Tells the members of the union apart. */
  readonly kind: "floor";
  /** What sets the floor. */
  readonly why: FloorReason;
  /** The minimum size. */
  readonly size: ConductorSize;
  /** Circular mils required. */
  readonly requiredArea: number;
  /** Where the edition says so. */
  readonly citation: Citation;
}

/** Why a result is not required to rise above an area. */
export type CapReason = "ungrounded-conductors" | "circuit-conductors" | "largest-size" | "electrode";

/** An area above which the result is not required to rise. */
export interface CapStep {
  /** Tells the members of the union apart. */
  readonly kind: "cap";
  /** What sets the cap. */
  readonly why: CapReason;
  /** Circular mils required. */
  readonly requiredArea: number;
  /** Where the edition says so. */
  readonly citation: Citation;
}

/** A row of a table that is entered by the rating of an overcurrent device. */
export interface RatingRowStep {
  /** Tells the members of the union apart. */
  readonly kind: "rating-row";
  /** Amperes of the device. */
  readonly amperes: number;
  /** Amperes through which the row holds. */
  readonly through: number;
  /** Column of the table that is read. */
  readonly read: ConductorColumn;
  /** Size that the row requires. */
  readonly size: ConductorSize;
  /** Circular mils required. */
  readonly requiredArea: number;
  /** Where the edition says so. */
  readonly citation: Citation;
}

/** The increase in proportion to ungrounded conductors that are larger than their baseline. */
export interface IncreaseStep {
  /** Tells the members of the union apart. */
  readonly kind: "increase";
  /** Circular mils before the increase. */
  readonly area: number;
  /** Circular mils of the ungrounded conductors as installed. */
  readonly installedArea: number;
  /** Circular mils of the ungrounded conductors that the increase is counted from. */
  readonly baselineArea: number;
  /** Circular mils required. */
  readonly requiredArea: number;
  /** Where the edition says so. */
  readonly citation: Citation;
}

/** Several circuits that share one conductor, what each of them requires, and which decides. The steps before it are of that one. */
export interface SharedStep {
  /** Tells the members of the union apart. */
  readonly kind: "shared";
  /** The circuits, each with what it requires. */
  readonly circuits: readonly SharedCircuit[];
  /** Place of the deciding circuit in the list. */
  readonly decides: number;
  /** Where the edition says so. */
  readonly citation: Citation;
}

/** One circuit of several that share a conductor. */
export interface SharedCircuit {
  /** Amperes of its device. */
  readonly amperes: number;
  /** Circular mils that it requires. */
  readonly requiredArea: number;
}

/** A conductor large enough for a current. */
export interface LoadStep {
  /** Tells the members of the union apart. */
  readonly kind: "load";
  /** Amperes. */
  readonly amperes: number;
  /** Amperes of the circuit, given where they set the size: its device may not protect a smaller conductor (240.4(D)). */
  readonly circuitAmperes?: number;
  /** Temperature column, in degrees Celsius. */
  readonly temperature: TemperatureColumn;
  /** Trade size of the conductor. */
  readonly size: StandardSize;
  /** Circular mils required. */
  readonly requiredArea: number;
  /** Where the edition says so. */
  readonly citation: Citation;
}

/** A size or an area that the code names outright, or takes from another conductor. */
export interface NamedSizeStep {
  /** Tells the members of the union apart. */
  readonly kind: "named-size";
  /** Whether the code fixes the size or it equals that of another conductor. */
  readonly from: "code" | "other-conductor";
  /** The size; `null` where only an area is known. */
  readonly size: ConductorSize | null;
  /** Circular mils required. */
  readonly requiredArea: number;
  /** Where the edition says so. */
  readonly citation: Citation;
}

/** The smallest standard size with the required area. */
export interface StandardSizeStep {
  /** Tells the members of the union apart. */
  readonly kind: "standard-size";
  /** Circular mils required. */
  readonly requiredArea: number;
  /** The smallest standard size that has the area. */
  readonly size: StandardSize;
  /** Circular mils. */
  readonly area: number;
  /** Where the edition says so. */
  readonly citation: Citation;
}

/** One step of a result, with its numbers and the place that requires it. */
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
