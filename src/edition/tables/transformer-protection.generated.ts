// Generated from tables/transformer-protection.json by "npm run generate"; do not edit.
import type { PlainTable } from "../plain-table.js";
import type { ByEdition } from "../supply-area-table.js";

/** Overcurrent protection of transformers of 1000 volts and less (600 volts and less through 2011), in percent of rated current: one row. */
export interface TransformerProtectionRow {
  /** Side that is protected, whether the other one is too, and the rated current of the side. */
  readonly cell: string;
  /** Which sides have protection. */
  readonly method: string;
  /** Side whose device is limited. */
  readonly side: string;
  /** Rated current of the side from which the row holds (amperes). */
  readonly from: number;
  /** Most that the device may be rated or set at (percent). */
  readonly percent: number;
  /** Up to the next standard rating, or not above the percentage, where that meets no standard rating. */
  readonly rounding: string;
}

const rowsFrom2008: readonly TransformerProtectionRow[] = [
  {
    cell: "primary alone, 9 A or more",
    method: "primary-only",
    side: "primary",
    from: 9,
    percent: 125,
    rounding: "up",
  },
  {
    cell: "primary alone, less than 9 A",
    method: "primary-only",
    side: "primary",
    from: 2,
    percent: 167,
    rounding: "not-above",
  },
  {
    cell: "primary alone, less than 2 A",
    method: "primary-only",
    side: "primary",
    from: 0,
    percent: 300,
    rounding: "not-above",
  },
  {
    cell: "primary beside secondary",
    method: "primary-and-secondary",
    side: "primary",
    from: 0,
    percent: 250,
    rounding: "not-above",
  },
  {
    cell: "secondary, 9 A or more",
    method: "primary-and-secondary",
    side: "secondary",
    from: 9,
    percent: 125,
    rounding: "up",
  },
  {
    cell: "secondary, less than 9 A",
    method: "primary-and-secondary",
    side: "secondary",
    from: 0,
    percent: 167,
    rounding: "not-above",
  },
];

export const transformerProtection: ByEdition<PlainTable<TransformerProtectionRow>> = {
  "2008": {
    number: "Table 450.3(B)",
    rows: rowsFrom2008,
    evidence: "carried",
    cells: {
      "primary alone, 9 A or more rounding": "memory",
      "primary alone, less than 9 A rounding": "memory",
      "primary alone, less than 2 A rounding": "memory",
      "primary beside secondary rounding": "memory",
      "secondary, 9 A or more rounding": "memory",
      "secondary, less than 9 A rounding": "memory",
    },
  },
  "2011": {
    number: "Table 450.3(B)",
    rows: rowsFrom2008,
    evidence: "single",
    cells: {
      "primary alone, 9 A or more rounding": "memory",
      "primary alone, less than 9 A rounding": "memory",
      "primary alone, less than 2 A rounding": "memory",
      "primary beside secondary rounding": "memory",
      "secondary, 9 A or more rounding": "memory",
      "secondary, less than 9 A rounding": "memory",
    },
  },
  "2014": {
    number: "Table 450.3(B)",
    rows: rowsFrom2008,
    evidence: "carried",
    cells: {
      "primary alone, 9 A or more rounding": "memory",
      "primary alone, less than 9 A rounding": "memory",
      "primary alone, less than 2 A rounding": "memory",
      "primary beside secondary rounding": "memory",
      "secondary, 9 A or more rounding": "memory",
      "secondary, less than 9 A rounding": "memory",
    },
  },
  "2017": {
    number: "Table 450.3(B)",
    rows: rowsFrom2008,
    evidence: "carried",
    cells: {
      "primary alone, 9 A or more rounding": "memory",
      "primary alone, less than 9 A rounding": "memory",
      "primary alone, less than 2 A rounding": "memory",
      "primary beside secondary rounding": "memory",
      "secondary, 9 A or more rounding": "memory",
      "secondary, less than 9 A rounding": "memory",
    },
  },
  "2020": {
    number: "Table 450.3(B)",
    rows: rowsFrom2008,
    evidence: "carried",
    cells: {
      "primary alone, 9 A or more rounding": "memory",
      "primary alone, less than 9 A rounding": "memory",
      "primary alone, less than 2 A rounding": "memory",
      "primary beside secondary rounding": "memory",
      "secondary, 9 A or more rounding": "memory",
      "secondary, less than 9 A rounding": "memory",
    },
  },
  "2023": {
    number: "Table 450.3(B)",
    rows: rowsFrom2008,
    evidence: "carried",
    cells: {
      "primary alone, less than 9 A rounding": "memory",
      "primary alone, less than 2 A rounding": "memory",
      "secondary, less than 9 A rounding": "memory",
    },
  },
  "2026": {
    number: "Table 450.3(B)",
    rows: rowsFrom2008,
    evidence: "carried",
    cells: {
      "primary alone, 9 A or more rounding": "memory",
      "primary alone, less than 9 A rounding": "memory",
      "primary alone, less than 2 A rounding": "memory",
      "primary beside secondary rounding": "memory",
      "secondary, 9 A or more rounding": "memory",
      "secondary, less than 9 A rounding": "memory",
    },
  },
};
