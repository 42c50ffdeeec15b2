import { nearest } from "../input/nearest.js";
import { oneOf } from "../input/one-of.js";
import { type Fault, fault, type Keys } from "./fault.js";

/** Ids among which a near one is looked for; an installation with more has to do without the hint for the rest. */
const mostCompared = 100;

/** Ids that an issue lists. */
const mostListed = 6;

/** Notes a reference to something that is not there; a near one is suggested. */
export function dangling(
  keys: Keys,
  id: string,
  ids: readonly string[],
  among: ReadonlySet<string> = new Set(ids),
): readonly Fault[] {
  if (among.has(id)) return [];
  const near = nearest(id, ids.slice(0, mostCompared));
  const meant = near === undefined ? ids : [near];
  const expected = meant.length === 0 ? "an id of this document" : oneOf(meant, mostListed);
  return [fault("dangling-reference", keys, expected, id, "name something that is there")];
}
