import type { Installation } from "bondmil";

/** One change of a drawing, in words. */
export interface Change {
  readonly what: string;
  readonly installation: Installation;
}
