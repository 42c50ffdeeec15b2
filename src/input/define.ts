import * as v from "valibot";
import { mostItems, mostOfACount, mostOfAnAmount } from "./limits.js";

/**
 * Words for the definitions of shapes, which stand in files named `shape.ts` and are read by the generator alone: nothing that runs imports
 * valibot. What a shape cannot say is left to a check that is named here.
 */

/** A description, which becomes the doc comment of the type and the description of the JSON Schema. */
export const says = v.description;

/**
 * The type and the check of a definition that are written by hand: each a name and the module below `src` that exports it, and of a type, if it
 * is more than the name, the expression.
 */
export interface ByHand {
  readonly type?: readonly [name: string, from: string, expression?: string];
  readonly read?: readonly [name: string, from: string];
}

/** Marks a definition whose type, or whose check, is written by hand. */
export const byHand = <T>(hand: ByHand) => v.metadata<T, { readonly hand: ByHand }>({ hand });

/** Marks what a number counts or measures, or what a flag or text is, as messages say it. */
export const called = <T>(what: string) => v.metadata<T, { readonly called: string }>({ called: what });

/** A number within limits; the advice is for one that is beyond them. */
export const between = (unit: string, least: number, most: number, advice?: string) =>
  v.pipe(
    v.number(),
    v.minValue(least),
    v.maxValue(most),
    v.metadata({ called: unit, ...(advice !== undefined && { advice }) }),
  );

/** A number above zero. */
export const positive = (unit: string) =>
  v.pipe(v.number(), v.gtValue(0), v.maxValue(mostOfAnAmount), called(unit));

/** A number of zero or more. */
export const notNegative = (unit: string) =>
  v.pipe(v.number(), v.minValue(0), v.maxValue(mostOfAnAmount), called(unit));

/** A whole number of at least 1. */
export const count = (unit: string) =>
  v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(mostOfACount), called(unit));

/** True or false. */
export const flag = (what: string) => v.pipe(v.boolean(), called(what));

/** A text that is not empty. */
export const name = (what: string) => v.pipe(v.string(), v.regex(/\S/), called(what));

/** A text, which may be empty. */
export const text = (what: string) => v.pipe(v.string(), called(what));

/** A list of at least one item. */
export const listOf = <T extends v.GenericSchema>(item: T, most = mostItems) =>
  v.pipe(v.array(item), v.minLength(1), v.maxLength(most));

/** A list that may be empty. */
export const anyOf = <T extends v.GenericSchema>(item: T, most = mostItems) =>
  v.pipe(v.array(item), v.maxLength(most));

/** An object that is checked elsewhere, because its members depend on the question. */
export const anyObject = v.looseObject({});
