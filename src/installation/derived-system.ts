import { bothEndsAllowedFor, outdoorSourceAtSource } from "../edition/tables/placements.generated.js";
import type { Supply } from "../supply/index.js";
import type { Drawing } from "./document.js";
import type { DrawingInCode } from "./schedule.js";
import { racewaysOf, supplyFrom } from "./supplies.js";

/** A separately derived system of a drawing. */
export type DrawnDerivedSystem = NonNullable<Drawing["derivedSystems"]>[number];

/** A separately derived system with its drawing and its code. */
export interface DerivedInCode extends DrawingInCode {
  readonly system: DrawnDerivedSystem;
}

/** All ungrounded conductors of a derived system. */
export function wholeSupply({ system: { runs, source }, code }: DerivedInCode): Supply {
  return supplyFrom(runs, source.id, code.year);
}

/** Whether the edition keeps the jumper of this source, which stands outdoors, at the source. */
export function isBoundToSource({ system, code }: DerivedInCode): boolean {
  return system.source.outdoors && outdoorSourceAtSource[code.year];
}

/** Whether jumpers at both ends are permitted: for a source of the right kind, without a metal raceway as parallel path. */
export function mayHaveBothEnds({ system, code }: DerivedInCode): boolean {
  const isRightKind = bothEndsAllowedFor[code.year] === "any-system" || system.source.outdoors;
  return isRightKind && system.runs.every((run) => racewaysOf(run).kind === "nonmetallic");
}
