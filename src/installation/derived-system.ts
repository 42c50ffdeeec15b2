import { bothEndsAllowedFor, outdoorSourceAtSource } from "../edition/tables/placements.generated.js";
import type { Alternative } from "./conductor-identity.js";
import type { Installation } from "./document.js";
import type { InstallationInCode } from "./schedule.js";
import { type Serving, servingOf, servingTo } from "./serving.js";
import { hasGroundedConductor, racewaysOf } from "./supplies.js";

/** A separately derived system of an installation. */
export type DrawnDerivedSystem = NonNullable<Installation["derivedSystems"]>[number];

/** A separately derived system with its drawing and its code. */
export interface DerivedInCode extends InstallationInCode {
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
export interface JumperChoice {
  readonly jumperAt: "source" | "disconnects" | "both-ends";
  /** The arrangement, where there are several. */
  readonly alternative?: Alternative;
}

/** The arrangements of a derived system: the one that is drawn, or those that are permitted without a condition, to be compared. */
export function jumperChoices(at: DerivedInCode): readonly JumperChoice[] {
  const { jumperAt } = at.system;
  if (jumperAt !== "compare") return [{ jumperAt }];
  if (isBoundToSource(at) || !hasGroundedConductor(at.system)) return [{ jumperAt: "source" }];
  return [
    { jumperAt: "source", alternative: "jumper-at-source" },
    { jumperAt: "disconnects", alternative: "jumper-in-each-enclosure" },
  ];
}
