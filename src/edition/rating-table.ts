import type { ConductorColumn, ConductorSize } from "../conductor/index.js";
import type { Evidence } from "./evidence.js";

/** A row up to and including a rating of the overcurrent device. */
export interface RatingRow extends Readonly<Record<ConductorColumn, ConductorSize>> {
  /** Amperes through which the row holds. */
  readonly through: number;
}

/** A table entered by the rating of the overcurrent device, in one edition. */
export interface RatingTable {
  readonly number: string;
  readonly rows: readonly RatingRow[];
  readonly evidence: Evidence;
  /** Evidence of single cells, by "amperes column", where it differs. */
  readonly cells: Readonly<Record<string, Evidence>>;
  /** Who amended a cell, as cited, by "amperes column"; absent in a table as printed. */
  readonly amended?: Readonly<Record<string, string>>;
}
