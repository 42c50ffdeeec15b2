import { roleIds } from "../edition/tables/roles.generated.js";
import { useResult } from "../input/given-result.js";
import type { ConductorEnd, ConductorIdentity } from "./conductor-identity.js";
import { alternativeNames, conductorWords, endWords } from "./conductor-words.js";

/**
 * A conductor of an installation in words: what it is, what it belongs to, where it starts if that tells it apart, and its arrangement.
 *
 * @param conductor - one of a schedule, a check or a comparison, or its identity
 * @returns words for a label or a sentence; the id by which a program refers to the conductor is its `id`
 * @throws {@link InputError} for anything but a conductor
 *
 * @example
 * ```ts
 * import { conductorName } from "bondmil";
 * conductorName({ role: "supply-side-bonding-jumper", subject: "W1" }); // => "supply-side bonding jumper W1"
 * ```
 */
export function conductorName(conductor: ConductorIdentity): string {
  return useResult(conductor, "scheduleOf", { role: "text", subject: "text" }, (given) => {
    const { role, alternative } = given;
    if (!roleIds.includes(role)) throw new TypeError(`there is no role "${role}"`);
    if (alternative !== undefined && !Object.hasOwn(alternativeNames, alternative))
      throw new TypeError(`there is no arrangement "${alternative}"`);
    return conductorWords(given);
  });
}

/**
 * Where a conductor starts or ends, in words; what the installation names goes by its id.
 *
 * @param end - `from` or `to` of a conductor of a schedule
 * @returns words for a label or a sentence
 * @throws {@link InputError} for anything but an end
 *
 * @example
 * ```ts
 * import { endName } from "bondmil";
 * endName({ kind: "place", id: "D1" }); // => "D1"
 * endName({ kind: "assembly", of: "S1" }); // => "assembly of S1"
 * ```
 */
export function endName(end: ConductorEnd): string {
  return useResult(end, "scheduleOf", { kind: "text" }, (given) => {
    const words: unknown = endWords(given);
    if (typeof words !== "string") throw new TypeError(`there is no end "${given.kind}"`);
    return words;
  });
}
