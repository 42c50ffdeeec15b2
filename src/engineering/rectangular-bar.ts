import { readAll, readBetween } from "../input/reader.js";
import { fromSquareInches, toSquareInches } from "../units/area.js";

/** A rectangular bar of copper or aluminum that has at least a required area. */
export interface RectangularBar {
  /** Inches. */
  readonly thickness: number;
  /** Inches, a whole number of eighths. */
  readonly width: number;
  /** Circular mils of the bar, rounded down. */
  readonly area: number;
}

const thicknesses = [0.125, 0.1875, 0.25, 0.375, 0.5] as const;
const widthStep = 0.125;

/** Circular mils; the conductors of any supply together are less. */
const mostArea = 1e12;

/**
 * Rectangular bars that meet a required area: for each usual thickness from 1/8 in. to 1/2 in. the narrowest width in eighths
 * of an inch, not narrower than thick. The thicknesses are common practice, not from the code; the area is what counts.
 *
 * @param requiredArea - circular mils
 * @returns one bar per thickness, thinnest first
 * @throws {@link InputError} for anything but a number from 1 to 1,000,000,000,000
 *
 * @example
 * ```ts
 * import { rectangularBarsFor } from "bondmil";
 * const quarterInch = rectangularBarsFor(375000).find((bar) => bar.thickness === 0.25);
 * quarterInch; // => { thickness: 0.25, width: 1.25, area: 397887 }
 * ```
 */
export function rectangularBarsFor(requiredArea: number): readonly RectangularBar[] {
  const area = readAll(requiredArea, (at) => readBetween(at, "circular mils", 1, mostArea));
  return thicknesses.map((thickness) => narrowest(thickness, area));
}

function narrowest(thickness: number, requiredArea: number): RectangularBar {
  // The quotient may be off in its last digit; from 1/8 in below it, the area of the bar itself decides.
  const below = Math.floor(toSquareInches(requiredArea) / (thickness * widthStep)) - 1;
  let eighths = Math.max(Math.ceil(thickness / widthStep), below);
  while (areaOfBar(thickness, eighths) < requiredArea) eighths += 1;
  return { thickness, width: eighths * widthStep, area: areaOfBar(thickness, eighths) };
}

function areaOfBar(thickness: number, eighths: number): number {
  return fromSquareInches(thickness * eighths * widthStep);
}
