// Generated from tables/tray-as-conductor.json by "npm run generate"; do not edit.
import type { ByEdition } from "../supply-area-table.js";
import type { TrayRow, TrayTable } from "../tray-table.js";

const rowsFrom2008: readonly TrayRow[] = [
  {
    through: 60,
    steel: { squareInches: 0.2, squareMillimeters: 129 },
    aluminum: { squareInches: 0.2, squareMillimeters: 129 },
  },
  {
    through: 100,
    steel: { squareInches: 0.4, squareMillimeters: 258 },
    aluminum: { squareInches: 0.2, squareMillimeters: 129 },
  },
  {
    through: 200,
    steel: { squareInches: 0.7, squareMillimeters: 451.5 },
    aluminum: { squareInches: 0.2, squareMillimeters: 129 },
  },
  {
    through: 400,
    steel: { squareInches: 1, squareMillimeters: 645 },
    aluminum: { squareInches: 0.4, squareMillimeters: 258 },
  },
  {
    through: 600,
    steel: { squareInches: 1.5, squareMillimeters: 967.5 },
    aluminum: { squareInches: 0.4, squareMillimeters: 258 },
  },
  { through: 1000, steel: null, aluminum: { squareInches: 0.6, squareMillimeters: 387 } },
  { through: 1200, steel: null, aluminum: { squareInches: 1, squareMillimeters: 645 } },
  { through: 1600, steel: null, aluminum: { squareInches: 1.5, squareMillimeters: 967.5 } },
  { through: 2000, steel: null, aluminum: { squareInches: 2, squareMillimeters: 1290 } },
];

export const trayAsConductor: ByEdition<TrayTable> = {
  "2008": { number: "Table 392.7(B)", rows: rowsFrom2008, evidence: "bracketed" },
  "2011": { number: "Table 392.60(A)", rows: rowsFrom2008, evidence: "single" },
  "2014": { number: "Table 392.60(A)", rows: rowsFrom2008, evidence: "bracketed" },
  "2017": { number: "Table 392.60(A)", rows: rowsFrom2008, evidence: "single" },
  "2020": { number: "Table 392.60(B)", rows: rowsFrom2008, evidence: "bracketed" },
  "2023": { number: "Table 392.60(B)", rows: rowsFrom2008, evidence: "single" },
  "2026": { number: "Table 392.60(B)", rows: rowsFrom2008, evidence: "carried" },
};
