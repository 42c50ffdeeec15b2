// Generated from tables/dwelling-conductors.json by "npm run generate"; do not edit.
import type { ConductorSize } from "../../conductor/index.js";
import type { PlainTable } from "../plain-table.js";
import type { ByEdition } from "../supply-area-table.js";

/** Service and feeder conductors that carry the whole load of a dwelling: one row. */
export interface DwellingConductorsRow {
  /** Rating of the service or feeder (amperes). */
  readonly amperes: number;
  /** Copper conductor. */
  readonly copper: ConductorSize;
  /** Aluminum or copper-clad aluminum conductor. */
  readonly aluminum: ConductorSize;
}

const rowsFrom2008: readonly DwellingConductorsRow[] = [
  { amperes: 100, copper: "4 AWG", aluminum: "2 AWG" },
  { amperes: 110, copper: "3 AWG", aluminum: "1 AWG" },
  { amperes: 125, copper: "2 AWG", aluminum: "1/0 AWG" },
  { amperes: 150, copper: "1 AWG", aluminum: "2/0 AWG" },
  { amperes: 175, copper: "1/0 AWG", aluminum: "3/0 AWG" },
  { amperes: 200, copper: "2/0 AWG", aluminum: "4/0 AWG" },
  { amperes: 225, copper: "3/0 AWG", aluminum: "250 kcmil" },
  { amperes: 250, copper: "4/0 AWG", aluminum: "300 kcmil" },
  { amperes: 300, copper: "250 kcmil", aluminum: "350 kcmil" },
  { amperes: 350, copper: "350 kcmil", aluminum: "500 kcmil" },
  { amperes: 400, copper: "400 kcmil", aluminum: "600 kcmil" },
];

export const dwellingConductors: ByEdition<PlainTable<DwellingConductorsRow> | null> = {
  "2008": { number: "Table 310.15(B)(6)", rows: rowsFrom2008, evidence: "carried", cells: {} },
  "2011": { number: "Table 310.15(B)(7)", rows: rowsFrom2008, evidence: "single", cells: {} },
  "2014": null,
  "2017": null,
  "2020": { number: "Table 310.12", rows: rowsFrom2008, evidence: "carried", cells: {} },
  "2023": { number: "Table 310.12", rows: rowsFrom2008, evidence: "carried", cells: {} },
  "2026": { number: "Table 310.12(A)", rows: rowsFrom2008, evidence: "carried", cells: {} },
};
