/**
 * How sure a value or a wording is, weakest first:
 * `memory`, no source; `carried`, taken over from one neighbouring edition; `bracketed`, the same in the nearest earlier
 * and the nearest later edition that was seen; `single`, read through one channel; `confirmed`, read through two channels
 * of different kind.
 *
 * @example
 * ```ts
 * import { evidenceLevels } from "bondmil";
 * evidenceLevels.indexOf("single") > evidenceLevels.indexOf("carried"); // => true
 * ```
 */
export const evidenceLevels = ["memory", "carried", "bracketed", "single", "confirmed"] as const;

/** One level of {@link evidenceLevels}. */
export type Evidence = (typeof evidenceLevels)[number];

/**
 * The weakest of several levels. A chain is as sure as its weakest link; `vouched`, what an amendment says of itself, is passed over.
 *
 * @param levels - levels to compare
 * @returns the weakest; `confirmed` for an empty list
 *
 * @example
 * ```ts
 * import { weakestEvidence } from "bondmil";
 * weakestEvidence(["single", "carried", "confirmed"]); // => "carried"
 * ```
 */
export function weakestEvidence(levels: readonly (Evidence | "vouched")[]): Evidence {
  return levels.reduce<Evidence>(
    (weakest, level) => (level !== "vouched" && rank(level) < rank(weakest) ? level : weakest),
    "confirmed",
  );
}

function rank(level: Evidence): number {
  return evidenceLevels.indexOf(level);
}
