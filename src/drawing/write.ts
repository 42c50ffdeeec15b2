import type { Installation } from "../installation/document.js";
import type { ScheduledConductor } from "../installation/schedule.js";
import type { SizingResult } from "../rules/result.js";
import { writeSupply } from "../supply/index.js";
import { writtenArea } from "../units/area.js";
import type { Marked } from "./group.js";

type DrawnSupply = NonNullable<Installation["services"]>[number]["runs"][number]["supply"];
type Run = NonNullable<Installation["services"]>[number]["runs"][number];

/** Quantity, size and material of a conductor, or that none is required. */
export function writeSize({ quantity, open, result: { outcome, material } }: ScheduledConductor): string {
  const isOpen = open?.outcomes.some((one) => one.quantity === 0) === true ? ", or none: not decided" : "";
  switch (outcome.kind) {
    case "conductor":
      return `${quantity} x ${outcome.size} ${material}${isOpen}`;
    case "area-only":
      return `${quantity} x ${material} of at least ${writtenArea(outcome.requiredArea)}${isOpen}`;
    case "not-required":
      return "not required";
  }
}

/** Ungrounded conductors as the drawing gives them. */
export function writeDrawnSupply(supply: DrawnSupply): string {
  if (supply.sets !== undefined) return writeSupply(supply);
  if (supply.forLoad === undefined) return "to be chosen";
  const { amperes, material, sets } = supply.forLoad;
  return `${sets} x ${material} for ${amperes} A`;
}

/** What a run is and what it runs in. */
export function writeRun({ id, supply, raceways, in: shared, lengthFeet }: Run): string {
  const within =
    shared !== undefined
      ? `, in ${shared}`
      : raceways === undefined || raceways.kind === "nonmetallic"
        ? ""
        : `, ${racewayWords(raceways.count, raceways.kind)}`;
  return `${id}: ${shortMaterials(writeDrawnSupply(supply))}${within}${writeLength(lengthFeet)}`;
}

/** A length behind what is that long; nothing where none is given. */
export function writeLength(feet: number | undefined): string {
  return feet === undefined ? "" : `, ${feet} ft`;
}

function racewayWords(count: number, kind: "nonflexible-metal" | "flexible-metal" | "unknown"): string {
  const raceways = `raceway${count === 1 ? "" : "s"}`;
  switch (kind) {
    case "nonflexible-metal":
      return `${count} metal ${raceways}`;
    case "flexible-metal":
      return `${count} flexible metal ${raceways}`;
    case "unknown":
      return `${count} ${raceways}, kind not told`;
  }
}

const materialNames: Readonly<Record<SizingResult["material"], string>> = {
  copper: "Cu",
  aluminum: "Al",
  "copper-clad aluminum": "Cu-clad Al",
};

/** Materials as the trade writes them in a drawing. */
export function shortMaterials(text: string): string {
  return text
    .replaceAll("copper-clad aluminum", "Cu-clad Al")
    .replaceAll("copper", "Cu")
    .replaceAll("aluminum", "Al");
}

/** What a conductor is called in a drawing; the key holds the abbreviations. */
export const roleLabels: Readonly<Record<ScheduledConductor["role"], string>> = {
  "main-bonding-jumper": "MBJ",
  "system-bonding-jumper": "SBJ",
  "supply-side-bonding-jumper": "SSBJ",
  "grounded-conductor": "grounded conductor",
  "equipment-grounding-conductor": "EGC",
  "equipment-bonding-jumper": "EBJ",
  "grounding-electrode-conductor": "GEC",
  "electrode-bonding-jumper": "electrode bonding jumper",
  "electrode-raceway-bonding-jumper": "raceway bonding jumper",
  "impedance-grounding-conductor": "impedance grounding conductor",
  "impedance-bonding-jumper": "impedance bonding jumper",
  "water-piping-bonding-jumper": "bonding jumper, water piping",
  "other-piping-bonding-jumper": "bonding jumper, piping",
  "structural-metal-bonding-jumper": "bonding jumper, structural metal",
  "intersystem-bonding-conductor": "intersystem bonding conductor",
};

/** A conductor as the trade writes it, with its number in the schedule: `4 AWG Cu MBJ (1)`. */
export function labelOf({ mark, conductor }: Marked): string {
  const { role, part, quantity, open, result } = conductor;
  const { outcome } = result;
  const name = part === "tap" ? "GEC tap" : roleLabels[role];
  const many = quantity > 1 ? `${quantity} x ` : "";
  const isOpen = open?.outcomes.some((one) => one.quantity === 0) === true ? ", or none: not decided" : "";
  switch (outcome.kind) {
    case "conductor":
      return `${many}${outcome.size} ${materialNames[result.material]} ${name} (${mark})${isOpen}`;
    case "area-only":
      return `${many}${materialNames[result.material]} ${name} of at least ${writtenArea(outcome.requiredArea)} (${mark})${isOpen}`;
    case "not-required":
      return `no ${name} required (${mark})`;
  }
}

/** What a conductor is, with its number, where its size is told elsewhere. */
export function nameOf({ mark, conductor: { role, part } }: Marked): string {
  return `${part === "tap" ? "GEC tap" : roleLabels[role]} (${mark})`;
}

/** Whether a conductor is there to be drawn. */
export function isThere({ conductor }: Marked): boolean {
  return conductor.result.outcome.kind !== "not-required";
}
