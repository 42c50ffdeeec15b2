import { areaOf, type ConductorColumn } from "../conductor/index.js";
import type { Policy, SupplyAreaRow, SupplyAreaTable } from "../edition/index.js";
import { eighthUp } from "../units/exact.js";

/** What a table and a policy say about areas, before any conductor is named. */
export interface AreaRule {
  readonly table: SupplyAreaTable;
  readonly policy: Policy;
  /** Column in which the conductor to be sized is read. */
  readonly read: ConductorColumn;
}

/** A supply as installed, as far as the rules of area ask. */
export interface InstalledArea {
  readonly column: ConductorColumn | "mixed";
  /** Circular mils of the sum that the policy names. */
  readonly area: number;
  /** Circular mils of the largest single conductor. */
  readonly largest: number;
  readonly sets: number;
}

/** The row in which an area falls; rows end at the area of their largest named size. `undefined` above the last bounded row. */
export function rowFor(
  table: SupplyAreaTable,
  entered: ConductorColumn,
  area: number,
): SupplyAreaRow | undefined {
  return table.rows.find((row) => area <= row.through[entered]);
}

/** Whether an area lies above the last bounded row of its column. */
export function isAboveThreshold(table: SupplyAreaTable, entered: ConductorColumn, area: number): boolean {
  return area > table.threshold[entered];
}

/** Circular mils that the row or the 12.5 percent rule requires. */
export function areaByRule(
  { table, policy, read }: AreaRule,
  entered: ConductorColumn,
  area: number,
): number {
  const row = rowFor(table, entered, area);
  if (row !== undefined) return areaOf(row[read]);
  return policy.oneEighth ? eighthUp(area) : lastRowArea(table, read);
}

/** Whether the open last row, where the table names sizes in it, stays as a floor beside the 12.5 percent rule. */
export function hasLastRowFloor(
  { table, policy }: AreaRule,
  entered: ConductorColumn,
  area: number,
): boolean {
  return policy.lastRowFloor && isAboveThreshold(table, entered, area);
}

/** Circular mils of the open last row; 0 where it only sends to the notes. */
export function lastRowArea(table: SupplyAreaTable, read: ConductorColumn): number {
  return table.last === null ? 0 : areaOf(table.last[read]);
}

/** Circular mils of the cap at the ungrounded conductors; infinite where the policy or the materials set none. */
export function capArea({ policy, read }: AreaRule, { column, area, largest }: InstalledArea): number {
  if (policy.cap === "none" || column !== read) return Number.POSITIVE_INFINITY;
  return policy.cap === "set" ? area : largest;
}
