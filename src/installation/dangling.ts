import { nearest } from "../input/nearest.js";
import { oneOf } from "../input/one-of.js";
import { type Fault, fault, type Keys } from "./fault.js";

/** Ids among which a near one is looked for; an installation with more has to do without the hint for the rest. */
const mostCompared = 100;

/** Ids that an issue lists. */
const mostListed = 6;

/** The ids that may be meant, as an issue words them; the first ones of many. */
export function idsMeant(ids: readonly string[]): string {
  return ids.length === 0 ? "an id of this document" : oneOf(ids, mostListed);
}

/** Notes a reference to something that is not there; a near one is suggested. */
export function dangling(
  keys: Keys,
  id: string,
  ids: readonly string[],
  among: ReadonlySet<string> = new Set(ids),
): readonly Fault[] {
  if (among.has(id)) return [];
  const near = nearest(id, ids.slice(0, mostCompared));
  const expected = idsMeant(near === undefined ? ids : [near]);
  return [fault("dangling-reference", keys, expected, id, "name something that is there")];
}
