import type { ConductorColumn, ConductorSize } from "../conductor/index.js";
import type { EditionYear } from "./edition-year.js";
import type { Evidence } from "./evidence.js";

/** One value per edition. Adding an edition to the list does not compile until every such record has its value. */
export type ByEdition<T> = Readonly<Record<EditionYear, T>>;

/** A row up to and including an area of the supply. */
export interface SupplyAreaRow {
  readonly through: Readonly<Record<ConductorColumn, number>>;
  readonly copper: ConductorSize;
  readonly aluminum: ConductorSize;
}

/** A table entered by the area of the ungrounded supply conductors. */
export interface SupplyAreaTable {
  readonly number: string;
  readonly rows: readonly SupplyAreaRow[];
  /** End of the last bounded row, by the supply's material. */
  readonly threshold: Readonly<Record<ConductorColumn, number>>;
  /** What the open last row names; null where it sends to the notes. */
  readonly last: Readonly<Record<ConductorColumn, ConductorSize>> | null;
  /** Evidence of single cells, by "place of the row, column", where it differs from that of the table; absent where none does. */
  readonly cells?: Readonly<Record<string, Evidence>>;
  /** Who amended a cell, as cited, by "place of the row, column"; absent in a table as printed. */
  readonly amended?: Readonly<Record<string, string>>;
}
