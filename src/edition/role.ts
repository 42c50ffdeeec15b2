import type { ByEdition } from "./supply-area-table.js";

/**
 * What a conductor is there for: the `fault-path` back to the source, by which a breaker opens; the `electrode-system`, which ties to
 * earth and clears no fault; `equalizing`, which keeps metal at one potential; or its `load` only, as a grounded conductor between a
 * system bonding jumper at the source and the first disconnect.
 */
export type Purpose = "fault-path" | "electrode-system" | "equalizing" | "load";

/** What is known of a role without asking it anything. */
export interface RoleFacts<Id extends string = string> {
  /** The id of the role. */
  readonly role: Id;
  /** What it is there for wherever nothing else is said; a result may say otherwise. */
  readonly purpose: Purpose;
  /** What each edition calls the conductor. */
  readonly name: ByEdition<string>;
}
