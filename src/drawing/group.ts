import type { Numbered } from "../installation/numbered.js";
import type { DrawnViolation, SymbolKind } from "./drawing.js";

/** A conductor of the schedule with its number in it. */
export interface Marked extends Numbered {
  /** Marks of the violations that it has a part in. */
  readonly forbidden?: string;
}

/** Windings of a source, and what they feed. */
export interface Windings {
  readonly kind: Extract<
    SymbolKind,
    "wye" | "delta" | "corner-grounded-delta" | "high-leg-delta" | "single-phase"
  >;
  /** The connection and grounding in words. */
  readonly words: string;
  /** Whether a grounded conductor or an impedance starts from them. */
  readonly isGrounded: boolean;
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
  readonly kind: PlaceKind;
  readonly windings?: Windings;
  /** Whether the grounded conductor that passes through bonds its metal, and no jumper. */
  readonly isBondedByGrounded?: true;
  /** What the bar of its grounded conductor is called; `N bar` where nothing is said. */
  readonly bar?: string;
  /** Name of the listed assembly that it is a part of. */
  readonly assembly?: string;
  /** Marks of the violations that it has a part in. */
  readonly forbidden?: string;
}

/** An `enclosure` has an outline; a `part` is metal to be bonded; a `common` is a conductor that several places tap. */
export type PlaceKind = "enclosure" | "part" | "electrode" | "common" | "elsewhere";

/** What runs from one place to another: conductors of the schedule, and what is not sized here in words. */
export interface Link {
  readonly from: string;
  readonly to: string;
  readonly conductors: readonly Marked[];
  /** Ungrounded conductors in words; absent where none run there. */
  readonly context?: string;
  /** Id of the run or circuit that it is. */
  readonly id?: string;
  /** Whether metal raceways are around its conductors. */
  readonly isInMetal?: true;
  /** What connects the places without a conductor of the schedule: buses that both have in common, or the wiring between them. */
  readonly shared?: readonly ("grounded" | "grounding" | "metal")[];
  /** Marks of the violations that it has a part in. */
  readonly forbidden?: string;
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
