import type { Arriving, End } from "./lanes.js";

/** Where a place is drawn, and what comes to it and leaves it. */
export interface Frame {
  readonly left: number;
  readonly top: number;
  readonly arriving: readonly Arriving[];
  /** The ports at which what hangs on it starts. */
  readonly starts: ReadonlySet<End>;
  /** Buses of the assembly that it is a part of. */
  readonly buses?: { readonly grounded: number; readonly grounding: number };
}

/** A place that is drawn, with the points at which its conductors go on. */
export interface Band {
  readonly bottom: number;
  readonly ungrounded: number;
  readonly grounded: number;
  readonly grounding: number;
}

/** Distance of what is within a place from its outline. */
export const PAD = 6;
