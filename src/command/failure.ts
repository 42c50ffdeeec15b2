import type { Ending } from "./exit-codes.js";

/** An end of the command that is told in words. */
export interface Failure {
  readonly ending: Exclude<Ending, "done" | "found">;
  readonly message: string;
}

/** Either a value, or why there is none. */
export type Outcome<T> =
  | { readonly value: T; readonly failure?: never }
  | { readonly failure: Failure; readonly value?: never };

/** An outcome that failed. */
export function failed(ending: Failure["ending"], message: string): { readonly failure: Failure } {
  return { failure: { ending, message } };
}
