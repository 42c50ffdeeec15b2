// Generated from tables/bonding-conductor.json by "npm run generate"; do not edit.
import type { ByEdition, SupplyAreaRow, SupplyAreaTable } from "../supply-area-table.js";

const rowsFrom2014: readonly SupplyAreaRow[] = [
  { through: { copper: 66360, aluminum: 105600 }, copper: "8 AWG", aluminum: "6 AWG" },
  { through: { copper: 105600, aluminum: 167800 }, copper: "6 AWG", aluminum: "4 AWG" },
  { through: { copper: 167800, aluminum: 250000 }, copper: "4 AWG", aluminum: "2 AWG" },
  { through: { copper: 350000, aluminum: 500000 }, copper: "2 AWG", aluminum: "1/0 AWG" },
  { through: { copper: 600000, aluminum: 900000 }, copper: "1/0 AWG", aluminum: "3/0 AWG" },
  { through: { copper: 1100000, aluminum: 1750000 }, copper: "2/0 AWG", aluminum: "4/0 AWG" },
];
const thresholdFrom2014 = { copper: 1100000, aluminum: 1750000 };
const lastFrom2014: SupplyAreaTable["last"] = null;

export const bondingConductor: ByEdition<SupplyAreaTable | null> = {
  "2008": null,
  "2011": null,
  "2014": {
    number: "Table 250.102(C)(1)",
    rows: rowsFrom2014,
    threshold: thresholdFrom2014,
    last: lastFrom2014,
  },
  "2017": {
    number: "Table 250.102(C)(1)",
    rows: rowsFrom2014,
    threshold: thresholdFrom2014,
    last: lastFrom2014,
  },
  "2020": {
    number: "Table 250.102(C)(1)",
    rows: rowsFrom2014,
    threshold: thresholdFrom2014,
    last: lastFrom2014,
  },
  "2023": {
    number: "Table 250.102(C)(1)",
    rows: rowsFrom2014,
    threshold: thresholdFrom2014,
    last: lastFrom2014,
  },
  "2026": {
    number: "Table 250.102(C)(1)",
    rows: rowsFrom2014,
    threshold: thresholdFrom2014,
    last: lastFrom2014,
  },
};
