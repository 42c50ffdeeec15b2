import { files } from "./files.generated.js";
import type { CheckFiles } from "./runner/model.js";

// A JSON module forgets which texts are the members of a union; tests/corpus/types.test.ts holds the files against these types.

/**
 * The published checks of every role, as in `corpus/<role>.json`, with their dictionaries of flags. Plain data, not to be changed. Areas are
 * in circular mils, currents in amperes.
 *
 * @example
 * ```ts
 * import { checkFiles } from "bondmil/corpus";
 *
 * const checks = checkFiles["main-bonding-jumper"].groups.flatMap((group) => group.checks);
 * const lesson = checks.find(({ id }) => id === "lesson-service-three-aught");
 * lesson?.input.supply.sets; // => [{ count: 1, size: "3/0 AWG", material: "copper" }]
 * lesson?.expect; // => { size: "4 AWG" }
 * ```
 */
export const checkFiles = files as unknown as CheckFiles;
