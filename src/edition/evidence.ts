import { type Reader, readAll, readOneOf, refuse } from "../input/reader.js";

/**
 * How sure a value or a wording is, weakest first:
 * `memory`, no source; `carried`, taken over from one neighboring edition; `bracketed`, the same in the nearest earlier
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
 * @throws {@link InputError} for anything but a list of levels
 *
 * @example
 * ```ts
 * import { weakestEvidence } from "bondmil";
 * weakestEvidence(["single", "carried", "confirmed"]); // => "carried"
 * ```
 */
export function weakestEvidence(levels: readonly (Evidence | "vouched")[]): Evidence {
  if (!Array.isArray(levels)) return readAll<Evidence>(levels, refuseLevels);
  let weakest: Evidence = "confirmed";
  // Every place of a list is looked at, also one that holds nothing.
  for (const level of levels as readonly (Evidence | "vouched")[]) weakest = weakerOf(weakest, level);
  return weakest;
}

/** The weaker of two levels, of which `vouched` weakens nothing. */
export function weakerOf(one: Evidence, other: Evidence | "vouched"): Evidence {
  return other === one || other === "vouched" || rank(other) > rank(one) ? one : other;
}

function rank(level: Evidence): number {
  const place = evidenceLevels.indexOf(level);
  return place >= 0 ? place : rank(readAll(level, (at) => readOneOf(at, evidenceLevels)));
}

function refuseLevels(at: Reader): undefined {
  return refuse(at, "wrong-type", "a list of levels of evidence", "give a list, even of one item");
}
