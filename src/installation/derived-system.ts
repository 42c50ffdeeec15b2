import type { Code } from "../edition/index.js";
import { bothEndsAllowedFor, outdoorSourceAtSource } from "../edition/tables/placements.generated.js";
import { isAlwaysWire } from "../rules/amendment-effects.js";
import type { Alternative } from "./conductor-identity.js";
import type { Installation } from "./document.js";
import type { InstallationInCode } from "./schedule.js";
import { type Serving, servingOf, servingTo } from "./serving.js";
import { type DrawnRun, hasGroundedConductor, racewaysOf } from "./supplies.js";

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
export function isBoundOutdoors({ system, code }: DerivedInCode): boolean {
  return system.source.outdoors && outdoorSourceAtSource[code.year];
}

/** Whether the jumper stays at the source: of one that stands outdoors, and of one whose first disconnect is its own. */
export function isBoundToSource(at: DerivedInCode): boolean {
  return isBoundOutdoors(at) || at.system.source.deviceAmperes !== undefined;
}

/**
 * Whether jumpers at both ends are permitted: for a source of the right kind, without a metal raceway as parallel path. Where nobody knows what
 * a raceway is made of, they are permitted on that condition, which a caution says.
 */
export function mayHaveBothEnds(at: DerivedInCode): boolean {
  return isOfKindForBothEnds(at) && metalBetween(at).length === 0;
}

/**
 * Whether the edition knows jumpers at both ends for such a system: for a source of the right kind, whose first disconnect is not its own, and
 * with one disconnect, for the exception names the source and the first disconnect alone.
 */
export function isOfKindForBothEnds({ system: { source, disconnects }, code }: DerivedInCode): boolean {
  const isRightKind = bothEndsAllowedFor[code.year] === "any-system" || source.outdoors;
  return isRightKind && source.deviceAmperes === undefined && disconnects.length === 1;
}

/** Runs whose metal raceway joins the ends, so that current of the grounded conductor would flow in it. */
export function metalBetween({ system }: DerivedInCode): readonly string[] {
  const isMetal = (run: DrawnRun): boolean =>
    !["nonmetallic", "unknown"].includes(racewaysOf(run, system).kind);
  return system.runs.filter(isMetal).map(({ id }) => id);
}

/** Whether a small control transformer goes without an electrode conductor, which an amendment may forbid. */
export function isExcusedFromElectrode(code: Code, { source }: DrawnDerivedSystem): boolean {
  return source.controlTransformer === true && !isAlwaysWire(code, "grounding-electrode-conductor");
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
