import type { Installation } from "../installation/document.js";
import type { ScheduledConductor } from "../installation/schedule.js";
import { writeSupply } from "../supply/index.js";
import { formatArea } from "../units/area.js";

type DrawnSupply = NonNullable<Installation["services"]>[number]["runs"][number]["supply"];

/** Quantity, size and material of a conductor, or that none is required. */
export function writeSize({ quantity, open, result: { outcome, material } }: ScheduledConductor): string {
  const isOpen = open?.outcomes.some((one) => one.quantity === 0) === true ? ", or none: not decided" : "";
  switch (outcome.kind) {
    case "conductor":
      return `${quantity} x ${outcome.size} ${material}${isOpen}`;
    case "area-only":
      return `${quantity} x ${material} of at least ${formatArea(outcome.requiredArea)}${isOpen}`;
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
