import type { TableFile } from "../../tables/tools/generator/model.js";

const level = { level: "single", sources: [] } as const;

/** Invented for the tests: what no edition prints. */
export const inventedTable: TableFile = {
  id: "invented-turns",
  title: "Turns by size",
  columns: [
    { id: "size", unit: "size", says: "conductor", order: "rises" },
    { id: "turns", unit: "turns", says: "how often it is turned", order: "falls" },
    { id: "note", unit: "text", says: "a word" },
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
        ["6 AWG", 3, null],
        ["4 AWG", 2, "tight"],
      ],
    },
  ],
  evidence: { "2011": level, "2014": level, "2017": level, "2020": level, "2023": level, "2026": level },
  cells: [{ edition: "2011", row: "6 AWG", column: "turns", level: "memory" }],
};
