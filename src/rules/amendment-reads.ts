import { columnOf } from "../conductor/index.js";
import { type CellAmendment, holds, type ReadingAmendment } from "../edition/index.js";
import type { Step } from "../sizing/index.js";
import { rowOf } from "./amended-tables.js";
import type { Decided } from "./decided.js";
import { supplyTableUnder } from "./tables.js";

/** What of a decision tells whether it reads a cell or hangs on a reading. */
export type Read = Pick<Decided, "code" | "material" | "steps" | "readings">;

/** Whether a decision reads the cell that an amendment changes, or would change if it were in force. */
export function readsCell({ code, material, steps }: Read, amendment: CellAmendment): boolean {
  if (amendment.column !== columnOf(material)) return false;
  if (amendment.table === "equipment-grounding")
    return steps.some((step) => step.kind === "rating-row" && step.through === amendment.row);
  const table = supplyTableUnder(amendment.table, code);
  if (table === null) return false;
  const places = [table.number, ...Object.values(table.amended ?? {}).map(({ section }) => section)];
  const row = rowOf(table, amendment);
  const isRead = (step: Step): boolean => {
    if (step.kind === "floor") return row === "last";
    if (step.kind !== "row") return false;
    return row === "last" ? step.through === null : step.through === row?.through[step.entered];
  };
  return steps.some((step) => places.includes(step.citation.section) && isRead(step));
}

/** Whether an amendment chooses a reading that decides, or would choose another one if it were in force. */
export function hangsOnReading({ code, readings = [] }: Read, amendment: ReadingAmendment): boolean {
  const { reading, alternative } = amendment;
  if (code.readings?.[reading] !== undefined) return false;
  const isInForce = holds(amendment, code.circumstances) === "yes";
  return readings.some(({ id, chosen }) => id === reading && (chosen === alternative) === isInForce);
}
