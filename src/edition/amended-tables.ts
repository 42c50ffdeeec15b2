import { areaOf, isConductorSize } from "../conductor/index.js";
import { type Amended, amendmentsInForce, citeAmendment } from "./amendment.js";
import type { EditionYear } from "./edition-year.js";
import { perCode } from "./kept-code.js";
import type { SupplyAreaTableId } from "./policy.js";
import type { RatingTable } from "./rating-table.js";
import type { CellAmendment } from "./shape.generated.js";
import type { SupplyAreaTable } from "./supply-area-table.js";
import { bondingConductor } from "./tables/bonding-conductor.generated.js";
import { electrodeConductor } from "./tables/electrode-conductor.generated.js";
import { equipmentGrounding } from "./tables/equipment-grounding.generated.js";

const supplyTables = {
  "electrode-conductor": electrodeConductor,
  "bonding-conductor": bondingConductor,
} as const;

interface AmendedEdition extends Amended {
  readonly year: EditionYear;
}

/** A table of supply areas under a code, amendments included; `null` if the edition lacks it. */
export function supplyTableUnder(id: SupplyAreaTableId, code: AmendedEdition): SupplyAreaTable | null {
  return code.amendments === undefined
    ? supplyTables[id][code.year]
    : supplyTablesUnder(code, id, () => amendedSupplyTable(id, code));
}

const supplyTablesUnder = /* @__PURE__ */ perCode<SupplyAreaTableId, SupplyAreaTable | null>();

function amendedSupplyTable(id: SupplyAreaTableId, code: AmendedEdition): SupplyAreaTable | null {
  const table: SupplyAreaTable | null = supplyTables[id][code.year];
  const cells = cellsOf(code, id);
  if (table === null || cells.length === 0) return table;
  const sizes = new Map(cells.map((one) => [placeOfCell(one), one.size]));
  return {
    ...table,
    rows: table.rows.map((row) => ({
      ...row,
      copper: sizes.get(`${row.through.copper} copper`) ?? row.copper,
      aluminum: sizes.get(`${row.through.copper} aluminum`) ?? row.aluminum,
    })),
    last: table.last && {
      copper: sizes.get("last copper") ?? table.last.copper,
      aluminum: sizes.get("last aluminum") ?? table.last.aluminum,
    },
    amended: Object.fromEntries(
      cells.map((one) => [`${placeInTable(table, one)} ${one.column}`, citeAmendment(one)]),
    ),
  };
}

/** The table of equipment grounding conductors under a code, amendments included. */
export function ratingTableUnder(code: AmendedEdition): RatingTable {
  return code.amendments === undefined
    ? equipmentGrounding[code.year]
    : ratingTablesUnder(code, "equipment-grounding", () => amendedRatingTable(code));
}

const ratingTablesUnder = /* @__PURE__ */ perCode<"equipment-grounding", RatingTable>();

function amendedRatingTable(code: AmendedEdition): RatingTable {
  const table: RatingTable = equipmentGrounding[code.year];
  const cells = cellsOf(code, "equipment-grounding");
  if (cells.length === 0) return table;
  const sizes = new Map(cells.map((one) => [placeOfCell(one), one.size]));
  return {
    ...table,
    rows: table.rows.map((row) => ({
      ...row,
      copper: sizes.get(`${row.through} copper`) ?? row.copper,
      aluminum: sizes.get(`${row.through} aluminum`) ?? row.aluminum,
    })),
    amended: Object.fromEntries(cells.map((one) => [placeOfCell(one), citeAmendment(one)])),
  };
}

/** The cell that an amendment changes, by the upper limit of its row and its column; two spellings of one row are one place. */
export function placeOfCell({ row, column }: Pick<CellAmendment, "row" | "column">): string {
  return `${endOfRow(row)} ${column}`;
}

/** The upper limit of a row: circular mils of copper, or amperes; `last` for the open last row. */
export function endOfRow(row: CellAmendment["row"]): number | "last" {
  if (row === "last" || typeof row === "number") return row;
  return isConductorSize(row) ? areaOf(row) : Number.parseInt(row, 10) * 1000;
}

function placeInTable(table: SupplyAreaTable, { row }: CellAmendment): number | "last" {
  const end = endOfRow(row);
  return end === "last" ? end : table.rows.findIndex(({ through }) => through.copper === end);
}

function cellsOf(code: Amended, id: CellAmendment["table"]): readonly CellAmendment[] {
  return amendmentsInForce(code, "cell").filter(({ table }) => table === id);
}
