import type { TableCell } from "./cells.js";

/**
 * Whether a definition outside the code gives what stands in a cell of conductor sizes. A kcmil is a thousand circular mils, so that
 * such a size is its own area. A gauge number is a diameter (ASTM B258): to a tenth of a mil, squared, and rounded to 10 circular
 * mils, from 100,000 on to 100.
 */
export function isDefined({ row, value, isLabel }: Pick<TableCell, "row" | "value" | "isLabel">): boolean {
  return isLabel ? areaByDefinition(row) !== null : areaByDefinition(row) === value;
}

/** Circular mils of a size by its definition; `null` for what is no size. */
export function areaByDefinition(size: string): number | null {
  const kcmil = /^(\d+) kcmil$/.exec(size)?.[1];
  if (kcmil !== undefined) return 1000 * Number(kcmil);
  const gauge = gaugeOf(size);
  if (gauge === null) return null;
  const diameter = Math.round(10 * diameterOf(gauge)) / 10;
  const area = diameter ** 2;
  const unit = area < 100_000 ? 10 : 100;
  return unit * Math.round(area / unit);
}

/** 1/0 AWG is gauge 0, 4/0 AWG is gauge -3. */
function gaugeOf(size: string): number | null {
  const [, number, noughts] = /^(\d+)(\/0)? AWG$/.exec(size) ?? [];
  if (number === undefined) return null;
  return noughts === undefined ? Number(number) : 1 - Number(number);
}

/** Mils: 36 AWG is 5, 4/0 AWG is 460, and the 39 steps between are alike. */
function diameterOf(gauge: number): number {
  return 5 * 92 ** ((36 - gauge) / 39);
}
