// Generated from tables/compact-conductor-dimensions.json by "npm run generate"; do not edit.
import type { ConductorSize } from "../../conductor/index.js";
import type { PlainTable } from "../plain-table.js";
import type { ByEdition } from "../supply-area-table.js";

/** Dimensions of insulated conductors with compact strands: one row. */
export interface CompactConductorDimensionsRow {
  /** Trade size. */
  readonly size: ConductorSize;
  /** Approximate area with insulation: THW and THHW (square inches). */
  readonly thw: number;
  /** Approximate area with insulation: THHN (square inches). */
  readonly thhn: null | number;
  /** Approximate area with insulation: XHHW (square inches). */
  readonly xhhw: number;
}

const rowsFrom2008: readonly CompactConductorDimensionsRow[] = [
  { size: "8 AWG", thw: 0.051, thhn: null, xhhw: 0.0394 },
  { size: "6 AWG", thw: 0.066, thhn: 0.0452, xhhw: 0.053 },
  { size: "4 AWG", thw: 0.0881, thhn: 0.073, xhhw: 0.073 },
  { size: "2 AWG", thw: 0.1194, thhn: 0.1017, xhhw: 0.1017 },
  { size: "1 AWG", thw: 0.1698, thhn: 0.1352, xhhw: 0.1352 },
  { size: "1/0 AWG", thw: 0.1963, thhn: 0.159, xhhw: 0.159 },
  { size: "2/0 AWG", thw: 0.2332, thhn: 0.1924, xhhw: 0.1885 },
  { size: "3/0 AWG", thw: 0.2733, thhn: 0.229, xhhw: 0.229 },
  { size: "4/0 AWG", thw: 0.3267, thhn: 0.278, xhhw: 0.2733 },
  { size: "250 kcmil", thw: 0.4128, thhn: 0.3525, xhhw: 0.3421 },
  { size: "300 kcmil", thw: 0.4717, thhn: 0.4071, xhhw: 0.4015 },
  { size: "350 kcmil", thw: 0.5281, thhn: 0.4656, xhhw: 0.4536 },
  { size: "400 kcmil", thw: 0.5876, thhn: 0.5216, xhhw: 0.5026 },
  { size: "500 kcmil", thw: 0.6939, thhn: 0.6151, xhhw: 0.6082 },
  { size: "600 kcmil", thw: 0.8659, thhn: 0.762, xhhw: 0.7542 },
  { size: "700 kcmil", thw: 0.9676, thhn: 0.8659, xhhw: 0.8659 },
  { size: "750 kcmil", thw: 1.0386, thhn: 0.9076, xhhw: 0.9331 },
  { size: "900 kcmil", thw: 1.1766, thhn: 1.1196, xhhw: 1.0733 },
  { size: "1000 kcmil", thw: 1.2968, thhn: 1.237, xhhw: 1.1882 },
];

export const compactConductorDimensions: ByEdition<PlainTable<CompactConductorDimensionsRow>> = {
  "2008": { number: "Chapter 9 Table 5A", rows: rowsFrom2008, evidence: "memory", cells: {} },
  "2011": {
    number: "Chapter 9 Table 5A",
    rows: rowsFrom2008,
    evidence: "memory",
    cells: { "250 kcmil size": "carried", "250 kcmil xhhw": "carried", "750 kcmil xhhw": "memory" },
  },
  "2014": {
    number: "Chapter 9 Table 5A",
    rows: rowsFrom2008,
    evidence: "memory",
    cells: { "350 kcmil size": "carried", "350 kcmil thhn": "carried" },
  },
  "2017": { number: "Chapter 9 Table 5A", rows: rowsFrom2008, evidence: "memory", cells: {} },
  "2020": { number: "Chapter 9 Table 5A", rows: rowsFrom2008, evidence: "memory", cells: {} },
  "2023": { number: "Chapter 9 Table 5A", rows: rowsFrom2008, evidence: "memory", cells: {} },
  "2026": { number: "Chapter 9 Table 5A", rows: rowsFrom2008, evidence: "memory", cells: {} },
};
