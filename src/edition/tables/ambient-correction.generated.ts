// Generated from tables/ambient-correction.json by "npm run generate"; do not edit.
import type { PlainTable } from "../plain-table.js";
import type { ByEdition } from "../supply-area-table.js";

/** Correction for ambient temperature, ampacities based on 30 C: one row. */
export interface AmbientCorrectionRow {
  /** Ambient temperature through (degrees Celsius). */
  readonly through: number;
  /** Lowest whole degree of the band; empty where it has no lower end (degrees Celsius). */
  readonly from: null | number;
  /** Of the ampacity of a conductor rated 60 C; empty where it has none (percent). */
  readonly factor60: null | number;
  /** Of the ampacity of a conductor rated 75 C; empty where it has none (percent). */
  readonly factor75: null | number;
  /** Of the ampacity of a conductor rated 90 C; empty where it has none (percent). */
  readonly factor90: number;
}

const rowsFrom2008: readonly AmbientCorrectionRow[] = [
  { through: 25, from: 21, factor60: 108, factor75: 105, factor90: 104 },
  { through: 30, from: 26, factor60: 100, factor75: 100, factor90: 100 },
  { through: 35, from: 31, factor60: 91, factor75: 94, factor90: 96 },
  { through: 40, from: 36, factor60: 82, factor75: 88, factor90: 91 },
  { through: 45, from: 41, factor60: 71, factor75: 82, factor90: 87 },
  { through: 50, from: 46, factor60: 58, factor75: 75, factor90: 82 },
  { through: 55, from: 51, factor60: 41, factor75: 67, factor90: 76 },
  { through: 60, from: 56, factor60: null, factor75: 58, factor90: 71 },
  { through: 70, from: 61, factor60: null, factor75: 33, factor90: 58 },
  { through: 80, from: 71, factor60: null, factor75: null, factor90: 41 },
];
const rowsFrom2011: readonly AmbientCorrectionRow[] = [
  { through: 10, from: null, factor60: 129, factor75: 120, factor90: 115 },
  { through: 15, from: 11, factor60: 122, factor75: 115, factor90: 112 },
  { through: 20, from: 16, factor60: 115, factor75: 111, factor90: 108 },
  { through: 25, from: 21, factor60: 108, factor75: 105, factor90: 104 },
  { through: 30, from: 26, factor60: 100, factor75: 100, factor90: 100 },
  { through: 35, from: 31, factor60: 91, factor75: 94, factor90: 96 },
  { through: 40, from: 36, factor60: 82, factor75: 88, factor90: 91 },
  { through: 45, from: 41, factor60: 71, factor75: 82, factor90: 87 },
  { through: 50, from: 46, factor60: 58, factor75: 75, factor90: 82 },
  { through: 55, from: 51, factor60: 41, factor75: 67, factor90: 76 },
  { through: 60, from: 56, factor60: null, factor75: 58, factor90: 71 },
  { through: 65, from: 61, factor60: null, factor75: 47, factor90: 65 },
  { through: 70, from: 66, factor60: null, factor75: 33, factor90: 58 },
  { through: 75, from: 71, factor60: null, factor75: null, factor90: 50 },
  { through: 80, from: 76, factor60: null, factor75: null, factor90: 41 },
  { through: 85, from: 81, factor60: null, factor75: null, factor90: 29 },
];

export const ambientCorrection: ByEdition<PlainTable<AmbientCorrectionRow>> = {
  "2008": {
    number: "Table 310.16",
    rows: rowsFrom2008,
    evidence: "bracketed",
    cells: {
      "25 factor60": "carried",
      "25 factor75": "carried",
      "30 factor60": "carried",
      "30 factor75": "carried",
      "35 factor60": "carried",
      "35 factor75": "carried",
      "40 factor60": "carried",
      "40 factor75": "carried",
      "45 factor60": "carried",
      "45 factor75": "carried",
      "50 factor60": "carried",
      "50 factor75": "carried",
      "55 factor60": "carried",
      "55 factor75": "carried",
      "60 factor60": "carried",
      "60 factor75": "carried",
      "70 from": "memory",
      "70 factor60": "carried",
      "70 factor75": "carried",
      "80 from": "memory",
      "80 factor60": "carried",
      "80 factor75": "carried",
    },
  },
  "2011": {
    number: "Table 310.15(B)(2)(a)",
    rows: rowsFrom2011,
    evidence: "single",
    cells: { "75 from": "carried" },
  },
  "2014": {
    number: "Table 310.15(B)(2)(a)",
    rows: rowsFrom2011,
    evidence: "bracketed",
    cells: { "75 from": "carried" },
  },
  "2017": { number: "Table 310.15(B)(2)(a)", rows: rowsFrom2011, evidence: "bracketed", cells: {} },
  "2020": { number: "Table 310.15(B)(1)", rows: rowsFrom2011, evidence: "bracketed", cells: {} },
  "2023": { number: "Table 310.15(B)(1)(1)", rows: rowsFrom2011, evidence: "carried", cells: {} },
  "2026": { number: "Table 310.15(B)(1)(1)", rows: rowsFrom2011, evidence: "carried", cells: {} },
};
