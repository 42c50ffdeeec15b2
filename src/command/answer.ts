import type { Task } from "./arguments.js";
import type { Ending } from "./exit-codes.js";
import type { Outcome } from "./failure.js";
import type { Surroundings } from "./surroundings.js";

/** The output of a subcommand. */
export interface Answer {
  /** `null` where it is written already. */
  readonly text: string | null;
  /** Whether people read it as it is, and not a program. */
  readonly isForReading: boolean;
  readonly ending: Ending;
}

/** What a subcommand does. */
export type RunTask = (task: Task, around: Surroundings) => Promise<Outcome<Answer>>;
