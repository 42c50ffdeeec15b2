import type { TableFile } from "../../tables/tools/generator/model.js";
import type { WitnessFile } from "../../tables/tools/generator/witnesses.js";

/** An invented table; no edition prints it. */
export const inventedTable: TableFile = {
  id: "invented",
  title: "Invented",
  columns: [
    { id: "supplyCopperThrough", unit: "size", says: "up to" },
    { id: "supplyAluminumThrough", unit: "size", says: "up to" },
    { id: "copper", unit: "size", says: "least" },
    { id: "aluminum", unit: "size", says: "least" },
  ],
  number: {
    "2008": null,
    "2011": "Table 1",
    "2014": "Table 1",
    "2017": "Table 1",
    "2020": "Table 1",
    "2023": "Table 1",
    "2026": "Table 1",
  },
  blocks: [
    {
      from: "2011",
      rows: [
        ["2 AWG", "1/0 AWG", "8 AWG", "6 AWG"],
        ["250 kcmil", "350 kcmil", "4 AWG", null],
        [null, null, "3/0 AWG", "250 kcmil"],
      ],
    },
  ],
  evidence: {
    "2011": { level: "single", sources: ["derived"] },
    "2014": { level: "carried", sources: ["derived"] },
    "2017": { level: "single", sources: ["unknown-copy"] },
    "2020": { level: "bracketed", sources: ["derived", "unknown-copy"] },
    "2023": { level: "confirmed", sources: ["derived"] },
    "2026": { level: "carried", sources: ["derived"] },
  },
  cells: [{ edition: "2014", row: "2 AWG", column: "copper", level: "memory", note: "kept" }],
};

/** What a witness would have read if the invented table were a real one. */
export const everyCell: WitnessFile["cells"] = {
  "2 AWG|supplyAluminumThrough": "1/0",
  "2 AWG|copper": 8,
  "2 AWG|aluminum": "6 AWG",
  "250 kcmil|supplyAluminumThrough": 350,
  "250 kcmil|copper": "4",
  "250 kcmil|aluminum": "-",
  "last|copper": "3/0",
  "last|aluminum": "250 kcmil",
};

/** An invented answer to a sheet. */
export function inventedWitness(change: Partial<WitnessFile>): WitnessFile {
  return {
    format: 1,
    table: "invented",
    edition: "2014",
    printing: "invented for a test",
    channel: "print",
    witness: "invented",
    date: "2020-01-01",
    hash: "0".repeat(64),
    cells: everyCell,
    ...change,
  };
}
