import type { Task } from "./arguments.js";
import type { Ending } from "./exit-codes.js";
import type { Outcome } from "./failure.js";
import type { Surroundings } from "./surroundings.js";

/** The output of a subcommand; `null` where it is written already. */
export type Answer = { readonly ending: Ending } & (
  | { readonly text: null }
  | {
      readonly text: string;
      /** Whether people read it as it is, and not a program. */
      readonly isForReading: boolean;
    }
);

/** What a subcommand does. */
export type RunTask = (task: Task, around: Surroundings) => Promise<Outcome<Answer>>;
