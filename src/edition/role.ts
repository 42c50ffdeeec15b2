import type { ByEdition } from "./supply-area-table.js";

/**
 * Which of the two systems a conductor belongs to: the `fault-path` back to the source, by which a breaker opens; the
 * `electrode-system`, which ties to earth and clears no fault; or `equalizing`, which keeps metal at one potential.
 */
export type Purpose = "fault-path" | "electrode-system" | "equalizing";

/** What is known of a role without asking it anything. */
export interface RoleFacts<Id extends string = string> {
  /** The id of the role. */
  readonly role: Id;
  /** Which of the systems it belongs to: fault path, electrode system, or equalizing. */
  readonly purpose: Purpose;
  /** What each edition calls the conductor. */
  readonly name: ByEdition<string>;
}
