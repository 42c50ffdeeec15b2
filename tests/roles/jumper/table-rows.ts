import type { ConductorColumn, ConductorSize, EditionYear, StandardSize } from "bondmil";

/**
 * The bounded rows of the table of supply areas (Table 250.66 through 2011, Table 250.102(C)(1) from 2014), written out
 * by hand from the table and apart from the library's own copy.
 */
export interface TableRow {
  /** Conductors that add up exactly to the end of the row, by the supply's material. */
  readonly end: Readonly<Record<ConductorColumn, readonly ConductorSize[]>>;
  /** Single standard conductors from 6 AWG that fall in the row. */
  readonly singles: Readonly<Record<ConductorColumn, readonly ConductorSize[]>>;
  /** What the row requires, by the jumper's material, and its area. */
  readonly answer: Readonly<Record<ConductorColumn, readonly [StandardSize, number]>>;
}

export const tableRows: readonly TableRow[] = [
  {
    end: { copper: ["2 AWG"], aluminum: ["1/0 AWG"] },
    singles: {
      copper: ["6 AWG", "4 AWG", "3 AWG", "2 AWG"],
      aluminum: ["6 AWG", "4 AWG", "3 AWG", "2 AWG", "1 AWG", "1/0 AWG"],
    },
    answer: { copper: ["8 AWG", 16510], aluminum: ["6 AWG", 26240] },
  },
  {
    end: { copper: ["1/0 AWG"], aluminum: ["3/0 AWG"] },
    singles: { copper: ["1 AWG", "1/0 AWG"], aluminum: ["2/0 AWG", "3/0 AWG"] },
    answer: { copper: ["6 AWG", 26240], aluminum: ["4 AWG", 41740] },
  },
  {
    end: { copper: ["3/0 AWG"], aluminum: ["250 kcmil"] },
    singles: { copper: ["2/0 AWG", "3/0 AWG"], aluminum: ["4/0 AWG", "250 kcmil"] },
    answer: { copper: ["4 AWG", 41740], aluminum: ["2 AWG", 66360] },
  },
  {
    end: { copper: ["350 kcmil"], aluminum: ["500 kcmil"] },
    singles: {
      copper: ["4/0 AWG", "250 kcmil", "300 kcmil", "350 kcmil"],
      aluminum: ["300 kcmil", "350 kcmil", "400 kcmil", "500 kcmil"],
    },
    answer: { copper: ["2 AWG", 66360], aluminum: ["1/0 AWG", 105600] },
  },
  {
    end: { copper: ["600 kcmil"], aluminum: ["900 kcmil"] },
    singles: {
      copper: ["400 kcmil", "500 kcmil", "600 kcmil"],
      aluminum: ["600 kcmil", "700 kcmil", "750 kcmil", "800 kcmil", "900 kcmil"],
    },
    answer: { copper: ["1/0 AWG", 105600], aluminum: ["3/0 AWG", 167800] },
  },
  {
    end: { copper: ["600 kcmil", "500 kcmil"], aluminum: ["1000 kcmil", "750 kcmil"] },
    singles: {
      copper: ["700 kcmil", "750 kcmil", "800 kcmil", "900 kcmil", "1000 kcmil"],
      aluminum: ["1000 kcmil", "1250 kcmil", "1500 kcmil", "1750 kcmil"],
    },
    answer: { copper: ["2/0 AWG", 133100], aluminum: ["4/0 AWG", 211600] },
  },
];

/** The smallest tabulated conductor, 1,620 circular mils: the smallest step beyond the end of a row. */
export const smallestConductor = "18 AWG";

/** Where the rows stand in each edition. */
export const rowTable: Readonly<Record<EditionYear, string>> = {
  "2008": "Table 250.66",
  "2011": "Table 250.66",
  "2014": "Table 250.102(C)(1)",
  "2017": "Table 250.102(C)(1)",
  "2020": "Table 250.102(C)(1)",
  "2023": "Table 250.102(C)(1)",
  "2026": "Table 250.102(C)(1)",
};

export const columns: readonly ConductorColumn[] = ["copper", "aluminum"];
