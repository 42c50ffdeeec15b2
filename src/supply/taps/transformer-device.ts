import { ratingsIn } from "../../ampacity/index.js";
import type { Citation, EditionYear } from "../../edition/index.js";
import { evidenceOfCell } from "../../edition/plain-table.js";
import { transformerProtection } from "../../edition/tables/transformer-protection.generated.js";

/** The largest device that the table permits on one side of a transformer. */
export interface PermittedDevice {
  /** Percent of the side's rated current. */
  readonly percent: number;
  /** That percentage in amperes, not rounded. */
  readonly amperes: number;
  /** Whether the next higher standard rating may be used where the percentage meets none. */
  readonly rounding: "up" | "not-above";
  /** The largest standard rating that is permitted; `null` where none is small enough. */
  readonly rating: number | null;
  /** Cell of the table. */
  readonly citation: Citation;
}

/** The device that the table permits; `null` where it asks none on that side. */
export function permittedDevice(
  year: EditionYear,
  method: "primary-only" | "primary-and-secondary",
  side: "primary" | "secondary",
  current: number,
): PermittedDevice | null {
  const table = transformerProtection[year];
  const row = table.rows.find((one) => one.method === method && one.side === side && current >= one.from);
  if (row === undefined) return null;
  const amperes = (current * row.percent) / 100;
  const rounding = row.rounding === "up" ? "up" : "not-above";
  return {
    percent: row.percent,
    amperes,
    rounding,
    rating: ratingFor(year, amperes, rounding),
    citation: { section: table.number, evidence: evidenceOfCell(table, row.cell, "percent") },
  };
}

/** Separates the bodies of fuses and is the rating of hardly any device. */
const fuseBodies = 601;

/** The standard rating that a percentage leads to, those of fuses below the first of circuit breakers among them. */
function ratingFor(year: EditionYear, amperes: number, rounding: PermittedDevice["rounding"]): number | null {
  const ratings = ratingsIn(year, "fuse").filter((rating) => rating !== fuseBodies);
  const up = ratings.find((rating) => rating >= amperes);
  if (rounding === "up" && up !== undefined) return up;
  return ratings.filter((rating) => rating <= amperes).at(-1) ?? null;
}
