// Generated from package.json by "npm run pages -- version"; do not edit.

/**
 * The version of the library, which every document names.
 *
 * @example
 * ```ts
 * import { version } from "bondmil";
 * /^\d+\.\d+\.\d+/.test(version); // => true
 * ```
 */
export const version = "0.0.0";
