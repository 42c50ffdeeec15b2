import type { ConductorSize } from "../../conductor/index.js";
import type { Citation, EditionYear } from "../../edition/index.js";
import { evidenceOfCell, type PlainTable } from "../../edition/plain-table.js";
import {
  type ConductorImpedanceRow,
  conductorImpedance,
} from "../../edition/tables/conductor-impedance.generated.js";
import { directCurrentResistance } from "../../edition/tables/direct-current-resistance.generated.js";
import type { DropImpedance } from "./shape.generated.js";

type Metal = "copper" | "aluminum";

/** Impedance of one conductor, in ohms per 1000 ft. */
export interface Impedance {
  /** Resistance; of Table 8 at the temperature of the question. */
  readonly resistance: number;
  /** Reactance; `null` of a direct-current resistance. */
  readonly reactance: number | null;
  /** What a current is multiplied by: R x power factor + X x sine (Table 9 note 2), or the resistance alone. */
  readonly effective: number;
  /** Table and evidence. */
  readonly citation: Citation;
}

/** Impedance of a conductor; `null` where the table has none of its size. */
export function impedanceIn(
  edition: EditionYear,
  size: ConductorSize,
  metal: Metal,
  asked: DropImpedance,
): Impedance | null {
  return asked.from === "table-9"
    ? fromTable9(edition, size, metal, asked)
    : fromTable8(edition, size, metal, asked);
}

const conduits = { pvc: "Pvc", aluminum: "Aluminum", steel: "Steel" } as const;

function fromTable9(
  edition: EditionYear,
  size: ConductorSize,
  metal: Metal,
  { conduit, powerFactor }: DropImpedance & { readonly from: "table-9" },
): Impedance | null {
  const table = conductorImpedance[edition];
  const row = table.rows.find((one) => one.size === size);
  const column = `${metal}${conduits[conduit]}` as const;
  const resistance = row?.[column] ?? null;
  if (row === undefined || resistance === null) return null;
  const reactance = reactanceOf(row, conduit);
  const effective = resistance * powerFactor + reactance * Math.sin(Math.acos(powerFactor));
  return { resistance, reactance, effective, citation: cite(table, size, column) };
}

function reactanceOf(row: ConductorImpedanceRow, conduit: keyof typeof conduits): number {
  return conduit === "steel" ? row.reactanceSteel : row.reactanceNonmagnetic;
}

/** Table 8 note 2: change of resistance for each degree Celsius from that of the table. */
const perDegree = { copper: 0.00323, aluminum: 0.0033 } as const;
const tableCelsius = 75;

function fromTable8(
  edition: EditionYear,
  size: ConductorSize,
  metal: Metal,
  { solid = false, coated = false, celsius = tableCelsius }: DropImpedance & { readonly from: "table-8" },
): Impedance | null {
  const table = directCurrentResistance[edition];
  const row = table.rows.find((one) => one.size === size && one.stranding === (solid ? "solid" : "stranded"));
  if (row === undefined) return null;
  const column = metal === "copper" && coated ? "coatedCopper" : metal;
  const resistance = row[column] * (1 + perDegree[metal] * (celsius - tableCelsius));
  return { resistance, reactance: null, effective: resistance, citation: cite(table, row.conductor, column) };
}

function cite(
  table: Pick<PlainTable<unknown>, "number" | "evidence" | "cells">,
  row: string,
  column: string,
): Citation {
  return { section: table.number, evidence: evidenceOfCell(table, row, column) };
}
