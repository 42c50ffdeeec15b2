// Generated from tables/conductor-count-adjustment.json by "npm run generate"; do not edit.
import type { PlainTable } from "../plain-table.js";
import type { ByEdition } from "../supply-area-table.js";

/** Adjustment for more than three current-carrying conductors in a raceway or cable: one row. */
export interface ConductorCountAdjustmentRow {
  /** Current-carrying conductors, from one more than in the row before through (conductors). */
  readonly through: null | number;
  /** Percent of the ampacity after any correction for ambient temperature (percent). */
  readonly percent: number;
}

const rowsFrom2008: readonly ConductorCountAdjustmentRow[] = [
  { through: 6, percent: 80 },
  { through: 9, percent: 70 },
  { through: 20, percent: 50 },
  { through: 30, percent: 45 },
  { through: 40, percent: 40 },
  { through: null, percent: 35 },
];

export const conductorCountAdjustment: ByEdition<PlainTable<ConductorCountAdjustmentRow>> = {
  "2008": { number: "Table 310.15(B)(2)(a)", rows: rowsFrom2008, evidence: "carried", cells: {} },
  "2011": { number: "Table 310.15(B)(3)(a)", rows: rowsFrom2008, evidence: "single", cells: {} },
  "2014": { number: "Table 310.15(B)(3)(a)", rows: rowsFrom2008, evidence: "carried", cells: {} },
  "2017": { number: "Table 310.15(B)(3)(a)", rows: rowsFrom2008, evidence: "carried", cells: {} },
  "2020": { number: "Table 310.15(C)(1)", rows: rowsFrom2008, evidence: "carried", cells: {} },
  "2023": { number: "Table 310.15(C)(1)", rows: rowsFrom2008, evidence: "carried", cells: {} },
  "2026": { number: "Table 310.15(C)(1)", rows: rowsFrom2008, evidence: "carried", cells: {} },
};
