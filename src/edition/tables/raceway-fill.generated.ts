// Generated from tables/raceway-fill.json by "npm run generate"; do not edit.
import type { PlainTable } from "../plain-table.js";
import type { ByEdition } from "../supply-area-table.js";

/** Percent of the area of conduit and tubing that conductors may fill: one row. */
export interface RacewayFillRow {
  /** Conductors in the raceway, the last row for more than two (conductors). */
  readonly conductors: null | number;
  /** Percent of the area, in a run (percent). */
  readonly percent: number;
  /** Percent of the area, in a nipple of at most 24 in (note 4) (percent). */
  readonly nipple: number;
  /** Part of a conductor from which a count of conductors of one area is rounded up (note 7) (conductors). */
  readonly roundsUpFrom: null | number;
}

const rowsFrom2008: readonly RacewayFillRow[] = [
  { conductors: 1, percent: 53, nipple: 60, roundsUpFrom: null },
  { conductors: 2, percent: 31, nipple: 60, roundsUpFrom: 0.8 },
  { conductors: null, percent: 40, nipple: 60, roundsUpFrom: 0.8 },
];
const rowsFrom2017: readonly RacewayFillRow[] = [
  { conductors: 1, percent: 53, nipple: 60, roundsUpFrom: 0.8 },
  { conductors: 2, percent: 31, nipple: 60, roundsUpFrom: 0.8 },
  { conductors: null, percent: 40, nipple: 60, roundsUpFrom: 0.8 },
];

export const racewayFill: ByEdition<PlainTable<RacewayFillRow>> = {
  "2008": {
    number: "Chapter 9 Table 1",
    rows: rowsFrom2008,
    evidence: "carried",
    cells: { "1 roundsUpFrom": "memory" },
  },
  "2011": {
    number: "Chapter 9 Table 1",
    rows: rowsFrom2008,
    evidence: "carried",
    cells: {
      "1 conductors": "confirmed",
      "1 percent": "confirmed",
      "1 roundsUpFrom": "carried",
      "2 conductors": "confirmed",
      "2 percent": "confirmed",
      "last percent": "confirmed",
    },
  },
  "2014": {
    number: "Chapter 9 Table 1",
    rows: rowsFrom2008,
    evidence: "bracketed",
    cells: {
      "1 nipple": "carried",
      "1 roundsUpFrom": "memory",
      "2 nipple": "carried",
      "2 roundsUpFrom": "carried",
      "last nipple": "carried",
      "last roundsUpFrom": "carried",
    },
  },
  "2017": { number: "Chapter 9 Table 1", rows: rowsFrom2017, evidence: "single", cells: {} },
  "2020": { number: "Chapter 9 Table 1", rows: rowsFrom2017, evidence: "carried", cells: {} },
  "2023": { number: "Chapter 9 Table 1", rows: rowsFrom2017, evidence: "carried", cells: {} },
  "2026": { number: "Chapter 9 Table 1", rows: rowsFrom2017, evidence: "carried", cells: {} },
};
