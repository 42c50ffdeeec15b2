import type { Drawing } from "./document.js";
import { examine } from "./examine.js";
import { errorOf } from "./fault.js";

/**
 * Reads a drawing from JSON text or from plain data: its shape, then its ids, its references and whether the tables of its edition
 * can answer. Everything that is wrong is reported at once, with its path; nothing is guessed or left out.
 *
 * @param source - JSON text, or the value that it would parse to
 * @returns the drawing, sharing nothing with the source
 * @throws {@link InputError} listing everything that is wrong
 *
 * @example
 * ```ts
 * import { InputError, readDrawing } from "bondmil";
 * let paths: readonly string[] = [];
 * try {
 *   readDrawing('{ "format": 1, "title": "Barn", "code": { "yeer": "2023" } }');
 * } catch (error) {
 *   if (error instanceof InputError) paths = error.issues.map((issue) => issue.path);
 * }
 * paths; // => ["code.year", "code.yeer", "materials"]
 * ```
 */
export function readDrawing(source: unknown): Drawing {
  const { drawing, faults } = examine(source);
  if (faults !== null) throw errorOf(faults);
  return drawing;
}
