import type { Installation } from "../installation/document.js";
import type { ScheduledConductor } from "../installation/schedule.js";
import { writeSupply } from "../supply/index.js";
import { formatArea } from "../units/area.js";

type DrawnSupply = NonNullable<Installation["services"]>[number]["runs"][number]["supply"];

/** Quantity, size and material of a conductor, or that none is required. */
export function writeSize({ quantity, result: { outcome, material } }: ScheduledConductor): string {
  switch (outcome.kind) {
    case "conductor":
      return `${quantity} x ${outcome.size} ${material}`;
    case "area-only":
      return `${quantity} x ${material} of at least ${formatArea(outcome.requiredArea)}`;
    case "not-required":
      return "not required";
  }
}

/** Ungrounded conductors as the drawing gives them. */
export function writeDrawnSupply(supply: DrawnSupply): string {
  if (supply.sets !== undefined) return writeSupply(supply);
  const { amperes, material, sets } = supply.forLoad;
  return `${sets} x ${material} for ${amperes} A`;
}
