import { nearest } from "../input/nearest.js";
import { type Fault, fault, type Keys } from "./fault.js";

/** Ids among which a near one is looked for; an installation with more has to do without the hint for the rest. */
const mostCompared = 100;

/** Notes a reference to something that is not there; a near one is suggested. */
export function dangling(
  keys: Keys,
  id: string,
  ids: readonly string[],
  among: ReadonlySet<string> = new Set(ids),
): readonly Fault[] {
  if (among.has(id)) return [];
  const near = nearest(id, ids.slice(0, mostCompared));
  const shown = near === undefined ? ids.slice(0, 6) : [near];
  const more = near === undefined && ids.length > shown.length ? ` or ${ids.length - shown.length} more` : "";
  const expected =
    shown.length === 0 ? "an id of this document" : `${shown.map((one) => `"${one}"`).join(", ")}${more}`;
  return [fault("dangling-reference", keys, expected, id, "name something that is there")];
}
