import { type Evidence, weakestEvidence } from "../../../src/edition/evidence.js";
import { cellsOf, levelOfCell } from "./cells.js";
import type { Levels } from "./extracts.js";
import type { TableFile } from "./model.js";
import type { WithstandFile } from "./withstand-file.js";

/** How sure the constants are, computed as every level is: the weakest over the editions that the file names. */
export interface WithstandLevels {
  readonly formula: Evidence;
  readonly sizes: Evidence;
  readonly crossCheck: Evidence;
}

/** The levels of the constants, from the passages that were read and from the areas of the conductor table. */
export function withstandLevels(
  { basis: { editions } }: WithstandFile,
  levels: Levels,
  conductors: TableFile,
): WithstandLevels {
  const said = (path: string): Evidence =>
    weakestEvidence(editions.map((year) => levels("short-time-withstand", [path], year).level));
  const areas = editions.flatMap((year) =>
    cellsOf(conductors, year)
      .filter(({ column }) => column === "area")
      .map((cell) => levelOfCell(conductors, year, cell)),
  );
  return { formula: said("formula"), sizes: weakestEvidence(areas), crossCheck: said("cross-check") };
}
