import type { ScheduledConductor } from "../installation/schedule.js";
import type { DrawnViolation, SymbolKind } from "./drawing.js";

/** A conductor of the schedule with its number in it, from 1. */
export interface Marked {
  readonly mark: number;
  readonly conductor: ScheduledConductor;
  /** Marks of the violations that it has a part in. */
  readonly forbidden?: string;
}

/** Something that conductors go to: a source, a box, an enclosure, an electrode, a metal part. */
export interface Place {
  /** Unique in its group; for what the drawing names, its id. */
  readonly key: string;
  readonly name: string;
  readonly details: readonly string[];
  readonly symbol?: SymbolKind;
  /** Conductors within it, as its main bonding jumper. */
  readonly inside: readonly Marked[];
  /** Whether it is a conductor that several places tap. */
  readonly isCommon?: boolean;
}

/** What runs from one place to another: conductors of the schedule, and what is not sized here in words. */
export interface Link {
  readonly from: string;
  readonly to: string;
  readonly conductors: readonly Marked[];
  readonly context?: string;
  /** Id of the run or circuit that it is. */
  readonly id?: string;
}

/** Places and links that are drawn together on one sheet. */
export interface Group {
  /** Id of the system that is drawn. */
  readonly id?: string;
  readonly title: string;
  readonly places: readonly Place[];
  readonly links: readonly Link[];
  readonly violations?: readonly DrawnViolation[];
}
