/**
 * Every kind of conductor that the library sizes, in the order in which a fault meets them.
 *
 * @example
 * ```ts
 * import { roles } from "bondmil";
 * roles.includes("main-bonding-jumper"); // => true
 * ```
 */
export const roles = [
  "main-bonding-jumper",
  "system-bonding-jumper",
  "supply-side-bonding-jumper",
  "grounded-conductor",
  "impedance-grounding-conductor",
  "impedance-bonding-jumper",
  "equipment-grounding-conductor",
  "equipment-bonding-jumper",
  "water-piping-bonding-jumper",
  "other-piping-bonding-jumper",
  "structural-metal-bonding-jumper",
  "grounding-electrode-conductor",
  "electrode-bonding-jumper",
  "electrode-raceway-bonding-jumper",
  "intersystem-bonding-conductor",
] as const;

/** What a conductor is there for; one member of {@link roles}. */
export type Role = (typeof roles)[number];

/**
 * Which of the two systems a conductor belongs to: the `fault-path` back to the source, by which a breaker opens; the
 * `electrode-system`, which ties to earth and clears no fault; or `equalizing`, which keeps metal at one potential.
 */
export type Purpose = "fault-path" | "electrode-system" | "equalizing";
