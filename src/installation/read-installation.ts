import { InputError } from "../input/input-error.js";
import type { Installation } from "./document.js";
import { examine } from "./examine.js";

/**
 * Reads an installation from JSON text or from plain data: its shape, then its ids, its references and whether the tables of its edition
 * can answer. Everything that is wrong is reported at once, with its path; nothing is guessed or left out.
 *
 * @param source - JSON text, or the value that it would parse to
 * @returns the installation, sharing nothing with the source
 * @throws {@link InputError} listing everything that is wrong
 *
 * @example
 * ```ts
 * import { InputError, readInstallation } from "bondmil";
 * let paths: readonly string[] = [];
 * try {
 *   readInstallation('{ "format": 1, "title": "Barn", "code": { "yeer": "2023" } }');
 * } catch (error) {
 *   if (error instanceof InputError) paths = error.issues.map((issue) => issue.path);
 * }
 * paths; // => ["code.yeer", "code.year", "materials"]
 * ```
 */
export function readInstallation(source: unknown): Installation {
  const { installation, faults } = examine(source);
  if (faults !== null) throw new InputError(faults);
  return installation;
}
