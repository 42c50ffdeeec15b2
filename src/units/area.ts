import { member, type Reader, readAll, readBetween, readOneOf } from "../input/reader.js";

/**
 * Area of metal in circular mils. Always a whole number: one circular mil is the area of a circle one mil
 * (0.001 in.) across, and every tabulated conductor has a whole number of them.
 */
export type CircularMils = number;

/** A quarter of pi in millionths, written out: a bundler cannot tell that a product is idle, and would keep it. */
const squareInchesPerCircularMil = 7.853981633974483e-7;
const squareMillimetersPerSquareInch = 645.16;
const mostSquareInches = 1_000_000;

/** Units in which an area can be shown. */
export type AreaUnit = "cmil" | "kcmil" | "mm2" | "in2";

const areaUnits: readonly AreaUnit[] = ["cmil", "kcmil", "mm2", "in2"];

/**
 * Converts circular mils to square millimeters: 1 cmil = pi/4 x (0.0254 mm)2 (NIST SP 811, Appendix B).
 * For display; sizes are compared in circular mils only.
 *
 * @param area - circular mils
 * @returns square millimeters, not rounded
 * @throws {@link InputError} for anything but a number within exact whole numbers
 *
 * @example
 * ```ts
 * import { toSquareMillimeters } from "bondmil";
 * toSquareMillimeters(250000).toFixed(1); // => "126.7"
 * ```
 */
export function toSquareMillimeters(area: CircularMils): number {
  return toSquareInches(area) * squareMillimetersPerSquareInch;
}

/**
 * Converts circular mils to square inches: 1 cmil = pi/4 x 10^-6 in2.
 *
 * @param area - circular mils
 * @returns square inches, not rounded
 * @throws {@link InputError} for anything but a number within exact whole numbers
 *
 * @example
 * ```ts
 * import { toSquareInches } from "bondmil";
 * toSquareInches(1000000).toFixed(4); // => "0.7854"
 * ```
 */
export function toSquareInches(area: CircularMils): number {
  return readAll(area, readArea) * squareInchesPerCircularMil;
}

/**
 * Whole circular mils that lie inside an area in square inches. Rounded down, so that a bar is never credited with
 * metal that it does not have.
 *
 * @param squareInches - area in square inches, for example width x thickness of a bus bar
 * @returns circular mils
 * @throws {@link InputError} for anything but a number from 0 to 1,000,000
 *
 * @example
 * ```ts
 * import { fromSquareInches } from "bondmil";
 * fromSquareInches(0.25 * 2); // => 636619
 * ```
 */
export function fromSquareInches(squareInches: number): CircularMils {
  const read = readAll(squareInches, (at) => readBetween(at, "square inches", 0, mostSquareInches));
  return Math.floor(read / squareInchesPerCircularMil);
}

/**
 * Writes an area with its unit, rounded for reading.
 *
 * @param area - circular mils
 * @param unit - unit to show; circular mils by default
 * @returns for example `"250,000 cmil"`, `"250 kcmil"`, `"126.7 mm2"`, `"0.196 in2"`
 * @throws {@link InputError} for anything but a number within exact whole numbers and one of these units
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
  readAll({ area, unit }, (at) => {
    readArea(member(at, "area"));
    return readOneOf(member(at, "unit"), areaUnits);
  });
  return writtenArea(area, unit);
}

/** An area with its unit, of arguments that were checked. */
export function writtenArea(area: CircularMils, unit: AreaUnit = "cmil"): string {
  switch (unit) {
    case "cmil":
      return `${withCommas(area)} cmil`;
    case "kcmil":
      return `${withCommas(Math.round(area) / 1000)} kcmil`;
    case "mm2":
      return `${(area * squareInchesPerCircularMil * squareMillimetersPerSquareInch).toFixed(1)} mm2`;
    case "in2":
      return `${(area * squareInchesPerCircularMil).toFixed(3)} in2`;
  }
}

/** A number with commas between the thousands, as `toLocaleString` writes it, which looks up the language each time. */
export function withCommas(value: number): string {
  const [whole = "", behind] = `${value}`.split(".");
  const grouped = whole.replace(/\B(?=(?:\d{3})+$)/g, ",");
  return behind === undefined ? grouped : `${grouped}.${behind}`;
}

/** Checks circular mils; a difference of areas may be negative. */
function readArea(at: Reader): CircularMils | undefined {
  return readBetween(at, "circular mils", Number.MIN_SAFE_INTEGER, Number.MAX_SAFE_INTEGER);
}
