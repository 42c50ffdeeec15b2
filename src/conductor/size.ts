import { type Reader, readAll, readBetween } from "../input/reader.js";
import { refuseSize } from "./refuse-size.js";
import { sizeRows } from "./sizes.generated.js";

/**
 * A conductor size by its trade name, AWG or kcmil. `"4 AWG"` and `"4/0 AWG"` are different members and cannot be mixed up.
 */
export type ConductorSize = (typeof sizeRows)[number][0];

/** A size that Chapter 9 Table 8 lists, so that it can be offered as the size to use. */
export type StandardSize = Extract<(typeof sizeRows)[number], readonly [string, number, true]>[0];

const areas: ReadonlyMap<string, number> = /* @__PURE__ */ new Map(
  /* @__PURE__ */ sizeRows.map(([size, area]) => [size, area]),
);

/**
 * Every size that a table of the code names, smallest first.
 *
 * @example
 * ```ts
 * import { conductorSizes } from "bondmil";
 * conductorSizes[0]; // => "18 AWG"
 * conductorSizes.at(-1); // => "2000 kcmil"
 * ```
 */
export const conductorSizes: readonly ConductorSize[] = /* @__PURE__ */ sizeRows.map(([size]) => size);

/**
 * Every standard size, 18 AWG to 2000 kcmil, smallest first (Chapter 9 Table 8).
 *
 * @example
 * ```ts
 * import { standardSizes } from "bondmil";
 * standardSizes.includes("4/0 AWG"); // => true
 * ```
 */
export const standardSizes: readonly StandardSize[] = /* @__PURE__ */ sizeRows
  .filter((row) => row[2])
  .map(([size]) => size as StandardSize);

const standardAreas: readonly number[] = /* @__PURE__ */ standardSizes.map((size) => areaOf(size));

/**
 * Whether a text is the canonical name of a size.
 *
 * @param text - any value
 * @returns true for a member of {@link conductorSizes}
 *
 * @example
 * ```ts
 * import { isConductorSize } from "bondmil";
 * isConductorSize("1/0 AWG"); // => true
 * isConductorSize("1/0"); // => false
 * ```
 */
export function isConductorSize(text: unknown): text is ConductorSize {
  return typeof text === "string" && areas.has(text);
}

/**
 * Whether a size is one that can be offered: 1200 kcmil, for example, is named by one table of the code but not by
 * Chapter 9 Table 8.
 *
 * @param size - canonical size
 * @returns true for a member of {@link standardSizes}
 *
 * @example
 * ```ts
 * import { isStandardSize } from "bondmil";
 * isStandardSize("1250 kcmil"); // => true
 * isStandardSize("1200 kcmil"); // => false
 * ```
 */
export function isStandardSize(size: ConductorSize): size is StandardSize {
  return (standardSizes as readonly string[]).includes(size);
}

/**
 * Area of metal of one conductor: the tabulated circular mils, which decide in the code, not the exact geometry of the gauge
 * (Chapter 9 Table 8; ASTM B258 gives slightly other figures for 6, 3, 2 and 1/0 AWG).
 *
 * @param size - canonical size
 * @returns circular mils, a whole number
 * @throws {@link InputError} for anything but a member of {@link conductorSizes}
 *
 * @example
 * ```ts
 * import { areaOf } from "bondmil";
 * areaOf("1/0 AWG"); // => 105600
 * areaOf("500 kcmil"); // => 500000
 * ```
 */
export function areaOf(size: ConductorSize): number {
  return areas.get(size) ?? readAll<number>(size, refuseSize);
}

/**
 * The smallest standard size with at least an area. A requirement that lands exactly on a size is met by it.
 *
 * @param area - circular mils required
 * @returns the size, or `null` above 2,000,000 circular mils
 * @throws {@link InputError} for anything but a number of at least 0
 *
 * @example
 * ```ts
 * import { standardSizeFor } from "bondmil";
 * standardSizeFor(225000); // => "250 kcmil"
 * standardSizeFor(500000); // => "500 kcmil"
 * standardSizeFor(2000001); // => null
 * ```
 */
export function standardSizeFor(area: number): StandardSize | null {
  if (!(typeof area === "number" && area >= 0 && area <= Number.MAX_SAFE_INTEGER)) {
    return readAll<null>(area, refuseArea);
  }
  for (let place = 0; place < standardSizes.length; place += 1) {
    if ((standardAreas[place] as number) >= area) return standardSizes[place] as StandardSize;
  }
  return null;
}

function refuseArea(at: Reader): undefined {
  readBetween(at, "circular mils", 0, Number.MAX_SAFE_INTEGER);
}

/**
 * The next larger standard size.
 *
 * @param size - canonical size
 * @returns the next size up, or `null` at the largest
 * @throws {@link InputError} for anything but a size
 *
 * @example
 * ```ts
 * import { nextSizeUp } from "bondmil";
 * nextSizeUp("4/0 AWG"); // => "250 kcmil"
 * nextSizeUp("1000 kcmil"); // => "1250 kcmil"
 * ```
 */
export function nextSizeUp(size: ConductorSize): StandardSize | null {
  return standardSizeFor(areaOf(size) + 1);
}

/**
 * The next smaller standard size.
 *
 * @param size - canonical size
 * @returns the next size down, or `null` at the smallest
 * @throws {@link InputError} for anything but a size
 *
 * @example
 * ```ts
 * import { nextSizeDown } from "bondmil";
 * nextSizeDown("1/0 AWG"); // => "1 AWG"
 * nextSizeDown("18 AWG"); // => null
 * ```
 */
export function nextSizeDown(size: ConductorSize): StandardSize | null {
  const area = areaOf(size);
  return standardSizes.filter((one) => areaOf(one) < area).at(-1) ?? null;
}

/**
 * Orders sizes by area, for `sort`.
 *
 * @param a - canonical size
 * @param b - canonical size
 * @returns negative if `a` is the smaller, positive if it is the larger, 0 if equal
 * @throws {@link InputError} for anything but sizes
 *
 * @example
 * ```ts
 * import { compareSizes } from "bondmil";
 * ["4/0 AWG" as const, "4 AWG" as const, "250 kcmil" as const].sort(compareSizes); // => ["4 AWG", "4/0 AWG", "250 kcmil"]
 * ```
 */
export function compareSizes(a: ConductorSize, b: ConductorSize): number {
  return areaOf(a) - areaOf(b);
}
