// Generated from tables/electrode-conductor.json by "npm run generate"; do not edit.
import type { ByEdition, SupplyAreaRow, SupplyAreaTable } from "../supply-area-table.js";

const rowsFrom2008: readonly SupplyAreaRow[] = [
  { through: { copper: 66360, aluminum: 105600 }, copper: "8 AWG", aluminum: "6 AWG" },
  { through: { copper: 105600, aluminum: 167800 }, copper: "6 AWG", aluminum: "4 AWG" },
  { through: { copper: 167800, aluminum: 250000 }, copper: "4 AWG", aluminum: "2 AWG" },
  { through: { copper: 350000, aluminum: 500000 }, copper: "2 AWG", aluminum: "1/0 AWG" },
  { through: { copper: 600000, aluminum: 900000 }, copper: "1/0 AWG", aluminum: "3/0 AWG" },
  { through: { copper: 1100000, aluminum: 1750000 }, copper: "2/0 AWG", aluminum: "4/0 AWG" },
];
const thresholdFrom2008 = { copper: 1100000, aluminum: 1750000 };
const lastFrom2008: SupplyAreaTable["last"] = { copper: "3/0 AWG", aluminum: "250 kcmil" };

export const electrodeConductor: ByEdition<SupplyAreaTable | null> = {
  "2008": { number: "Table 250.66", rows: rowsFrom2008, threshold: thresholdFrom2008, last: lastFrom2008 },
  "2011": { number: "Table 250.66", rows: rowsFrom2008, threshold: thresholdFrom2008, last: lastFrom2008 },
  "2014": { number: "Table 250.66", rows: rowsFrom2008, threshold: thresholdFrom2008, last: lastFrom2008 },
  "2017": { number: "Table 250.66", rows: rowsFrom2008, threshold: thresholdFrom2008, last: lastFrom2008 },
  "2020": { number: "Table 250.66", rows: rowsFrom2008, threshold: thresholdFrom2008, last: lastFrom2008 },
  "2023": { number: "Table 250.66", rows: rowsFrom2008, threshold: thresholdFrom2008, last: lastFrom2008 },
  "2026": { number: "Table 250.66", rows: rowsFrom2008, threshold: thresholdFrom2008, last: lastFrom2008 },
};
