import { bothEndsAllowedFor, outdoorSourceAtSource } from "../edition/tables/placements.generated.js";
import type { Drawing } from "./document.js";
import type { DrawingInCode } from "./schedule.js";
import { type Serving, servingOf, servingTo } from "./serving.js";
import { hasGroundedConductor, racewaysOf } from "./supplies.js";

/** A separately derived system of a drawing. */
export type DrawnDerivedSystem = NonNullable<Drawing["derivedSystems"]>[number];

/** A separately derived system with its drawing and its code. */
export interface DerivedInCode extends DrawingInCode {
  readonly system: DrawnDerivedSystem;
}

/** All ungrounded conductors of a derived system. */
export function wholeServing({ system: { runs }, code }: DerivedInCode): Serving {
  return servingOf(runs, code.year);
}

/** The ungrounded conductors to one of its disconnects. */
export function servingToDisconnect({ system: { runs }, code }: DerivedInCode, id: string): Serving {
  return servingTo(runs, id, code.year);
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

/** Where the system bonding jumper is: as drawn, or one of the arrangements that are put side by side. */
export interface Arrangement {
  readonly jumperAt: "source" | "disconnects" | "both-ends";
  /** Name of the arrangement, where there are several. */
  readonly alternative?: string;
}

/** The arrangements of a derived system: the one that is drawn, or those that are permitted without a condition, to be compared. */
export function arrangementsOf(at: DerivedInCode): readonly Arrangement[] {
  const { jumperAt } = at.system;
  if (jumperAt !== "compare") return [{ jumperAt }];
  if (isBoundToSource(at) || !hasGroundedConductor(at.system)) return [{ jumperAt: "source" }];
  return [
    { jumperAt: "source", alternative: "jumper-at-source" },
    { jumperAt: "disconnects", alternative: "jumper-in-each-enclosure" },
  ];
}
