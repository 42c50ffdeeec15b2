import { type ConductorSize, conductorSizes } from "../../conductor/index.js";
import type { Citation, EditionYear } from "../../edition/index.js";
import { evidenceOfCell, type PlainTable } from "../../edition/plain-table.js";
import { compactConductorDimensions } from "../../edition/tables/compact-conductor-dimensions.generated.js";
import { directCurrentResistance } from "../../edition/tables/direct-current-resistance.generated.js";
import { insulatedConductorDimensions } from "../../edition/tables/insulated-conductor-dimensions.generated.js";
import { columnOfInsulation, compactColumnOf } from "./kinds.js";
import type { BareInRaceway, InsulatedInRaceway, MeasuredInRaceway } from "./shape.generated.js";

/** What lies in a raceway. */
export type InRaceway = InsulatedInRaceway | BareInRaceway | MeasuredInRaceway;

/** Area of one conductor. */
export interface FillArea {
  /** Whole ten-thousandths of a square inch, the last digit that the tables print. */
  readonly area: number;
  /** Table and evidence of the area; `null` where it was stated. */
  readonly citation: Citation | null;
}

/** Ten-thousandths in a square inch. */
export const tenThousandths = 10_000;

/** A printed figure of square inches as whole ten-thousandths. */
export function asWhole(squareInches: number): number {
  return Math.round(squareInches * tenThousandths);
}

/** Area of one conductor in a raceway; `null` where the table has none of its size. */
export function areaIn(edition: EditionYear, conductor: InRaceway): FillArea | null {
  if ("squareInches" in conductor) return { area: roundedUp(conductor.squareInches), citation: null };
  return "bare" in conductor ? bareArea(edition, conductor) : insulatedArea(edition, conductor);
}

/** The sizes for which the table of a conductor has an area, smallest first. */
export function sizesLike(
  edition: EditionYear,
  conductor: InsulatedInRaceway | BareInRaceway,
): readonly ConductorSize[] {
  return conductorSizes.filter((size) => areaIn(edition, { ...conductor, size }) !== null);
}

function bareArea(edition: EditionYear, { size, bare }: BareInRaceway): FillArea | null {
  const table = directCurrentResistance[edition];
  const row = table.rows.find((one) => one.size === size && one.stranding === bare);
  return row === undefined ? null : cited(table, row.conductor, "area", row.area);
}

function insulatedArea(edition: EditionYear, conductor: InsulatedInRaceway): FillArea | null {
  const { size, insulation, compact, withoutCovering } = conductor;
  if (compact === true) {
    const table = compactConductorDimensions[edition];
    const row = table.rows.find((one) => one.size === size);
    const own = compactColumnOf[insulation];
    return own === undefined ? null : cited(table, size, own, row?.[own] ?? null);
  }
  const column = columnOfInsulation[insulation];
  const table = insulatedConductorDimensions[edition];
  const row = table.rows.find((one) => one.size === size);
  const own = column === "rhw" && withoutCovering === true ? "rhwUncovered" : column;
  return cited(table, size, own, row?.[own] ?? null);
}

function cited(
  table: Pick<PlainTable<unknown>, "number" | "evidence" | "cells">,
  row: string,
  column: string,
  squareInches: number | null,
): FillArea | null {
  if (squareInches === null) return null;
  const evidence = evidenceOfCell(table, row, column);
  return { area: asWhole(squareInches), citation: { section: table.number, evidence } };
}

/** The least whole number that is not below the area; what a number in binary loses does not count as a part. */
function roundedUp(squareInches: number): number {
  const whole = asWhole(squareInches);
  return whole / tenThousandths >= squareInches ? whole : whole + 1;
}
