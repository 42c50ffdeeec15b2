import { areaOf, type EditionYear, standardSizeFor, standardSizes } from "../../../src/index.js";
import { rowLabel, type TableCell } from "../../../tables/tools/generator/cells.js";
import { blockFor } from "../../../tables/tools/generator/checks.js";
import type { Cell, TableFile } from "../../../tables/tools/generator/model.js";
import { areaOfName } from "./areas.js";

/** Every ampacity above the smallest sizes ends in 0 or 5. */
const ampacityStep = 5;

/**
 * A cell one size larger and one size smaller: the next standard size, the rating of the row beside it, an ampacity 5 A off. One of
 * them is missing at either end.
 */
export function oneSizeOff(table: TableFile, year: EditionYear, cell: TableCell): readonly Cell[] {
  const { value } = cell;
  if (typeof value === "string") return sizesBeside(areaOfName(value));
  if (typeof value !== "number") return [];
  if (cell.isLabel) return ratingsBeside(table, year, cell);
  return [value + ampacityStep, value - ampacityStep];
}

function sizesBeside(area: number): readonly Cell[] {
  const smaller = standardSizes.filter((size) => areaOf(size) < area).at(-1);
  return [standardSizeFor(area + 1), smaller ?? null].filter((size) => size !== null);
}

function ratingsBeside(table: TableFile, year: EditionYear, { row }: TableCell): readonly Cell[] {
  const rows = blockFor(table, year)?.rows ?? [];
  const at = rows.findIndex((one) => rowLabel(one) === row);
  return [rows[at + 1]?.[0], rows[at - 1]?.[0]].filter((rating) => rating !== undefined);
}
