/**
 * Kinds of grounding electrodes (250.52).
 *
 * @example
 * ```ts
 * import { electrodeKinds } from "bondmil";
 * electrodeKinds.includes("ring"); // => true
 * ```
 */
export const electrodeKinds = [
  "rod",
  "pipe",
  "plate",
  "concrete-encased",
  "metal-water-pipe",
  "structural-metal",
  "other",
  "ring",
] as const;

/** Kind of a grounding electrode. */
export type ElectrodeKind = (typeof electrodeKinds)[number];
