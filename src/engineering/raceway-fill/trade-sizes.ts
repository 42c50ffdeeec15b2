import type { Citation, EditionYear, Evidence } from "../../edition/index.js";
import { evidenceOfCell } from "../../edition/plain-table.js";
import {
  type RacewayDimensionsRow,
  racewayDimensions,
} from "../../edition/tables/raceway-dimensions.generated.js";
import { type RacewayFillRow, racewayFill } from "../../edition/tables/raceway-fill.generated.js";
import { asWhole } from "./areas.js";
import type { RacewayKind, TradeSize } from "./shape.generated.js";

/** Conductors of one area in a raceway. */
export interface AreaCount {
  readonly count: number;
  /** Whole ten-thousandths of a square inch, of one. */
  readonly area: number;
}

/** A raceway of one trade size, its figures as whole ten-thousandths of a square inch. */
export interface Bore {
  readonly tradeSize: TradeSize;
  /** Inches. */
  readonly diameter: number;
  readonly area: number;
  /** What one, two and more conductors may fill, and what any may fill of a nipple. */
  readonly one: number;
  readonly two: number;
  readonly more: number;
  readonly sixty: number;
  readonly citation: Citation;
}

/** Whether a raceway holds some conductors. */
export interface Held {
  readonly fits: boolean;
  /** Whether it does so only because the count is rounded up (note 7). */
  readonly byRounding: boolean;
  /** Whole ten-thousandths of a square inch that they may fill. */
  readonly permitted: number;
}

/** The raceways of a kind in an edition, smallest first. */
export function boresOf(edition: EditionYear, kind: RacewayKind): readonly Bore[] {
  const key = `${edition} ${kind}`;
  const known = bores.get(key) ?? readBores(edition, kind);
  bores.set(key, known);
  return known;
}

/** The figures are read once for each edition and kind, and kept: a loop over supplies reads them thousands of times. */
const bores = new Map<string, readonly Bore[]>();

function readBores(edition: EditionYear, kind: RacewayKind): readonly Bore[] {
  const table = racewayDimensions[edition];
  return table.rows
    .filter((row) => row.kind === kind)
    .map((row) => boreOf(table.number, row, evidenceOfCell(table, row.name, "more")));
}

function boreOf(section: string, row: RacewayDimensionsRow, evidence: Evidence): Bore {
  return {
    tradeSize: row.tradeSize as TradeSize,
    diameter: row.diameter,
    area: asWhole(row.area),
    one: asWhole(row.one),
    two: asWhole(row.two),
    more: asWhole(row.more),
    sixty: asWhole(row.sixty),
    citation: { section, evidence },
  };
}

/** The row of Table 1 for a number of conductors. */
export function fillRow(edition: EditionYear, conductors: number): RacewayFillRow {
  const { rows } = racewayFill[edition];
  return rows.find((row) => row.conductors === conductors) ?? (rows.at(-1) as RacewayFillRow);
}

/** Whether a raceway holds some conductors: their sum against the printed area, or their count rounded up where all have one area. */
export function holdIn(
  edition: EditionYear,
  bore: Bore,
  conductors: readonly AreaCount[],
  isNipple: boolean,
): Held {
  const count = conductors.reduce((sum, one) => sum + one.count, 0);
  const filled = filledBy(conductors);
  const permitted = permittedIn(bore, count, isNipple);
  const byRounding = filled > permitted && isRoundedUp(edition, conductors, count, permitted);
  return { fits: filled <= permitted || byRounding, byRounding, permitted };
}

/** Whole ten-thousandths of a square inch that conductors fill. */
export function filledBy(conductors: readonly AreaCount[]): number {
  return conductors.reduce((sum, { count, area }) => sum + count * area, 0);
}

/** The smallest raceway of a kind that holds some conductors; `null` if none does. */
export function smallestBore(
  edition: EditionYear,
  kind: RacewayKind,
  conductors: readonly AreaCount[],
  isNipple = false,
): Bore | null {
  return boresOf(edition, kind).find((bore) => holdIn(edition, bore, conductors, isNipple).fits) ?? null;
}

function permittedIn(bore: Bore, count: number, isNipple: boolean): number {
  if (isNipple) return bore.sixty;
  if (count === 1) return bore.one;
  return count === 2 ? bore.two : bore.more;
}

/** Note 7: of conductors of one area, the last may lack a part of the space that it takes. */
function isRoundedUp(
  edition: EditionYear,
  conductors: readonly AreaCount[],
  count: number,
  permitted: number,
): boolean {
  const { roundsUpFrom } = fillRow(edition, count);
  const area = conductors[0]?.area ?? 0;
  if (roundsUpFrom === null || conductors.some((one) => one.area !== area)) return false;
  // In tenths, so that all numbers are whole.
  return (permitted - (count - 1) * area) * 10 >= Math.round(roundsUpFrom * 10) * area;
}
