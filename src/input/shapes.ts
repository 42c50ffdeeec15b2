import type { Reader } from "./reader.js";

/**
 * A shape, as data: what the generated modules hold, and {@link readShape} checks. The definition that it is generated from stands in the
 * `shape.ts` of the same folder; nothing is written here by hand.
 */
export type Shape =
  | ObjectShape
  | VariantsShape
  | ListShape
  | WordsShape
  | NumbersShape
  | NumberShape
  | BetweenShape
  | FlagShape
  | TextShape
  | ExactlyShape
  | OrNullShape
  | CheckedShape;

/** An object with known members and no others. */
export interface ObjectShape {
  readonly is: "object";
  readonly members: Readonly<Record<string, Shape>>;
  /** Members that may be left out. */
  readonly optional?: readonly string[];
}

/**
 * One of several objects. `by` names the member whose word tells which is meant; without it the last of those is meant that have a member of
 * their own in the value, else the first.
 */
export interface VariantsShape {
  readonly is: "variants";
  readonly by?: string;
  readonly of: readonly ObjectShape[];
}

/** A list. */
export interface ListShape {
  readonly is: "list";
  readonly of: Shape;
  readonly least: number;
  readonly most: number;
}

/** One of a closed list of words. */
export interface WordsShape {
  readonly is: "words";
  readonly of: readonly string[];
}

/** One of a closed list of numbers. */
export interface NumbersShape {
  readonly is: "numbers";
  /** What they number. */
  readonly unit: string;
  readonly of: readonly number[];
}

/** A number above zero, or not below it, or a count. */
export interface NumberShape {
  readonly is: "number";
  /** What is counted or measured. */
  readonly unit: string;
  readonly whole?: true;
  /** Whether it may be zero. */
  readonly orZero?: true;
}

/** A number from one to another, both included. */
export interface BetweenShape {
  readonly is: "between";
  /** What is counted or measured. */
  readonly unit: string;
  readonly least: number;
  readonly most: number;
  readonly whole?: true;
  /** What to do about one that is beyond them. */
  readonly advice?: string;
}

/** True or false. */
export interface FlagShape {
  readonly is: "flag";
  readonly says: string;
}

/** A text; a name is not empty. */
export interface TextShape {
  readonly is: "text" | "name";
  readonly says: string;
}

/** A value that stands there as it is. */
export interface ExactlyShape {
  readonly is: "exactly";
  readonly value: string | number | boolean;
}

/** A value, or null. */
export interface OrNullShape {
  readonly is: "or-null";
  readonly of: Shape;
}

/** A value with a check of its own, for what a shape cannot say. */
export interface CheckedShape {
  readonly is: "checked";
  readonly read: (at: Reader) => unknown;
}
