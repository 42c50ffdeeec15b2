import type { SupplyAreaTable } from "../../../../src/edition/supply-area-table.js";
import { areaOf, type ConductorColumn, type ConductorSize } from "../../../../src/index.js";
import { type Change, inMemory, movedEnds, policies, ratingRows, supplyTables } from "../in-memory.js";
import { type Asked, onDecided, type Wrong, withArea, withSize } from "../program.js";
import { amperesOf, conductorsOf, countSets, largestOf } from "../supplies.js";

const openEnd = { copper: "3/0 AWG", aluminum: "250 kcmil" } as const;

const tables = (change: (table: SupplyAreaTable) => Partial<SupplyAreaTable>): Wrong =>
  inMemory(({ year }) => supplyTables(year, change));

/** The smallest size that the next row names, where the table names it and does not say "over". */
const nextNamed: Readonly<Record<ConductorColumn, readonly (ConductorSize | null)[]>> = {
  copper: ["1 AWG", "2/0 AWG", null, null, null, null],
  aluminum: ["2/0 AWG", "4/0 AWG", null, null, null, null],
};

const betweenNames = (end: (through: number, named: number) => number): Wrong =>
  tables((table) =>
    movedEnds(table, (through, column, place) => {
      const named = nextNamed[column][place];
      return named == null ? through : end(through, areaOf(named));
    }),
  );

const shiftedRows = (by: number): Wrong =>
  tables(({ rows, last }) => ({
    rows: rows.map((row, place) => {
      const { copper, aluminum } = rows[place + by] ?? (by > 0 ? (last ?? openEnd) : row);
      return { ...row, copper, aluminum };
    }),
    ...(by < 0 && last !== null && { last: rows.at(-1) ?? last }),
  }));

/** A table without rows, so that 12.5 percent is taken of everything. */
const withoutRows = ({ year }: Asked): readonly Change[] => [
  ...supplyTables(year, () => ({ rows: [], threshold: { copper: 0, aluminum: 0 } })),
  ...policies(year, () => ({ oneEighth: true, lastRowFloor: false })),
];

/** 12.5 percent of something else, where 12.5 percent decides. */
const ofOneEighth = (area: (sum: number, asked: Asked) => number): Wrong =>
  onDecided((decided, asked) => {
    const step = decided.steps.find(({ kind }) => kind === "one-eighth");
    return decided.governs === "one-eighth" && step?.kind === "one-eighth"
      ? withArea(decided, area(step.area, asked))
      : decided;
  });

const oneLess = (table: SupplyAreaTable, isMoved: (place: number) => boolean) =>
  movedEnds(table, (through, _column, place) => (isMoved(place) ? through - 1 : through));

/** Programs that read another row, or take 12.5 percent elsewhere. */
export const ofRows: Readonly<Record<string, Wrong>> = {
  "row-before": shiftedRows(-1),
  "row-after": shiftedRows(1),
  "edge-goes-to-next-row": tables((table) =>
    oneLess(table, (place) => table.last !== null || place < table.rows.length - 1),
  ),
  "rows-by-smaller-name": betweenNames((_through, named) => named - 1),
  "rows-by-nearest-name": betweenNames((through, named) => Math.floor((through + named) / 2)),
  "one-eighth-for-every-parallel-run": inMemory((asked) =>
    asked.input.supply !== undefined && countSets(asked.input.supply) > 1 ? withoutRows(asked) : [],
  ),
  "one-eighth-always": inMemory(withoutRows),
  "one-eighth-from-the-edge-on": tables((table) =>
    oneLess(table, (place) => place === table.rows.length - 1),
  ),
  "one-eighth-above-900-aluminum": tables((table) =>
    movedEnds(table, (through, column) => (column === "aluminum" ? Math.min(through, 900_000) : through)),
  ),
  "last-row-for-ever": inMemory(({ year }) => [
    ...supplyTables(year, () => ({ last: openEnd })),
    ...policies(year, () => ({ oneEighth: false })),
  ]),
  "one-eighth-for-electrodes": inMemory(({ year }) =>
    policies(year, () => ({ oneEighth: true, ceiling: null })),
  ),
  "last-row-floor-forgotten": inMemory(({ year }) => policies(year, () => ({ lastRowFloor: false }))),
  "last-row-floor-kept": inMemory(({ year }) => [
    ...supplyTables(year, () => ({ last: openEnd })),
    ...policies(year, () => ({ lastRowFloor: true })),
  ]),
  "twelve-percent": ofOneEighth((sum) => (sum * 12) / 100),
  "one-eighth-of-one-conductor": ofOneEighth((sum, { input: { supply } }) =>
    supply === undefined ? sum / 8 : areaOf(largestOf(conductorsOf(supply)).size) / 8,
  ),
  "as-large-as-the-ungrounded": onDecided((decided, { input }) => {
    const supply = input.supply ?? input.circuits?.[0]?.conductors;
    if (supply === undefined || decided.outcome.kind !== "conductor") return decided;
    return withSize(largestOf(conductorsOf(supply)).size);
  }),
  "rating-for-conductors": onDecided((decided, { year, input: { supply, conductor } }) => {
    if (supply === undefined || conductor === undefined || decided.outcome.kind !== "conductor")
      return decided;
    const amperes = amperesOf(supply, year);
    const row = ratingRows(year).find(({ through }) => amperes <= through);
    return row === undefined
      ? decided
      : withSize(row[conductor.material === "copper" ? "copper" : "aluminum"]);
  }),
};
