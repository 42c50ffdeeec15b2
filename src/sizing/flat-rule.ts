import { areaOf, type ConductorColumn } from "../conductor/index.js";
import type { Limit, RatingTable } from "../edition/index.js";
import { decidedBy } from "./assumption.js";
import { type AreaRule, lastRowArea } from "./required-area.js";

/** Rows as flat numbers for a loop: where each ends, and the circular mils that it requires. */
interface FlatRows {
  readonly ends: Float64Array;
  readonly required: Float64Array;
}

/** A rule of areas for one material of supply, as flat numbers; what it requires is circular mils from circular mils. */
export interface FlatRule extends FlatRows {
  /** Area above which the rows have ended. */
  readonly threshold: number;
  /** Whether 12.5 percent of the area governs above the last row; else the open last row does. */
  readonly oneEighth: boolean;
  readonly lastRow: number;
}

/** The floors and the cap of a policy, as flat numbers. */
export interface FlatLimits {
  /** Least area through the threshold, and above it. */
  readonly least: number;
  readonly leastAbove: number;
  readonly most: number;
  /** Whether nothing above the area of the supply is required. */
  readonly isCapped: boolean;
}

/** The rows and the 12.5 percent of a rule, entered with a material. */
export function flatRule({ table, policy, read }: AreaRule, entered: ConductorColumn): FlatRule {
  return {
    ends: Float64Array.from(table.rows, ({ through }) => through[entered]),
    required: Float64Array.from(table.rows, (row) => areaOf(row[read])),
    threshold: table.threshold[entered],
    oneEighth: policy.oneEighth,
    lastRow: lastRowArea(table, read),
  };
}

/** The limits of a rule, for a supply of a material. */
export function flatLimits({ table, policy, read }: AreaRule, supply: ConductorColumn): FlatLimits {
  const least = areaOfLimit(policy.floor, read) ?? 0;
  return {
    least,
    leastAbove: policy.lastRowFloor ? Math.max(least, lastRowArea(table, read)) : least,
    most: areaOfLimit(policy.ceiling, read) ?? Number.POSITIVE_INFINITY,
    isCapped: policy.cap !== "none" && supply === read,
  };
}

/** Circular mils that the row or the 12.5 percent rule requires; a division by 8 is exact. */
export function areaByFlatRule({ ends, required, oneEighth, lastRow }: FlatRule, area: number): number {
  for (let row = 0; row < ends.length; row += 1) {
    if (area <= (ends[row] as number)) return required[row] as number;
  }
  return oneEighth ? Math.ceil(area / 8) : lastRow;
}

/** Lays cap and floors over a required area: the floor wins over the cap. */
export function limitedFlatly(limits: FlatLimits, required: number, area: number, isAbove: boolean): number {
  const least = isAbove ? limits.leastAbove : limits.least;
  const most = limits.isCapped ? Math.min(area, limits.most) : limits.most;
  return Math.max(least, Math.min(most, required));
}

/** Whether the installed and whether assumed conductors decide. */
export interface FlatDecision {
  readonly installed: boolean;
  readonly assumed: boolean;
}

/** Which conductors decide for a supply of another material; it hangs only on whether the rows have ended, and whether it is a single set. */
export function flatDecisions(
  { table, policy, read }: AreaRule,
  column: ConductorColumn,
): (isAbove: boolean, isSingle: boolean) => FlatDecision {
  const decision = (area: number, sets: number): FlatDecision => {
    const by = decidedBy(policy.otherMaterial, table, { column, area, sets }, read);
    return { installed: by !== "assumed", assumed: by !== "installed" };
  };
  const through = table.threshold[column];
  const single = [decision(through, 1), decision(through + 1, 1)] as const;
  const several = [decision(through, 2), decision(through + 1, 2)] as const;
  return (isAbove, isSingle) => (isSingle ? single : several)[isAbove ? 1 : 0];
}

/** The rows of a table of ratings in one column. */
export function flatRatings(table: RatingTable, read: ConductorColumn): FlatRows {
  return {
    ends: Float64Array.from(table.rows, ({ through }) => through),
    required: Float64Array.from(table.rows, (row) => areaOf(row[read])),
  };
}

/** Circular mils for a rating that the table has a row for. */
export function areaByFlatRatings({ ends, required }: FlatRows, amperes: number): number {
  let row = 0;
  while (amperes > (ends[row] as number)) row += 1;
  return required[row] as number;
}

function areaOfLimit(limit: Limit | null, read: ConductorColumn): number | null {
  return limit === null ? null : areaOf(limit[read]);
}
