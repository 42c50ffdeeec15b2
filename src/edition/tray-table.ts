import type { Evidence } from "./evidence.js";

/** Metals of cable trays. */
export type TrayMetal = "steel" | "aluminum";

/** An area as the table prints it, in both units; it is not a size of a conductor. */
export interface TrayArea {
  /** Square inches, as printed. */
  readonly squareInches: number;
  /** Square millimeters, as printed. */
  readonly squareMillimeters: number;
}

/** A row up to and including a rating of the overcurrent device; `null` where the metal is not permitted. */
export interface TrayRow extends Readonly<Record<TrayMetal, TrayArea | null>> {
  /** Amperes through which the row holds. */
  readonly through: number;
}

/** The metal area of cable trays that serve as equipment grounding conductor, in one edition. */
export interface TrayTable {
  readonly number: string;
  readonly rows: readonly TrayRow[];
  readonly evidence: Evidence;
}
