import { bondingConductor } from "../../../src/edition/tables/bonding-conductor.generated.js";
import { electrodeConductor } from "../../../src/edition/tables/electrode-conductor.generated.js";
import { equipmentGrounding } from "../../../src/edition/tables/equipment-grounding.generated.js";
import { racewayAmpacity } from "../../../src/edition/tables/raceway-ampacity.generated.js";
import type { EditionYear } from "../../../src/index.js";
import { rowLabel, type TableCell } from "../../../tables/tools/generator/cells.js";
import { blockFor } from "../../../tables/tools/generator/checks.js";
import type { Cell, TableFile } from "../../../tables/tools/generator/model.js";
import { areaOfName } from "./areas.js";
import type { Place } from "./watch.js";

/** What the library reads of a table, edition by edition; the very objects, so that a change of them is a change of the library. */
export const liveTables: Readonly<Record<string, Partial<Record<EditionYear, object | null>>>> = {
  "electrode-conductor": electrodeConductor,
  "bonding-conductor": bondingConductor,
  "equipment-grounding": equipmentGrounding,
  "raceway-ampacity": racewayAmpacity,
};

/** A change of one value that the library reads. */
export interface Write {
  readonly place: Place;
  readonly value: Cell;
}

/** Where the library keeps a cell, with the value that it keeps there. The end of the last row is kept twice. */
export function writesOf(
  table: TableFile,
  year: EditionYear,
  cell: TableCell,
  value: Cell,
): readonly Write[] {
  const rows = blockFor(table, year)?.rows ?? [];
  const at = rows.findIndex((row) => rowLabel(row) === cell.row);
  if (table.id === "raceway-ampacity") {
    const column = table.columns.findIndex(({ id }) => id === cell.column) - 1;
    return [{ place: ["rows", cell.row, column], value }];
  }
  if (cell.column === "ratingThrough") return [{ place: ["rows", at, "through"], value }];
  if (cell.row === "last") return [{ place: ["last", cell.column], value }];
  const bound = /^supply(Copper|Aluminum)Through$/.exec(cell.column)?.[1]?.toLowerCase();
  if (bound === undefined) return [{ place: ["rows", at, cell.column], value }];
  const area = areaOfName(String(value));
  const own = { place: ["rows", at, "through", bound], value: area };
  const isEnd = rows[at + 1] === undefined || rows[at + 1]?.[0] === null;
  return isEnd ? [own, { place: ["threshold", bound], value: area }] : [own];
}
