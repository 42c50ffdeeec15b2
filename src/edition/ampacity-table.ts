import type { ConductorSize } from "../conductor/index.js";
import type { Evidence } from "./evidence.js";

/** Six ampacities: copper at 60, 75 and 90 C, then aluminum at the same. */
export type AmpacityRow = readonly [
  number | null,
  number | null,
  number | null,
  number | null,
  number | null,
  number | null,
];

/** Ampacities by size. */
export type AmpacityRows = Readonly<Partial<Record<ConductorSize, AmpacityRow>>>;

/** An ampacity table of one edition. */
export interface AmpacityTable {
  readonly number: string;
  readonly rows: AmpacityRows;
  readonly evidence: Evidence;
  /** Evidence of single cells, by "size column", where it differs. */
  readonly cells: Readonly<Record<string, Evidence>>;
}
