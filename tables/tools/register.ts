import register from "../sources.json" with { type: "json" };
import type { Sources } from "./source.js";

/**
 * The register of sources that the tables and the checks name, by id: title, publisher, address, date, kind, and whether one copies another.
 *
 * @example
 * ```ts
 * import { sources } from "bondmil/tables";
 * sources["nfpa-70-2017"]?.seen; // => "extract"
 * ```
 */
export const sources: Sources = register as unknown as Sources;
