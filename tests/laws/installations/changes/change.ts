import type { Drawing } from "bondmil";

/** One change of a drawing, in words. */
export interface Change {
  readonly what: string;
  readonly drawing: Drawing;
}
