/**
 * Editions of NFPA 70 (National Electrical Code), oldest first.
 *
 * @example
 * ```ts
 * import { editionYears } from "bondmil";
 * editionYears.length; // => 7
 * ```
 */
export const editionYears = ["2008", "2011", "2014", "2017", "2020", "2023", "2026"] as const;

/** Year of an edition of NFPA 70. */
export type EditionYear = (typeof editionYears)[number];
