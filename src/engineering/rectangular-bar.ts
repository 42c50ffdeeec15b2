import { readAll, refuse } from "../input/reader.js";
import { fromSquareInches } from "../units/area.js";

/** A rectangular bar of copper or aluminum that has at least a required area. */
export interface RectangularBar {
  /** Inches. */
  readonly thickness: number;
  /** Inches, a whole number of eighths. */
  readonly width: number;
  /** Circular mils of the bar, rounded down. */
  readonly area: number;
}

const thicknesses = [1 / 8, 3 / 16, 1 / 4, 3 / 8, 1 / 2] as const;
const widthStep = 1 / 8;

/**
 * Rectangular bars that meet a required area: for each usual thickness from 1/8 in. to 1/2 in. the narrowest width in eighths
 * of an inch, not narrower than thick. The thicknesses are common practice, not from the code; the area is what counts.
 *
 * @param requiredArea - circular mils
 * @returns one bar per thickness, thinnest first
 * @throws {@link InputError} if the area is not a positive finite number
 *
 * @example
 * ```ts
 * import { rectangularBarsFor } from "bondmil";
 * const quarterInch = rectangularBarsFor(375000).find((bar) => bar.thickness === 0.25);
 * quarterInch; // => { thickness: 0.25, width: 1.25, area: 397887 }
 * ```
 */
export function rectangularBarsFor(requiredArea: number): readonly RectangularBar[] {
  return readAll(requiredArea, (at) => {
    if (!Number.isFinite(requiredArea) || requiredArea <= 0) {
      return refuse(
        at,
        "not-positive",
        "a positive area in circular mils",
        "give the required area of a result",
      );
    }
    return thicknesses.map((thickness) => narrowest(thickness, requiredArea));
  });
}

function narrowest(thickness: number, requiredArea: number): RectangularBar {
  let eighths = Math.ceil(thickness / widthStep);
  while (areaOfBar(thickness, eighths) < requiredArea) eighths += 1;
  return { thickness, width: eighths * widthStep, area: areaOfBar(thickness, eighths) };
}

function areaOfBar(thickness: number, eighths: number): number {
  return fromSquareInches(thickness * eighths * widthStep);
}
