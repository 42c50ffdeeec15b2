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

/**
 * Whether something is an edition that the tables hold. NFPA 70 comes out every three years; there is none of 2018.
 *
 * @param value - anything
 * @returns `true` for a member of {@link editionYears}
 *
 * @example
 * ```ts
 * import { isEditionYear } from "bondmil";
 * isEditionYear("2017"); // => true
 * isEditionYear("2018"); // => false
 * ```
 */
export function isEditionYear(value: unknown): value is EditionYear {
  return (editionYears as readonly unknown[]).includes(value);
}
