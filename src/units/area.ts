/**
 * Area of metal in circular mils. Always a whole number: one circular mil is the area of a circle one mil
 * (0.001 in.) across, and every tabulated conductor has a whole number of them.
 */
export type CircularMils = number;

/** Units in which an area can be shown. */
export type AreaUnit = "cmil" | "kcmil" | "mm2" | "in2";

const squareInchesPerCircularMil = Math.PI / 4 / 1e6;
const squareMillimetresPerSquareInch = 25.4 * 25.4;

/**
 * Converts circular mils to square millimetres: 1 cmil = pi/4 x (0.0254 mm)2 (NIST SP 811, Appendix B).
 * For display; sizes are compared in circular mils only.
 *
 * @param area - circular mils
 * @returns square millimetres, not rounded
 *
 * @example
 * ```ts
 * import { toSquareMillimetres } from "bondmil";
 * toSquareMillimetres(250000).toFixed(1); // => "126.7"
 * ```
 */
export function toSquareMillimetres(area: CircularMils): number {
  return toSquareInches(area) * squareMillimetresPerSquareInch;
}

/**
 * Converts circular mils to square inches: 1 cmil = pi/4 x 10^-6 in2.
 *
 * @param area - circular mils
 * @returns square inches, not rounded
 *
 * @example
 * ```ts
 * import { toSquareInches } from "bondmil";
 * toSquareInches(1000000).toFixed(4); // => "0.7854"
 * ```
 */
export function toSquareInches(area: CircularMils): number {
  return area * squareInchesPerCircularMil;
}

/**
 * Whole circular mils that lie inside an area in square inches. Rounded down, so that a bar is never credited with
 * metal that it does not have.
 *
 * @param squareInches - area in square inches, for example width x thickness of a bus bar
 * @returns circular mils
 *
 * @example
 * ```ts
 * import { fromSquareInches } from "bondmil";
 * fromSquareInches(0.25 * 2); // => 636619
 * ```
 */
export function fromSquareInches(squareInches: number): CircularMils {
  return Math.floor(squareInches / squareInchesPerCircularMil);
}

/**
 * Writes an area with its unit, rounded for reading.
 *
 * @param area - circular mils
 * @param unit - unit to show; circular mils unless told
 * @returns for example `"250,000 cmil"`, `"250 kcmil"`, `"126.7 mm2"`, `"0.196 in2"`
 *
 * @example
 * ```ts
 * import { formatArea } from "bondmil";
 * formatArea(1800000); // => "1,800,000 cmil"
 * formatArea(41740, "kcmil"); // => "41.74 kcmil"
 * formatArea(167800, "mm2"); // => "85.0 mm2"
 * ```
 */
export function formatArea(area: CircularMils, unit: AreaUnit = "cmil"): string {
  switch (unit) {
    case "cmil":
      return `${area.toLocaleString("en-US")} cmil`;
    case "kcmil":
      return `${(area / 1000).toLocaleString("en-US", { maximumFractionDigits: 3 })} kcmil`;
    case "mm2":
      return `${toSquareMillimetres(area).toFixed(1)} mm2`;
    case "in2":
      return `${toSquareInches(area).toFixed(3)} in2`;
  }
}
