import { areaOf, type ConductorColumn, type ConductorSize } from "../conductor/index.js";
import {
  type Amendment,
  type CellAmendment,
  type Code,
  readCode,
  type SupplyAreaTableId,
} from "../edition/index.js";
import { member, type Reader, readAll, refuse } from "../input/reader.js";
import { hasRatingRow, hasSupplyRow } from "./amended-tables.js";
import { ratingTable } from "./rating-table.js";
import { supplyTableUnder } from "./tables.js";

/**
 * Adds local amendments, or proposals for the next edition, to a code. The result is new plain data that every sizing function takes;
 * results that an amendment decides cite it, and one whose condition is unknown or not met becomes a caution.
 *
 * @param code - the code to amend
 * @param amendments - what changes, each with its citation, of the closed set of kinds
 * @returns the amended code; the given one is left alone
 * @throws {@link InputError} for bad input, a row or table that the edition lacks, or a cell that breaks its table's order
 *
 * @example
 * ```ts
 * import { amend, sizeGroundingElectrodeConductor } from "bondmil";
 * const code = amend(
 *   { year: "2023" },
 *   {
 *     kind: "floor",
 *     role: "grounding-electrode-conductor",
 *     copper: "6 AWG",
 *     citation: { jurisdiction: "Example County", section: "Sec. 12-3" },
 *   },
 * );
 * const conductor = sizeGroundingElectrodeConductor({
 *   code,
 *   of: "service",
 *   supply: { sets: [{ count: 1, size: "2 AWG", material: "copper" }] },
 *   conductor: { material: "copper" },
 *   electrodes: [{ kind: "metal-water-pipe" }],
 * });
 * conductor.outcome; // => { kind: "conductor", size: "6 AWG", quantity: 1 }
 * conductor.steps.at(-2)?.citation.section; // => "Example County, Sec. 12-3"
 * ```
 */
export function amend(code: Code, ...amendments: readonly Amendment[]): Code {
  const { amendments: before = [] } = readAll(code, readCode);
  return readAll({ ...code, amendments: [...before, ...amendments] }, (at) => {
    const amended = readCode(at);
    if (amended !== undefined) refuseCells(at, amended);
    return amended;
  });
}

/** Refuses amended cells that do not exist, and the first of each column that no longer rises with each amendment taken as in force. */
export function refuseCells(at: Reader, code: Code): void {
  const { amendments = [] } = code;
  const always = { ...code, amendments: amendments.map(({ when: _, ...one }) => one as Amendment) };
  const list = member(at, "amendments").path;
  const refused = new Set<string>();
  for (const [i, one] of amendments.entries()) {
    if (one.kind !== "cell") continue;
    const place = (key: "row" | "size"): Reader => ({ ...at, value: one[key], path: `${list}[${i}].${key}` });
    if (!hasRow(code, one)) {
      const expected = `a row of the ${one.table} table of ${code.year}`;
      refuse(place("row"), "unknown-value", expected, "name the row as the table does");
      continue;
    }
    const column = `${one.table} ${one.column}`;
    if (refused.has(column) || rises(sizesOf(always, one))) continue;
    refused.add(column);
    const expected = "a size that keeps the table rising";
    refuse(place("size"), "out-of-order", expected, "a larger row never asks for less");
  }
}

function hasRow(code: Code, amendment: CellAmendment): boolean {
  const { table } = amendment;
  if (table === "equipment-grounding") return hasRatingRow(ratingTable({ year: code.year }), amendment);
  const supplyTable = supplyTableUnder(table satisfies SupplyAreaTableId, { year: code.year });
  return supplyTable !== null && hasSupplyRow(supplyTable, amendment);
}

function sizesOf(code: Code, { table, column }: CellAmendment): readonly ConductorSize[] {
  if (table === "equipment-grounding") return ratingTable(code).rows.map((row) => row[column]);
  const supplyTable = supplyTableUnder(table, code);
  if (supplyTable === null) return [];
  return [...supplyTable.rows.map((row) => row[column]), ...lastOf(supplyTable.last, column)];
}

function lastOf(
  last: Readonly<Record<ConductorColumn, ConductorSize>> | null,
  column: ConductorColumn,
): readonly ConductorSize[] {
  return last === null ? [] : [last[column]];
}

function rises(sizes: readonly ConductorSize[]): boolean {
  return sizes.every((size, i) => areaOf(size) >= areaOf(sizes[i - 1] ?? size));
}
