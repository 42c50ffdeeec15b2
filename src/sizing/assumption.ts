import type { ConductorColumn } from "../conductor/index.js";
import type { OtherMaterialRule, SupplyAreaTable } from "../edition/index.js";
import { type InstalledArea, isAboveThreshold } from "./required-area.js";

/** Whether the installed conductors, assumed ones of the sized conductor's own material, or both decide. */
export type DecidedBy = "installed" | "assumed" | "larger-of-both";

/** Which conductors decide. */
export function decidedBy(
  rule: OtherMaterialRule,
  table: SupplyAreaTable,
  { column, area, sets }: Omit<InstalledArea, "largest">,
  read: ConductorColumn,
): DecidedBy {
  if (column === read) return "installed";
  if (column === "mixed") return rule === "larger-of-both" ? rule : "assumed";
  if (rule === "never") return "installed";
  if (rule === "always") return "assumed";
  if (rule === "parallel-above-threshold" && sets === 1) return "installed";
  const isAbove = isAboveThreshold(table, column, area);
  if (rule === "larger-through-threshold") return isAbove ? "assumed" : "larger-of-both";
  if (!isAbove) return "installed";
  return rule === "larger-of-both" ? rule : "assumed";
}
