import { type EditionYear, editionYears } from "../../src/edition/edition-year.js";
import { useResult } from "../../src/input/given-result.js";
import { member, readAll, readOneOf } from "../../src/input/reader.js";
import { inForce as laidTogether } from "./generator/in-force.js";
import type { FromEdition } from "./generator/model.js";
import { withOneError } from "./one-error.js";

/**
 * What holds in an edition, of entries that each say what is new from an edition on: those of policies, sections, named sizes, facts of
 * placement and names of roles. What an entry does not name stays as before, also inside of an object.
 *
 * @param entries - a list of such entries, oldest first
 * @param edition - year of the edition
 * @returns the entries up to that edition laid over each other, `from` being the newest of them; nothing where none is so old
 * @throws `InputError` of `bondmil` for anything but a list of entries and an edition
 *
 * @example
 * ```ts
 * import { inForce, policies, sections } from "bondmil/tables";
 * const entries = policies.policies["main-bonding-jumper"] ?? [];
 * entries.find(({ from }) => from === "2017"); // => { from: "2017", cap: "set" }
 * const held = inForce(entries, "2020");
 * [held?.from, held?.["cap"], held?.["table"]]; // => ["2020", "set", "bonding-conductor"]
 * inForce(sections.topics["main-jumper-place"]?.sections ?? [], "2026"); // => { from: "2023", section: "250.24(C)" }
 * ```
 */
export function inForce<E extends FromEdition>(entries: readonly E[], edition: EditionYear): E | undefined {
  return withOneError(() => {
    const year = readAll({ edition }, (at) => readOneOf(member(at, "edition"), editionYears));
    return useResult(
      { entries },
      "this entry, with a list of what holds from an edition on",
      { entries: "list" },
      (given) => laidTogether(given.entries, year),
    );
  });
}
