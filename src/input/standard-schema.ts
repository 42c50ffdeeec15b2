import type { Issue } from "./input-error.js";
import type { Keys } from "./place.js";
import { type Reader, wholeOf } from "./reader.js";

/** One thing wrong, in the form of the Standard Schema interface: an {@link Issue} whose path is given as steps. */
export interface StandardIssue extends Omit<Issue, "path" | "keys"> {
  /** Steps to the place. */
  readonly path: Keys;
}

/** What a validation through the Standard Schema interface returns. */
export type StandardResult<T> =
  | {
      /** The value, sharing nothing with what was given. */
      readonly value: T;
      /** Everything that is wrong; absent where nothing is. */
      readonly issues?: undefined;
    }
  | {
      /** Everything that is wrong; absent where nothing is. */
      readonly issues: readonly StandardIssue[];
    };

/** A Standard Schema (version 1): any library that takes one, a form for example, can validate with it. */
export interface StandardSchema<T> {
  /** Version of the interface. */
  readonly version: 1;
  /** Who offers it. */
  readonly vendor: "bondmil";
  /** Returns the value, sharing nothing with what is given, or everything that is wrong with it. */
  readonly validate: (value: unknown) => StandardResult<T>;
  /** Carries the type; never there at run time. */
  readonly types?:
    | {
        /** What may be given. */
        readonly input: T;
        /** What comes out. */
        readonly output: T;
      }
    | undefined;
}

/** A check behind the Standard Schema interface: issues come back instead of being thrown. */
export function standardSchema<T>(read: (at: Reader) => T | undefined): StandardSchema<T> {
  return {
    version: 1,
    vendor: "bondmil",
    validate: (value) => {
      const issues: Issue[] = [];
      const given = read(wholeOf(value, issues));
      return given !== undefined && issues.length === 0
        ? { value: given }
        : { issues: issues.map(standardIssue) };
    },
  };
}

/** An issue in the form of the Standard Schema interface. */
export function standardIssue({ path: _, keys, ...issue }: Issue): StandardIssue {
  return { ...issue, path: keys };
}
