// Generated from tables/rooftop-adder.json by "npm run generate"; do not edit.
import type { PlainTable } from "../plain-table.js";
import type { ByEdition } from "../supply-area-table.js";

/** Temperature added for direct sunlight on or above a roof: one row. */
export interface RooftopAdderRow {
  /** Distance from the roof to the underside of the raceway or cable (inches). */
  readonly height: number;
  /** Whether the height itself is still within (through) or already beyond (below). */
  readonly reaches: string;
  /** Added to the ambient temperature (degrees Celsius). */
  readonly addCelsius: number;
  /** Added to the ambient temperature; printed, not converted (degrees Fahrenheit). */
  readonly addFahrenheit: number;
  /** Insulation to which nothing is added; empty where there is none. */
  readonly except: null | string;
}

const rowsFrom2008: readonly RooftopAdderRow[] = [
  { height: 0.5, reaches: "through", addCelsius: 33, addFahrenheit: 60, except: null },
  { height: 3.5, reaches: "through", addCelsius: 22, addFahrenheit: 40, except: null },
  { height: 12, reaches: "through", addCelsius: 17, addFahrenheit: 30, except: null },
  { height: 36, reaches: "through", addCelsius: 14, addFahrenheit: 25, except: null },
];
const rowsFrom2014: readonly RooftopAdderRow[] = [
  { height: 0.5, reaches: "through", addCelsius: 33, addFahrenheit: 60, except: "XHHW-2" },
  { height: 3.5, reaches: "through", addCelsius: 22, addFahrenheit: 40, except: "XHHW-2" },
  { height: 12, reaches: "through", addCelsius: 17, addFahrenheit: 30, except: "XHHW-2" },
  { height: 36, reaches: "through", addCelsius: 14, addFahrenheit: 25, except: "XHHW-2" },
];
const rowsFrom2017: readonly RooftopAdderRow[] = [
  { height: 0.875, reaches: "below", addCelsius: 33, addFahrenheit: 60, except: "XHHW-2" },
];
const rowsFrom2023: readonly RooftopAdderRow[] = [
  { height: 0.75, reaches: "below", addCelsius: 33, addFahrenheit: 60, except: "XHHW-2" },
];

export const rooftopAdder: ByEdition<PlainTable<RooftopAdderRow>> = {
  "2008": {
    number: "Table 310.15(B)(2)(c)",
    rows: rowsFrom2008,
    evidence: "carried",
    cells: {
      "0.5 addFahrenheit": "memory",
      "0.5 except": "memory",
      "3.5 addFahrenheit": "memory",
      "3.5 except": "memory",
      "12 except": "memory",
      "36 addFahrenheit": "memory",
      "36 except": "memory",
    },
  },
  "2011": {
    number: "Table 310.15(B)(3)(c)",
    rows: rowsFrom2008,
    evidence: "single",
    cells: {
      "0.5 addFahrenheit": "memory",
      "0.5 except": "memory",
      "3.5 addFahrenheit": "memory",
      "3.5 except": "memory",
      "12 addFahrenheit": "memory",
      "12 except": "memory",
      "36 addFahrenheit": "memory",
      "36 except": "memory",
    },
  },
  "2014": {
    number: "Table 310.15(B)(3)(c)",
    rows: rowsFrom2014,
    evidence: "carried",
    cells: {
      "0.5 addFahrenheit": "memory",
      "3.5 addFahrenheit": "memory",
      "12 addFahrenheit": "memory",
      "36 addFahrenheit": "memory",
    },
  },
  "2017": { number: "310.15(B)(3)(c)", rows: rowsFrom2017, evidence: "carried", cells: {} },
  "2020": {
    number: "310.15(B)(2)",
    rows: rowsFrom2017,
    evidence: "carried",
    cells: { "0.875 except": "memory" },
  },
  "2023": {
    number: "310.15(B)(2)",
    rows: rowsFrom2023,
    evidence: "carried",
    cells: { "0.75 except": "memory" },
  },
  "2026": { number: "310.15(B)(2)", rows: rowsFrom2023, evidence: "memory", cells: {} },
};
