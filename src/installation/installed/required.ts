import type { StandardSize } from "../../conductor/index.js";
import type { SizingResult } from "../../rules/result.js";
import type { ScheduledConductor } from "../schedule.js";
import type { RequiredConductor } from "./finding.js";

/** A conductor of the schedule as what is required of it. */
export function requiredOf(
  { from, to, quantity }: Pick<ScheduledConductor, "from" | "to" | "quantity">,
  { outcome, requiredArea, material }: SizingResult,
  count = quantity,
): RequiredConductor | null {
  if (quantity === 0) return null;
  const size: StandardSize | null = outcome.kind === "conductor" ? outcome.size : null;
  return { quantity: count, size, requiredArea, material, from, to };
}
