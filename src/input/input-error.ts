import type { Keys } from "./place.js";

/**
 * Stable code of something wrong in an input. Codes never change meaning; messages may.
 */
export type IssueCode =
  | "unknown-size"
  | "ambiguous-size"
  | "unknown-value"
  | "wrong-type"
  | "not-a-whole-number"
  | "not-positive"
  | "out-of-range"
  | "missing"
  | "unknown-key"
  | "empty-list"
  | "unlike-phases"
  | "unlike-materials"
  | "out-of-order"
  | "duplicate-id"
  | "dangling-reference"
  | "cycle"
  | "unlike-raceways"
  | "evidence-too-weak";

/**
 * One thing wrong in an input: where, what was expected, what was found, and what to do.
 */
export interface Issue {
  /** Stable code, for programs. */
  readonly code: IssueCode;
  /** Where in the input, for example `supply.sets[0].count`; empty for the input itself. */
  readonly path: string;
  /** The same place as steps, for a form: the name of a member, or the place in a list. */
  readonly keys: Keys;
  /** What would have been accepted. */
  readonly expected: string;
  /** What could stand there instead, for a program: the nearest first; empty where it cannot be listed. */
  readonly alternatives: readonly string[];
  /** What was found, printed short. */
  readonly received: string;
  /** One sentence for a person: what is wrong and what to do. */
  readonly message: string;
}

/** One symbol for all copies of the library in one program, as `import` and `require` load one each. */
const mark = Symbol.for("bondmil.InputError");

/**
 * The one error that this library throws for bad input. It lists everything that is wrong, not only the first. `instanceof` knows it from any copy of the library.
 *
 * @example
 * ```ts
 * import { InputError, parseSize } from "bondmil";
 * const codes = [];
 * try {
 *   parseSize("4");
 * } catch (error) {
 *   if (error instanceof InputError) codes.push(...error.issues.map((issue) => issue.code));
 * }
 * codes; // => ["ambiguous-size"]
 * ```
 */
export class InputError extends Error {
  /** Everything that is wrong: of each object first the members that it does not have, then its members, then what does not fit together. */
  readonly issues: readonly Issue[];

  /**
   * Makes an error whose message lists every issue, one on a line.
   *
   * @param issues - what is wrong; at least one
   * @param options - the error behind it, as any error takes it
   */
  constructor(issues: readonly Issue[], options?: ErrorOptions) {
    super(
      issues
        .map((issue) => (issue.path === "" ? issue.message : `${issue.path}: ${issue.message}`))
        .join("\n"),
      options,
    );
    this.name = "InputError";
    this.issues = issues;
    Object.defineProperty(this, mark, { value: true });
  }

  /**
   * What `instanceof` asks.
   *
   * @param value - anything
   * @returns whether it was made by this class, in whichever copy of the library
   */
  static override [Symbol.hasInstance](value: unknown): boolean {
    return value instanceof Error && mark in value;
  }
}
